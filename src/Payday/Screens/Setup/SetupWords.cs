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
}
