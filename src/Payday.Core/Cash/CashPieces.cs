using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Cash;

/// <summary>The notes and coins a household uses.</summary>
/// <param name="Notes">Values of notes, largest first, at least one, all above zero and different.</param>
/// <param name="Coins">Values of coins, largest first.</param>
public sealed record CashPieces(ImmutableArray<Money> Notes, ImmutableArray<Money> Coins)
{
    /// <summary>The smallest note.</summary>
    public Money SmallestNote => Notes[^1];
}
