using Payday.Store.Backups;
using Payday.Store.Checks;
using Payday.Store.Contents;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;
using Payday.Store.Recovery;
using Payday.Store.Starts;
using Payday.Store.Texts;

namespace Payday.Texts;

/// <summary>What is said of the data folder: what it refuses, what was found wrong in it and what was done about it.</summary>
internal static class StoreTexts
{
    /// <summary>One sentence, or a few: what is wrong, whether anything was changed, what to do.</summary>
    public static string Of(StoreFault fault) => fault switch
    {
        FolderFault folder => FolderTexts.Of(folder),
        DefaultPlaceFault place => FolderTexts.Of(place),
        PlaceFault place => Of(place),
        DatabaseFault database => DatabaseTexts.Of(database),
        JournalFault journal => JournalTexts.Of(journal),
        LedgerDamage ledger => Of(ledger),
        BackupFault backup => BackupTexts.Of(backup),
        BackupUnfit unfit => $"The file {BackupTexts.Of(unfit)}.",
        MendingFault mending => MendingTexts.Of(mending),
        MendingNote note => MendingTexts.Of(note),
        FolderDoubt doubt => FolderTexts.Of(doubt),
        CheckFault check => CheckTexts.Of(check),
        StartFault start => Of(start),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>What is wrong, without what to do: a sentence before which or after which more is said.</summary>
    public static string Reason(StoreFault fault) => fault is DatabaseFault database ? DatabaseTexts.Reason(database) : Of(fault);

    private static string Of(PlaceFault fault) => fault switch
    {
        PlaceFault.LinkToNothing => $"{fault.Path} is a link to something that is not there. Move it away, then try again.",
        PlaceFault.NoFolder no => $"{no.Path} is {FileNouns.Of(no.Kind)}, not a folder. Move it away, then try again.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Of(LedgerDamage fault) => fault switch
    {
        LedgerDamage.DoesNotAddUp not =>
            $"The ledger in {not.Path} doesn't add up: {LedgerTexts.Of(not.Fault, not.Style)} Nothing was changed; keep a copy of the folder, then put back a copy from before.",
        LedgerDamage.MovementMissing missing =>
            $"Ledger line {missing.Number} is missing from the ledger in {missing.Path}. Nothing was changed; keep a copy of the folder, then put back a copy from before.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Of(StartFault fault) => fault switch
    {
        StartFault.Unreadable => $"{fault.Path} can't be read, so the household begun there can't be taken up. Nothing was changed; move the file away to begin anew.",
        StartFault.NotKept not => $"{not.Path} can't be written: {TroubleTexts.Of(not.Trouble)} What was entered last is not kept.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };
}
