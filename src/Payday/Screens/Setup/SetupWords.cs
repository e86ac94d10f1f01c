namespace Payday.Screens.Setup;

/// <summary>The words of a household, for help pages.</summary>
internal static class SetupWords
{
    /// <summary>Each with its meaning.</summary>
    public static IReadOnlyList<(string Word, string Meaning)> All { get; } =
    [
        ("Payday", "a date on which at least one income source pays."),
        ("Pot", "a purpose with a balance: spending, sinking (a target by a date), ladder (savings in steps) or reserve (kept for trouble)."),
        ("At least", "what a cut leaves of a pot's fill when money is short."),
        ("Fill day", "the weekday on which the wallet is filled."),
        ("Top note, small money", "the largest note a pot takes, and the least value it wants in small ones."),
        ("Buffer", "account money deliberately left without another purpose."),
    ];

    /// <summary>How items are written as lines.</summary>
    public static IReadOnlyList<(string Word, string Meaning)> Lines { get; } =
    [
        ("A line", "a name, an amount, and when or what for: Rent 1450 1st."),
        ("2w, 6m, q, y", "short for every 2 weeks, every 6 months, every quarter, every year: Water 165 q 15 Jan. The date is one on which it falls; without a year it is the next one."),
        ("w, m, p", "short for a week, a month, a payday: Clothes 60 m. A pot that says nothing is a week's."),
        ("by 1 Jul, Jul", "the date by which a pot's target must be there: Holiday 1200 by 1 Jul."),
        ("5..100, 10 x 50", "steps of savings: 5, 10, 15 up to 100; or 50 times 10."),
        ("with 50", "what each payday adds to a reserve: Reserve 2000 with 50."),
        ("6.9% 210 15", "of a debt: the yearly rate, the minimum, the day it is due; 2% or 25 is a part of what is owed, at least 25."),
        ("in cash, in the account", "where a pot is; spending is in cash where the line doesn't say, savings in the account."),
        ("has 40", "what is there for it already."),
        (", 1480 from Jan 2027", "what the amount changes to, from a date on."),
        ("Bills", "a line with a list's name says what those pasted below it are: Income, Bills, Debts, Pots."),
    ];
}
