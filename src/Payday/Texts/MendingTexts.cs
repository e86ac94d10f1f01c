using System.Globalization;
using Payday.Store.Recovery;

namespace Payday.Texts;

/// <summary>What is said of a data folder that was mended, or can't be without a person's choice.</summary>
internal static class MendingTexts
{
    /// <summary>Why it can't be mended, and what to do.</summary>
    public static string Of(MendingFault fault) => fault switch
    {
        MendingFault.NoJournal =>
            $"{StoreTexts.Reason(fault.Reason)} There is no journal to rebuild it from, but there are backups: see payday restore. Nothing was changed.",
        MendingFault.Undecided open => string.Create(
            CultureInfo.InvariantCulture,
            $"{StoreTexts.Reason(open.Reason)} The journal can't settle it: {(open.SoundUpTo is { } last ? $"it is sound up to {JournalTexts.Of(last)}" : "none of it can be read")}{(open.DamagedBytes is { } bytes ? $" and damaged after that, {bytes} bytes" : "")}.{(open.Against is { } against ? " " + Of(against) : "")} Nothing was changed; look at what there is with payday restore, and choose."),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>What was wrong, and what was done about it.</summary>
    public static string Of(MendingNote note) => note switch
    {
        MendingNote.Rebuilt { Completing: { } completing } rebuilt =>
            $"{StoreTexts.Reason(rebuilt.Reason)} It was rebuilt from the journal, which lacked {JournalTexts.Of(completing)} and has it back from the database; nothing is lost.{Kept("What was there", rebuilt.Aside)}",
        MendingNote.Rebuilt rebuilt =>
            $"{StoreTexts.Reason(rebuilt.Reason)} It was rebuilt from the journal, up to {JournalTexts.OrNothing(rebuilt.UpTo)}; nothing is lost.{Kept("What was there", rebuilt.Aside)}",
        MendingNote.CaughtUp caught => string.Create(
            CultureInfo.InvariantCulture, $"{caught.Database} was {caught.Changes} changes behind the journal and has taken them from there{Lost(caught.IsNothingLost)}"),
        MendingNote.JournalCompleted completed => string.Create(
            CultureInfo.InvariantCulture, $"The journal lacked change {completed.First} and what comes after, and has it back from the database{Lost(completed.IsNothingLost)}"),
        MendingNote.EndTakenOff end => string.Create(
            CultureInfo.InvariantCulture,
            $"The journal ended in {end.Bytes} bytes that are no confirmed change, as after a power cut; they were taken off, and all that was confirmed is there. A copy is kept in {end.Aside}."),
        MendingNote.JournalJoined joined => $"{JournalTexts.Of(joined.Reason)} Its lines are back from a backup and the database.{Kept("The damaged one", joined.Aside)}",
        MendingNote.JournalBegunAnew anew =>
            $"{JournalTexts.Of(anew.Reason)} It begins anew with all that the database holds, up to {JournalTexts.Of(anew.UpTo)}; nothing is lost.{Kept("The damaged one", anew.Aside)}",
        MendingNote.BroughtOver over => $"The store was of version {over.From} and is of version {over.To} now. A copy from before is {over.Copy}.",
        MendingNote.MaybeOldCopy old =>
            $"A backup goes on to change {old.Further}, but the store ends with {JournalTexts.OrNothing(old.Last)}. If you did not go back yourself, it is an old copy: see payday restore.",
        _ => throw new ArgumentOutOfRangeException(nameof(note), note, "There is no text for it."),
    };

    private static string Of(Contradiction fault) => fault switch
    {
        Contradiction.GoesOn on => string.Create(CultureInfo.InvariantCulture, $"{Of(on.Witness)} goes on to change {on.Number}."),
        Contradiction.HasAnother other => string.Create(CultureInfo.InvariantCulture, $"{Of(other.Witness)} has another change {other.Number} than the journal."),
        Contradiction.SnapshotDiffers => string.Create(
            CultureInfo.InvariantCulture, $"The snapshot holds something else than the journal came to at change {fault.Number}."),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Of(Witness witness) => witness switch
    {
        Witness.Database => "The database",
        Witness.Snapshot => "The snapshot",
        Witness.Backup { File: { } file } => $"The backup {file}",
        _ => "A backup",
    };

    // Said only where nothing else in the folder knows of more; what a backup knows is told at opening.
    private static string Lost(bool isNothingLost) => isNothingLost ? "; nothing is lost." : ".";

    private static string Kept(string what, string? aside) => aside is null ? "" : $" {what} is kept in {aside}.";
}
