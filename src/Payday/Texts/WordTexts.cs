using System.Collections.Immutable;

namespace Payday.Texts;

/// <summary>
/// The words of the program that aren't everyday English, each with its meaning: one word for one idea, wherever it stands.
/// <c>?</c> explains those that stand on its screen and that the screen doesn't explain itself.
/// </summary>
internal static class WordTexts
{
    /// <summary>The words, as the help page shows them.</summary>
    public static ImmutableArray<PlainWord> All { get; } =
    [
        new("Set aside", "money in the account that is for a bill or a debt, and for nothing else, until that is paid.", "set aside", "sets aside"),
        new("Even", "set aside as an even part of every pay, so that no bill is late.", "even", "evenly"),
        new("When due", "set aside only for the bills that are due before the next payday.", "when due"),
        new("Not in notes", "the part of a cash pot that no note makes, or that isn't fetched yet; it waits in the account for the same pot.", "not in notes"),
        new("To pay back", "cash that goes from a pot to the account, for what was bought by card or moved there.", "to pay back", "pay back"),
        new("Left to place", "income and carried-over money minus all that has been placed; it must be zero to close the payday.", "left to place"),
        new("Buffer", "account money deliberately left without another purpose.", "buffer"),
        new("Loose notes", "notes at home that are in no pot.", "loose notes"),
        new("Wallet", "the cash that is carried: what the pots have for this week. The rest stays at home.", "wallet"),
        new("Minimum", "the least that must be paid on a debt by its due date; the lender's statement decides.", "minimum", "minimums", "minimum due"),
        new("Surplus", "what is left once bills, minimums and pots have theirs.", "surplus"),
        new("Overdraft", "what the account is below zero; what comes in pays it off first.", "overdraft"),
        new("Pot", "money with a purpose and a balance of its own, in cash or in the account.", "pot", "pots"),
        new("Fill", "what goes in a pot on a payday, or from home in the wallet on a fill day.", "fill", "fills", "filled"),
        new("Fill day", "the weekday on which the wallet is filled.", "fill day", "fill days"),
        new("Spending", "a pot that is used up until it is filled again.", "spending"),
        new("Sinking", "a pot that reaches a target by a date.", "sinking"),
        new("Ladder", "a pot that saves in steps, rising, falling or even.", "ladder"),
        new("Reserve", "a pot that is kept for trouble, and gets nothing more once it is full.", "reserve"),
        new("Top note", "the largest note that a pot takes.", "top note"),
        new("Small money", "the least value that a pot wants in small notes.", "small money"),
        new("Ledger", "all that moved, a line each: what went where, when and why. Nothing of it is changed; a mistake is undone by its reverse.", "ledger"),
        new("Ledger line", "an amount that goes from one place and purpose to another.", "ledger line", "ledger lines"),
        new("Proposed", "what the household's rules come to; it counts unless you change it.", "proposed", "proposal", "proposals"),
        new("Withdrawal", "the notes that are fetched from the bank for the cash pots.", "withdrawal", "withdrawals"),
        new("Slip", "the notes to ask the bank for, by value.", "slip", "slips"),
        new("Filling sheet", "which notes go in which pot for which week.", "filling sheet", "sheet", "sheets"),
        new("Close", "write what the routine decided to the ledger; it can be taken up again while nothing later depends on it.", "close payday"),
        new("Extra payday", "a payday beyond the usual count of its month: the third of a fortnightly wage, the fifth of a weekly one.", "extra payday", "extra"),
        new("Week-end count", "counting what is left of each cash pot: what was there less what is left was spent.", "week-end count"),
        new("Cash return", "taking the cash to pay back to the bank, with its own slip.", "cash return"),
        new("Card purchase", "bought by card for a pot; for a cash pot the account paid, and the pot has that cash to pay back.", "card purchase", "card purchases", "by card"),
        new("Difference", "money that is missing, or was found, under a name, until it is cleared up.", "difference", "differences"),
        new("On its way", "in the ledger, but not shown by the bank yet.", "on its way"),
        new("Outlook", "the coming paydays, each closed with all its proposals taken. Nothing of it is stored.", "outlook"),
        new("One-off", "income that no source pays regularly.", "one-off"),
        new("Carried over", "money that was still waiting for a purpose from before.", "carried over"),
    ];

    /// <summary>Those that stand in a text and that aren't explained already.</summary>
    /// <param name="text">What a screen shows, its lines joined by blanks.</param>
    /// <param name="explained">The words that the screen explains itself.</param>
    public static IEnumerable<PlainWord> On(string text, IEnumerable<string> explained)
    {
        string[] known = [.. explained];
        return All.Where(word => word.IsIn(text) && !known.Any(word.IsIn));
    }
}
