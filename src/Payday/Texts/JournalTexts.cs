using System.Globalization;
using Payday.Store.Files;
using Payday.Store.Journals;

namespace Payday.Texts;

/// <summary>What is said of a journal, and of changes that don't go into it.</summary>
internal static class JournalTexts
{
    /// <summary>What is wrong, and what to do where that is known.</summary>
    public static string Of(JournalFault fault) => fault switch
    {
        JournalFault.Newer => "The journal was written by a newer Payday. Nothing was changed; use that version, or another folder with --data.",
        JournalFault.NoFile no => $"{no.Path} is {FileNouns.Of(no.Kind)}, not a journal. Nothing was changed; move it away.",
        JournalFault.TooLarge large =>
            $"{large.Path} has {Megabytes(large.Bytes)} MB, and a journal has no more than {Megabytes(large.Most)}. Nothing was changed; see whether it is the right file.",
        JournalFault.Full full =>
            $"{full.Path} has grown as large as a journal may be. Nothing was changed; begin a new one, with all that is stored now, by payday restore database --accept.",
        JournalFault.ChangeTooLarge large => string.Create(
            CultureInfo.InvariantCulture,
            $"This change takes {large.Bytes / 1e6:0.#} MB, and no more than {large.Most / 1e6:0} MB can be stored at once. Nothing was changed; shorten its texts, or enter it in parts."),
        JournalFault.Missing => "The journal was missing.",
        JournalFault.DamagedAfter { After: { } last } => $"The journal was damaged after {Of(last)}.",
        JournalFault.DamagedAfter => "The journal was damaged from its beginning.",
        JournalFault.ComesToSomethingElse { Line: { } line } => $"The journal's {Of(line)} doesn't come to what it says.",
        JournalFault.ComesToSomethingElse => "What the journal's changes do can't be done.",
        JournalFault.HoldsWrong wrong => $"{wrong.Path} holds {Of(wrong.Line)}, which doesn't come to what it says.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>Which change it is.</summary>
    public static string Of(ChangeMark mark) => string.Create(CultureInfo.InvariantCulture, $"change {mark.Number} of {mark.At.Replace('T', ' ').TrimEnd('Z')} UTC");

    /// <summary>Which change it is, or that there is none.</summary>
    public static string OrNothing(ChangeMark? mark) => mark is null ? "nothing" : Of(mark);

    /// <summary>How many megabytes, in whole ones.</summary>
    public static string Megabytes(long bytes) => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:#,0}");
}
