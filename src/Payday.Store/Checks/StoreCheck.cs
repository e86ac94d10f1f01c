using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Households;
using Payday.Store.Backups;
using Payday.Store.Contents;
using Payday.Store.Databases;
using Payday.Store.Journals;
using Payday.Store.Recovery;

namespace Payday.Store.Checks;

/// <summary>Looks at all of a store: the chain of the journal, the database against it, the ledger, the slips, the backups, who may read the files.</summary>
public static class StoreCheck
{
    private const string Choose = "See what there is with payday restore, and choose.";

    /// <summary>Checks a folder and changes nothing.</summary>
    /// <exception cref="StoreException">Another process has it open, it is of a newer version, or the system is in the way.</exception>
    public static CheckReport Run(StoreFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return StoreFaults.Explained(folder, StoreAction.Read, () =>
        {
            using FolderLock taken = FolderLock.Take(folder);
            return Whole(folder);
        });
    }

    /// <summary>Mends what can be mended, also what opening would not see, and takes the files from others' eyes.</summary>
    /// <returns>What was done, a sentence each.</returns>
    /// <exception cref="StoreException">It can't be mended without a person's choice.</exception>
    public static ImmutableArray<string> Mend(StoreFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return StoreFaults.Explained<ImmutableArray<string>>(folder, StoreAction.Write, () =>
        {
            using FolderLock taken = FolderLock.Take(folder);
            File.Delete(folder.Snapshot);
            using StoreFiles files = StoreFiles.Mended(folder);
            return [.. files.Notices, .. FilePermissions.Close(folder)];
        });
    }

    private static CheckReport Whole(StoreFolder folder)
    {
        JournalScan journal = JournalScan.Read(folder.Journal);
        DatabaseState database = DatabaseState.Read(folder);
        ImmutableArray<BackupFile> backups = BackupFiles.List(folder.Backups);
        BackupFile[] broken = [.. backups.Where(file => BackupFiles.TryRead(file.Path) is null)];
        BookContent? content = (database as DatabaseState.Sound)?.Content ?? ContentOf(journal);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        findings.AddRange(OfJournal(folder, journal, database));
        findings.AddRange(OfDatabase(folder, journal, database));
        findings.AddRange(SnapshotCheck.Of(folder, journal));
        Book? book = content is null ? null : OfBook(folder, content, findings);
        findings.AddRange(broken.Select(file => new Finding("backups", $"{file.Path} is damaged.", "", "Make a new one with payday backup; delete this one when you like.")));
        findings.AddRange(FilePermissions.Loose(folder).Select(path => new Finding(
            "files", $"{path} can be read by other users of this machine.", "", "Close it to them with payday check --mend.")));
        return new CheckReport(
            journal.Last?.Number ?? 0, book?.Ledger.Movements.Count ?? 0, book?.Closed.Length ?? 0, backups.Length - broken.Length, findings.ToImmutable());
    }

    private static IEnumerable<Finding> OfJournal(StoreFolder folder, JournalScan journal, DatabaseState database)
    {
        string since = journal.Last?.ToString() ?? "its beginning";
        string then = database is DatabaseState.Sound ? MendFrom(folder, "database") : Choose;
        if (!journal.IsWhole)
        {
            yield return new Finding("journal", $"{folder.Journal} is damaged: its last {Bytes(journal.Length - journal.SoundLength)} can't be relied on.", since, then);
        }
        else if (journal.Last is null && database is DatabaseState.Sound { Content.Count: > 0 })
        {
            yield return new Finding("journal", $"{folder.Journal} is missing.", "", then);
        }
        else if (database is DatabaseState.Sound { Version: >= Schema.FirstWithJournal } sound && journal.Last?.Sha != sound.Last?.Sha)
        {
            yield return new Finding("journal", $"{folder.Journal} ends with {journal.Last?.ToString() ?? "nothing"}, the database with {sound.Last?.ToString() ?? "nothing"}.", since, then);
        }
        else if (Wrong(journal) is { } wrong)
        {
            yield return new Finding("journal", wrong, since, "Keep a copy of the folder; the database is what counts until this is understood.");
        }
    }

    private static string MendFrom(StoreFolder folder, string other) =>
        $"It can be made good from the {other} with payday check --mend; what is damaged is kept in {folder.Aside}.";

    private static string Bytes(long count) => count == 1 ? "byte" : string.Create(CultureInfo.InvariantCulture, $"{count:#,0} bytes");

    private static BookContent? ContentOf(JournalScan journal) =>
        journal is { IsWhole: true, Last: not null } && Wrong(journal) is null ? journal.Content() : null;

    private static string? Wrong(JournalScan journal)
    {
        try
        {
            journal.Content();
            return null;
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            return fault.Message;
        }
    }

    private static IEnumerable<Finding> OfDatabase(StoreFolder folder, JournalScan journal, DatabaseState database) => database switch
    {
        DatabaseState.Damaged damaged => [new Finding("database", damaged.Reason, "", journal.IsWhole && journal.Last is not null ? MendFrom(folder, "journal") : Choose)],
        DatabaseState.Missing when journal.Last is not null => [new Finding("database", $"{folder.Database} is missing.", "", journal.IsWhole ? MendFrom(folder, "journal") : Choose)],
        _ => [],
    };

    private static Book? OfBook(StoreFolder folder, BookContent content, ImmutableArray<Finding>.Builder findings)
    {
        try
        {
            Book? book = ContentBook.Of(folder, content)?.Book;
            findings.AddRange(book is null ? [] : BalanceCheck.Of(book).Concat(SlipCheck.Of(book)));
            return book;
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault) || fault is StoreException)
        {
            findings.Add(new Finding("ledger", fault is StoreException ? fault.Message : "What is stored doesn't make a book.", "", "Go back to a backup with payday restore."));
            return null;
        }
    }
}
