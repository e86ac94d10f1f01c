using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Books;

/// <summary>A reconciliation begun: what was entered so far.</summary>
/// <param name="Date">The day of the bank's balance.</param>
/// <param name="Balance">The bank's balance; null while it isn't typed.</param>
/// <param name="AtBank">The account lines ticked, each by the number of its first movement.</param>
public sealed record ReconciliationDraft(LocalDate Date, Money? Balance, ImmutableSortedSet<long> AtBank)
{
    /// <summary>What the person calls the difference; null while it isn't typed.</summary>
    public string? Name { get; init; }
}
