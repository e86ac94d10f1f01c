using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Pots;

namespace Payday.Core.CashReturns;

/// <summary>What one pot gives to a cash return.</summary>
/// <param name="Pot">The pot.</param>
/// <param name="Owes">All the cash it owes, above zero.</param>
/// <param name="Items">What it owes it for, oldest first.</param>
/// <param name="Way">How it can be given.</param>
/// <param name="Notes">By value in minor units: the notes to pull; null where they are not known or there is no way.</param>
/// <param name="Swap">What to swap first; null where nothing.</param>
/// <param name="Goes">Whether it goes to the bank this time.</param>
/// <param name="Fault">What is wrong with the notes picked by hand; null where nothing.</param>
public sealed record ReturnLine(
    Pot Pot,
    Money Owes,
    ImmutableArray<OwedItem> Items,
    ReturnWay Way,
    Notes? Notes,
    NoteSwap? Swap,
    bool Goes,
    ReturnFault? Fault);

/// <summary>How a pot can give what it owes.</summary>
public enum ReturnWay
{
    /// <summary>Its own notes make it.</summary>
    Pull,

    /// <summary>Its notes make it after a swap.</summary>
    Swap,

    /// <summary>The person picked the notes.</summary>
    Picked,

    /// <summary>Its notes are not known; the person picks.</summary>
    NotesUnknown,

    /// <summary>No notes make it, with or without a swap.</summary>
    NoWay,
}
