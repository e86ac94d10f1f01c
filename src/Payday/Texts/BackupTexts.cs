using Payday.Store.Backups;
using Payday.Store.Files;

namespace Payday.Texts;

/// <summary>What is said of backups that could not be made, and of files that are none.</summary>
internal static class BackupTexts
{
    /// <summary>What is wrong and what to do.</summary>
    public static string Of(BackupFault fault) => fault switch
    {
        BackupFault.LinkToNothing link => $"{link.Into} is a link to something that is not there, so there is no backup in it. What you enter is stored all the same.",
        BackupFault.NoFolder no =>
            $"{no.Into} is {FileNouns.Of(no.Kind)}, not a folder, so there is no backup in it. Move it away; what you enter is stored all the same.",
        BackupFault.NotWritten { Trouble: Trouble.Missing } not => $"{not.Into} is not there, so there is no backup in it. Is its disk plugged in? What you enter is stored all the same.",
        BackupFault.NotWritten { Trouble: Trouble.Denied } not =>
            $"Payday may not write in {not.Into}, so there is no backup in it. Change its permissions, or choose another folder.",
        BackupFault.NotWritten { Trouble: Trouble.Full } not => $"The disk of {not.Into} is full, so there is no backup in it. Free some room there.",
        BackupFault.NotWritten not => $"The disk of {not.Into} failed, so there is no backup in it. Check that disk.",
        BackupFault.ComesBackDifferent different => $"What was written to {different.Into} is not what comes back from there, so there is no backup. Check that disk.",
        BackupFault.NothingYet nothing => $"There is nothing in {nothing.Path} to back up yet.",
        BackupFault.JournalDamaged damaged => $"{damaged.Journal} is damaged after {JournalTexts.OrNothing(damaged.After)}, so no backup was made. Run payday check.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>What is wrong with a file, said of it: <c>is damaged</c>.</summary>
    public static string Of(BackupUnfit fault) => fault switch
    {
        BackupUnfit.NoFile no => $"is {FileNouns.Of(no.Kind)}, not a backup",
        BackupUnfit.Damaged => "is damaged",
        BackupUnfit.NotThere => "is not there",
        BackupUnfit.TooLarge large => $"unpacks to more than {JournalTexts.Megabytes(large.Most)} MB or to lines longer than any of a journal, so it is no backup",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };
}
