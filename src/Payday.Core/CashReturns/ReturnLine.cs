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
/// <param name="Fault">What is wrong with the notes picked by hand, in one sentence; null where nothing.</param>
public sealed record ReturnLine(
    Pot Pot,
    Money Owes,
    ImmutableArray<OwedItem> Items,
    ReturnWay Way,
    Notes? Notes,
    NoteSwap? Swap,
    bool Goes,
    string? Fault)
{
    /// <summary>What the person has to do where the notes aren't told, in one sentence; null where they are.</summary>
    /// <param name="style">How the household writes numbers.</param>
    public string? Advice(NumberStyle style) => Way switch
    {
        ReturnWay.NotesUnknown => $"The notes of {Pot.Name} aren't known: pick {Owes.ToString(style)} from it, or count it by notes first.",
        ReturnWay.NoWay => $"No notes of {Pot.Name}, nor a swap with another pot, make {Owes.ToString(style)}: leave it owed, or bring change.",
        _ => null,
    };
}

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
