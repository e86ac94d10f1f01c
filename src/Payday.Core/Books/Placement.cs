using Payday.Core.Amounts;
using Payday.Core.Pots;

namespace Payday.Core.Books;

/// <summary>A part of the surplus and where it goes.</summary>
/// <param name="Target">A debt, a pot, a bill or the buffer.</param>
/// <param name="Amount">More than zero.</param>
public sealed record Placement(MoveTarget Target, Money Amount);
