using System.Collections.Immutable;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Backups;

/// <summary>The backup before a payday is closed. It warns and never stands in the way.</summary>
internal static class AutomaticBackup
{
    /// <summary>Makes a backup in the data folder, and in the second place where one was named.</summary>
    /// <param name="folder">The store.</param>
    /// <param name="upTo">How far the journal is copied.</param>
    /// <returns>What could not be done.</returns>
    public static ImmutableArray<StoreFault> Make(StoreFolder folder, JournalPlace upTo)
    {
        var warnings = ImmutableArray.CreateBuilder<StoreFault>();
        Try(warnings, folder.Backups, () =>
        {
            JournalScan journal = JournalScan.Read(folder.Journal, upTo.Offset);
            Try(warnings, folder.Backups, () =>
            {
                BackupFaults.RefuseNoFolder(folder.Backups);
                PrivateFolder.Make(folder.Backups);
                Make(folder, journal, folder.Backups);
            });
            if (SecondPlace.Of(folder) is { } second)
            {
                Try(warnings, second, () =>
                {
                    BackupFaults.RefuseNoFolder(second);
                    Make(folder, journal, second);
                });
            }
        });
        return warnings.ToImmutable();
    }

    private static void Make(StoreFolder folder, JournalScan journal, string into)
    {
        BackupFiles.Make(folder, journal, into, isHandMade: false);
        foreach (BackupFile file in BackupLadder.Beyond(BackupFiles.List(into).Where(file => IsOfTheLadder(file, journal))))
        {
            if (IsOfThisPast(file, journal))
            {
                File.Delete(file.Path);
            }
        }
    }

    // By its name. What a person made, what is another household's, and what was made before names said which it is
    // neither counts nor goes.
    private static bool IsOfTheLadder(BackupFile file, JournalScan journal) =>
        !file.IsHandMade && file.Book.Length > 0 && file.Book == BookName.Short(journal.Last!.Book);

    // By what is in it: a name is quickly given, and two copies of a folder are two pasts of one book.
    private static bool IsOfThisPast(BackupFile file, JournalScan journal) =>
        FileFacts.Of(file.Path).Kind == FileKind.File
        && BackupFiles.TryRead(file.Path)?.Last is { } last
        && last.Book == journal.Last!.Book
        && last.Number <= journal.Lines.Length
        && journal.Lines[(int)last.Number - 1].Sha == last.Sha;

    private static void Try(ImmutableArray<StoreFault>.Builder warnings, string into, Action work)
    {
        try
        {
            work();
        }
        catch (StoreException fault)
        {
            warnings.Add(fault.Fault);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            warnings.Add(new BackupFault.NotWritten(into, Troubles.Of(fault)));
        }
    }
}
