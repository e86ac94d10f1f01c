using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Books;
using Payday.Store.Backups;
using Payday.Store.Contents;
using Payday.Store.Databases;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;
using Payday.Store.Opening;
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

            // First, as that can be done whatever is in the files.
            ImmutableArray<string> closed = [.. FilePermissions.Close(folder)];
            using StoreFiles files = StoreFiles.Mended(folder);

            // Last: until the rest agrees, it may know what nothing else does.
            File.Delete(folder.Snapshot);
            return [.. files.Notices, .. closed];
        });
    }

    private static CheckReport Whole(StoreFolder folder)
    {
        JournalScan journal = JournalScan.Read(folder.Journal);
        DatabaseState database = DatabaseState.Read(folder);
        ImmutableArray<BackupFile> backups = BackupFiles.List(folder.Backups);
        (BackupFile File, string What)[] broken = [.. backups
            .Select(file => (file, BackupFiles.Read(file.Path) as BackupReading.Unfit))
            .Where(pair => pair.Item2 is not null)
            .Select(pair => (pair.file, pair.Item2!.What))];
        BookContent? content = (database as DatabaseState.Sound)?.Content ?? ContentOf(journal);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        Book? book = content is null ? null : OfBook(folder, content, findings);
        findings.AddRange(broken.Select(pair => new Finding("backups", $"{pair.File.Path} {pair.What}.", "", "Make a new one with payday backup; delete this one when you like.")));
        findings.AddRange(FilePermissions.Loose(folder).Select(path => new Finding(
            "files", $"{path} can be read by other users of this machine.", "", FilePermissions.CanClose(path)
                ? "Close it to them with payday check --mend."
                : "Payday may not close it to them, for it is not yours to change; the one it belongs to can.")));

        // At last, as deciding what can be mended takes what the database lacks into its content.
        StoreException? refusal = Refusal(folder, journal, database);
        bool canMend = refusal is null;
        Finding[] files = [.. OfJournal(folder, journal, database, canMend), .. OfDatabase(folder, journal, database, canMend), .. OfSnapshot(folder, journal, canMend)];
        findings.InsertRange(0, canMend || files.Length > 0 ? files : [new Finding("database", refusal!.Message, "", Choose)]);
        return new CheckReport(
            journal.Last?.Number ?? 0, book?.Ledger.Movements.Count ?? 0, book?.Closed.Length ?? 0, backups.Length - broken.Length, findings.ToImmutable());
    }

    // Why mending would refuse, found out by deciding as it would; null where it would mend, or find nothing to mend.
    private static StoreException? Refusal(StoreFolder folder, JournalScan journal, DatabaseState database)
    {
        try
        {
            Mending.Decide(folder, journal, database);
            return null;
        }
        catch (StoreException refusal)
        {
            return refusal;
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            return StoreFaults.Damage(folder);
        }
    }

    private static IEnumerable<Finding> OfJournal(StoreFolder folder, JournalScan journal, DatabaseState database, bool canMend)
    {
        string since = journal.Last?.ToString() ?? "its beginning";
        string then = canMend ? MendFrom(folder, "database") : Choose;
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

    private static IEnumerable<Finding> OfDatabase(StoreFolder folder, JournalScan journal, DatabaseState database, bool canMend) => database switch
    {
        DatabaseState.Damaged damaged => [new Finding("database", damaged.Reason, "", canMend ? MendFrom(folder, "journal") : Choose)],
        DatabaseState.Missing when journal.Last is not null => [new Finding("database", $"{folder.Database} is missing.", "", canMend ? MendFrom(folder, "journal") : Choose)],
        _ => [],
    };

    private static IEnumerable<Finding> OfSnapshot(StoreFolder folder, JournalScan journal, bool canMend) => SnapshotCheck.Differing(folder, journal) is { } line
        ? [new Finding(
            "snapshot",
            $"{folder.Snapshot} is not what the journal came to.",
            line.ToString(),
            canMend ? "Have it made anew with payday check --mend; journal and database are what counts." : Choose)]
        : [];

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
