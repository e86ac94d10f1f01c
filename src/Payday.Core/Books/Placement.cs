using Payday.Core.Amounts;
using Payday.Core.Pots;

namespace Payday.Core.Books;

/// <summary>A part of the surplus and where it goes.</summary>
/// <param name="Target">A debt, a pot or the buffer.</param>
/// <param name="Id">The debt or pot; empty for the buffer.</param>
/// <param name="Amount">More than zero.</param>
public sealed record Placement(PlacementTarget Target, string Id, Money Amount);
