using Payday.Core.Amounts;
using Payday.Core.Counts;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of a count that can't be, and of a difference that can't be cleared up.</summary>
internal static class CountTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(CountFault fault, NumberStyle style) => fault switch
    {
        CountFault.NothingCounted => "Nothing has been counted; enter what is left of a pot.",
        CountFault.CountedSince since => $"{since.Pot} was counted on {DateText.Day(since.Since)}; count it for that day or a later one.",
        CountFault.BeforeStart before => $"{DateText.Day(before.Date)} is before the household began, {DateText.Day(before.Start)}.",
        CountFault.LeftBelowZero left => $"What is left of {left.Pot} can't be below zero.",
        CountFault.NotesBelowOwed notes =>
            $"The notes of {notes.Pot} come to less than the {notes.StillOwed.ToString(style)} it has to pay back; count those among them, or type what is left without them.",
        CountFault.MissingMoreThanGone missing =>
            $"Only {missing.Gone.ToString(style)} of {missing.Pot} is gone, so {missing.Missing.ToString(style)} can't be missing.",
        CountFault.MoreThanThere more =>
            $"{more.Left.ToString(style)} is more than the {more.Expected.ToString(style)} that {more.Pot} should have: perhaps {Reasons(more, style)}; mend that, or name it as found.",
        CountFault.Unnamed unnamed => $"Name what is {(unnamed.IsMissing ? "missing from" : "found in")} {unnamed.Pot}, so that it can be cleared up later.",
        CountFault.MovesOnToItself moves => $"What is left of {moves.Pot} can't go to {moves.Pot} itself; say where else, or that it stays.",
        CountFault.NoSuchTarget no => $"What is left of {no.Pot} can't go to '{no.TargetId}', which there isn't.",
        CountFault.MoreGoneThanCan gone =>
            $"At most {gone.Most.ToString(style)} of {gone.Pot} can be gone by {DateText.Day(gone.Date)}, for the rest is to be paid back or was moved since; look at its card purchases.",
        CountFault.LeftUsedSince used => $"What was left of {used.Pot} on {DateText.Day(used.Date)} was used since, so it can't go to another; let it stay.",
        CountFault.NoOpenDifference no => $"Count {no.Number} has no open difference.",
        CountFault.FoundNotMissing found => $"Nothing is missing in count {found.Number}: {found.Name} was found.",
        CountFault.PotGone => "The pot is gone, so nothing can turn up in it; explain the difference instead.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    // The likely reasons come from what is known of the pot, so that the person looks where it may be found.
    private static string Reasons(CountFault.MoreThanThere more, NumberStyle style) => more.StillOwed.IsPositive
        ? $"a fill wasn't recorded, or the {more.StillOwed.ToString(style)} it has to pay back is still among it"
        : "a fill wasn't recorded, or was marked skipped";
}
