using Payday.Core.Amounts;
using Payday.Core.Ledgers;

namespace Payday.Store.Texts;

/// <summary>What is said of a ledger that doesn't hold, and of a movement that can't be undone: of what is stored as of what is shown.</summary>
public static class LedgerTexts
{
    /// <summary>One sentence.</summary>
    /// <param name="fault">What is wrong.</param>
    /// <param name="style">How the household writes numbers.</param>
    public static string Of(LedgerFault fault, NumberStyle style) => fault switch
    {
        LedgerFault.NoSuchMovement no => $"There is no ledger line {no.Number}.",
        LedgerFault.UndoneAlready undone => $"Ledger line {undone.Number} is undone already.",
        LedgerFault.UndoesAnother undoes => $"Ledger line {undoes.Number} itself undoes another; enter what it undid again instead.",
        LedgerFault.PurposesDiffer differ =>
            $"The purposes in {Word(differ.Place)} add up to {differ.Purposes.ToString(style)}, but {differ.There.ToString(style)} is there.",
        LedgerFault.NotBalanced total => $"All ends of the ledger should add up to zero, but come to {total.Total.ToString(style)}.",
        LedgerFault.CashBelowZero cash => $"{cash.End.Key} is {cash.Amount.ToString(style)}: cash can't be below zero.",
        LedgerFault.Overdrawn overdrawn => $"{overdrawn.End.Key} is {overdrawn.Amount.ToString(style)}: more has left it than was there.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Word(Place place) => place == Place.Account ? "the account" : "cash";
}
