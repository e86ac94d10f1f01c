using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Pots;

/// <summary>A purpose with a balance.</summary>
/// <param name="Id">Stable name that the ledger refers to.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Place">In notes, in an envelope; or in the bank account.</param>
/// <param name="Rank">1 for the pot that is cut last; higher ranks are cut first.</param>
/// <param name="Floor">The least that a cut may leave of a fill, zero or more.</param>
/// <param name="Kind">What it is for, and so what a payday puts in.</param>
/// <param name="Notes">Which notes it wants; only for cash.</param>
public sealed record Pot(
    PotId Id,
    string Name,
    Place Place,
    int Rank,
    Money Floor,
    PotKind Kind,
    NoteWishes Notes)
{
    /// <summary>Where what a count finds left of it moves on to; null where it stays. Only for cash.</summary>
    public MoveTarget? MovesOnTo { get; init; }
}
