using System.Collections.Immutable;

namespace Payday.Screens.Shell;

/// <summary>The letters of all screens, each with its one meaning: a key of a screen that is a letter is made from here.</summary>
internal static class Letters
{
    public static readonly Letter Add = new('a', "Add another one to what is listed.");
    public static readonly Letter Card = new('b', "What was bought by card.");
    public static readonly Letter Confirm = new('c', "On to the ledger: what stands here is written, or shown first where it can't be taken back by a key.");
    public static readonly Letter Days = new('d', "Days: those to come, those that are shown, the one that is counted for, the last one, the one that something is needed by.");
    public static readonly Letter Explain = new('e', "Explain a difference: what became of that of a count, or what one with the bank may be.");
    public static readonly Letter Fill = new('f', "Fill the wallet.");
    public static readonly Letter Gaps = new('g', "What is not as it should be: open differences of counts, other notes than the slip asked for.");
    public static readonly Letter Household = new('h', "The household's settings and lists.");
    public static readonly Letter List = new('i', "Take many in at once, from a list.");
    public static readonly Letter Outlook = new('j', "The outlook: the paydays to come.");
    public static readonly Letter Debts = new('-', "What is owed, and the way out of it.");
    public static readonly Letter Entry = new('$', "What came in or went out outside a payday.");
    public static readonly Letter KeepAtHome = new('k', "Keep cash at home that would go elsewhere.");
    public static readonly Letter Ledger = new('l', "The ledger.");
    public static readonly Letter Machine = new('m', "The machine, or the teller.");
    public static readonly Letter Notes = new('n', "Count note by note.");
    public static readonly Letter One = new('o', "Look at one thing alone.");
    public static readonly Letter Proposal = new('p', "Take what is proposed again.");
    public static readonly Letter Dues = new('q', "Bills and minimums: what has left the account, and what is to.");
    public static readonly Letter Return = new('r', "Cash to pay back, and the bank.");
    public static readonly Letter Save = new('s', "Save as a file.");
    public static readonly Letter To = new('t', "To another purpose: where what is left goes to, and money that is moved.");
    public static readonly Letter Undo = new('u', "Undo.");
    public static readonly Letter View = new('v', "View the slip for the bank and the sheet for the envelopes.");
    public static readonly Letter Week = new('w', "The week-end count.");
    public static readonly Letter TakeOut = new('x', "Remove from what stands here, or from what is filled.");
    public static readonly Letter Years = new('y', "Months and years.");
    public static readonly Letter Reopen = new('z', "Take the last closed payday up again.");
    public static readonly Letter Bank = new('@', "The account at the bank.");
    public static readonly Letter Statement = new('%', "The bank's statements.");
    public static readonly Letter Rule = new('#', "Rules: what lines of the bank's become.");
    public static readonly Letter Even = new('=', "Set aside an even part of every pay, or only what falls due.");
    public static readonly Letter TurnedUp = new('+', "What was missing is there again.");
    public static readonly Letter EachYear = new('*', "It is needed again each year.");
    public static readonly Letter GoOn = new('&', "It goes on.");
    public static readonly Letter Up = new('<', "Move up in the order.");
    public static readonly Letter Down = new('>', "Move down in the order.");
    public static readonly Letter Help = new('?', "This screen's keys and words.");

    /// <summary>All of them.</summary>
    public static ImmutableArray<Letter> All { get; } =
    [
        Add, Card, Confirm, Days, Explain, Fill, Gaps, Household, List, Outlook, Debts, Entry, KeepAtHome, Ledger, Machine, Notes, One, Proposal, Dues, Return, Save, To,
        Undo, View, Week, TakeOut, Years, Reopen, Bank, Statement, Rule, Even, TurnedUp, EachYear, GoOn, Up, Down, Help,
    ];
}
