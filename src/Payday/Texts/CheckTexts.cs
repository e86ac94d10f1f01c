using System.Globalization;
using NodaTime.Text;
using Payday.Store.Checks;
using Payday.Store.Texts;

namespace Payday.Texts;

/// <summary>What is said of what a check found.</summary>
internal static class CheckTexts
{
    /// <summary>What is wrong, one sentence.</summary>
    public static string Of(CheckFault fault) => fault switch
    {
        CheckFault.JournalEndDamaged end => $"{end.Journal} is damaged: its last {Bytes(end.Bytes)} can't be relied on.",
        CheckFault.JournalMissing missing => $"{missing.Journal} is missing.",
        CheckFault.EndsDiffer ends => $"{ends.Journal} ends with {JournalTexts.OrNothing(ends.Last)}, the database with {JournalTexts.OrNothing(ends.OfDatabase)}.",
        CheckFault.SnapshotDiffers snapshot => $"{snapshot.Snapshot} is not what the journal came to.",
        CheckFault.NoBackup no => $"{no.Path} {BackupTexts.Of(no.Why)}.",
        CheckFault.OpenToOthers open => $"{open.Path} can be read by other users of this machine.",
        CheckFault.NoBook => "What is stored doesn't make a book.",
        CheckFault.BelowZero below => LedgerTexts.Of(below.Fault, below.Style),
        CheckFault.NoSuchMovements none => $"The payday of {Date(none.Payday)} names ledger lines {none.First} to {none.Last}, which are none.",
        CheckFault.SlipDiffers slip =>
            $"The slip of {Date(slip.Payday)} and the notes used again come to {slip.Notes.ToString(slip.Style)}, but {slip.Pots.ToString(slip.Style)} went into the pots.",
        CheckFault.SheetDiffers sheet =>
            $"The filling sheet of {Date(sheet.Payday)} puts {sheet.OnSheet.ToString(sheet.Style)} into {sheet.Pot}, but the ledger moved {sheet.Moved.ToString(sheet.Style)} there.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>What a part of the store is called.</summary>
    public static string Of(CheckPart part) => part switch
    {
        CheckPart.Journal => "journal",
        CheckPart.Database => "database",
        CheckPart.Snapshot => "snapshot",
        CheckPart.Ledger => "ledger",
        CheckPart.Slips => "slips",
        CheckPart.Backups => "backups",
        CheckPart.Files => "files",
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "There is no word for it."),
    };

    /// <summary>Since when; empty where that is not known.</summary>
    public static string Of(FindingSince? since) => since switch
    {
        null => "",
        FindingSince.Beginning => "its beginning",
        FindingSince.Change change => JournalTexts.Of(change.Mark),
        FindingSince.Payday payday => Date(payday.Day),
        _ => throw new ArgumentOutOfRangeException(nameof(since), since, "There is no text for it."),
    };

    /// <summary>What will be done about it, or what to do, one sentence.</summary>
    public static string Of(Remedy remedy) => remedy switch
    {
        Remedy.Choose => "See what there is with payday restore, and choose.",
        Remedy.Mend mend => $"It can be made good from the {Of(mend.Other)} with payday check --mend; what is damaged is kept in {mend.Aside}.",
        Remedy.MakeAnew => "Have it made anew with payday check --mend; journal and database are what counts.",
        Remedy.Close => "Close it to them with payday check --mend.",
        Remedy.NotYours => "Payday may not close it to them, for it is not yours to change; the one it belongs to can.",
        Remedy.KeepCopy => "Keep a copy of the folder; the database is what counts until this is understood.",
        Remedy.MakeBackup => "Make a new one with payday backup; delete this one when you like.",
        Remedy.GoBack => "Go back to a backup with payday restore.",
        Remedy.ReopenOrCount => "Reopen that payday or correct the pots by a count.",
        Remedy.NextPayday => "The next payday makes it good first, from what comes in or from the buffer.",
        _ => throw new ArgumentOutOfRangeException(nameof(remedy), remedy, "There is no text for it."),
    };

    /// <summary>What is wrong, in one sentence; what to do is said by <see cref="Of(Remedy)"/>.</summary>
    public static string What(Finding finding) => StoreTexts.Reason(finding.What);

    private static string Bytes(long count) => count == 1 ? "byte" : string.Create(CultureInfo.InvariantCulture, $"{count:#,0} bytes");

    private static string Date(NodaTime.LocalDate day) => LocalDatePattern.Iso.Format(day);
}
