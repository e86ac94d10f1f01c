using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>Owed-back cash that reached the account.</summary>
/// <param name="Number">1 for the first, then without a gap.</param>
/// <param name="Date">The day.</param>
/// <param name="Payday">
/// The payday that used its notes again instead of their being taken to the bank; null where they were.
/// </param>
/// <param name="Pots">What each pot gave.</param>
/// <param name="Swaps">Notes that changed places between pots first.</param>
/// <param name="Settles">Which debts of the pots to the account it settled.</param>
/// <param name="FirstMovement">The number of its first movement.</param>
/// <param name="LastMovement">The number of its last movement.</param>
public sealed record CashReturn(
    long Number,
    LocalDate Date,
    LocalDate? Payday,
    ImmutableArray<ReturnedPot> Pots,
    ImmutableArray<NoteSwap> Swaps,
    ImmutableArray<SettledItem> Settles,
    long FirstMovement,
    long LastMovement)
{
    /// <summary>Whether it was taken back; its movements then have their reverses, and no rule looks at it.</summary>
    public bool Undone { get; init; }
}

/// <summary>What one pot gave.</summary>
/// <param name="PotId">The pot.</param>
/// <param name="Amount">More than zero.</param>
/// <param name="Notes">By value in minor units: which notes; null where that is not known.</param>
public sealed record ReturnedPot(PotId PotId, Money Amount, Notes? Notes);

/// <summary>A part of what a pot owed, settled.</summary>
/// <param name="Item">What it was owed for.</param>
/// <param name="Amount">How much of it.</param>
public sealed record SettledItem(OwedKey Item, Money Amount);

/// <summary>What a pot owes the account cash for.</summary>
/// <param name="Kind">A card purchase, what was left and moves on to the account, or what was moved there.</param>
/// <param name="Number">The number of the purchase, the count or the move.</param>
public readonly record struct OwedKey(OwedKind Kind, long Number);

/// <summary>Why a pot owes cash.</summary>
public enum OwedKind
{
    /// <summary>The card paid for it.</summary>
    Purchase,

    /// <summary>What a count found left moves on to something that is in the account.</summary>
    MovesOn,

    /// <summary>It was moved to something that is in the account.</summary>
    Move,
}
