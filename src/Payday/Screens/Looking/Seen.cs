using Payday.Core.Households;

namespace Payday.Screens.Looking;

/// <summary>What a look at a data folder saw.</summary>
/// <param name="Book">The book as it is stored.</param>
/// <param name="Holder">Who has the folder open and since when, e.g. <c>process 4711, since 2026-03-02 08:15</c>; null for nobody.</param>
internal sealed record Seen(Book Book, string? Holder);
