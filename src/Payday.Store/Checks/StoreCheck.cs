using System.Collections.Immutable;
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
    private static Remedy Choose => new Remedy.Choose();

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
    /// <returns>What was done.</returns>
    /// <exception cref="StoreException">It can't be mended without a person's choice.</exception>
    public static ImmutableArray<StoreFault> Mend(StoreFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return StoreFaults.Explained<ImmutableArray<StoreFault>>(folder, StoreAction.Write, () =>
        {
            using FolderLock taken = FolderLock.Take(folder);

            // First, as that can be done whatever is in the files.
            ImmutableArray<StoreFault> closed = [.. FilePermissions.Close(folder)];
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
        (BackupFile File, BackupUnfit Why)[] broken = [.. backups
            .Select(file => (file, BackupFiles.Read(file.Path) as BackupReading.Unfit))
            .Where(pair => pair.Item2 is not null)
            .Select(pair => (pair.file, pair.Item2!.Why))];
        BookContent? content = (database as DatabaseState.Sound)?.Content ?? ContentOf(journal);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        Book? book = content is null ? null : OfBook(folder, content, findings);
        findings.AddRange(broken.Select(pair => new Finding(CheckPart.Backups, new CheckFault.NoBackup(pair.File.Path, pair.Why), null, new Remedy.MakeBackup())));
        findings.AddRange(FilePermissions.Loose(folder).Select(path => new Finding(
            CheckPart.Files, new CheckFault.OpenToOthers(path), null, FilePermissions.CanClose(path) ? new Remedy.Close() : new Remedy.NotYours())));

        // At last, as deciding what can be mended takes what the database lacks into its content.
        StoreException? refusal = Refusal(folder, journal, database);
        bool canMend = refusal is null;
        Finding[] files = [.. OfJournal(folder, journal, database, canMend), .. OfDatabase(folder, journal, database, canMend), .. OfSnapshot(folder, journal, canMend)];
        findings.InsertRange(0, canMend || files.Length > 0 ? files : [new Finding(CheckPart.Database, refusal!.Fault, null, Choose)]);
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
        FindingSince since = journal.Last is { } last ? new FindingSince.Change(last.Mark) : new FindingSince.Beginning();
        Remedy then = canMend ? MendFrom(folder, CheckPart.Database) : Choose;
        if (!journal.IsWhole)
        {
            yield return new Finding(CheckPart.Journal, new CheckFault.JournalEndDamaged(folder.Journal, journal.Length - journal.SoundLength), since, then);
        }
        else if (journal.Last is null && database is DatabaseState.Sound { Content.Count: > 0 })
        {
            yield return new Finding(CheckPart.Journal, new CheckFault.JournalMissing(folder.Journal), null, then);
        }
        else if (database is DatabaseState.Sound { Version: >= Schema.FirstWithJournal } sound && journal.Last?.Sha != sound.Last?.Sha)
        {
            yield return new Finding(CheckPart.Journal, new CheckFault.EndsDiffer(folder.Journal, journal.Last?.Mark, sound.Last?.Mark), since, then);
        }
        else if (Wrong(journal) is { } wrong)
        {
            yield return new Finding(CheckPart.Journal, wrong, since, new Remedy.KeepCopy());
        }
    }

    private static Remedy MendFrom(StoreFolder folder, CheckPart other) => new Remedy.Mend(other, folder.Aside);

    private static BookContent? ContentOf(JournalScan journal) =>
        journal is { IsWhole: true, Last: not null } && Wrong(journal) is null ? journal.Content() : null;

    private static JournalFault? Wrong(JournalScan journal)
    {
        try
        {
            journal.Content();
            return null;
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            return new JournalFault.ComesToSomethingElse((fault as JournalLineException)?.Line);
        }
    }

    private static IEnumerable<Finding> OfDatabase(StoreFolder folder, JournalScan journal, DatabaseState database, bool canMend) => database switch
    {
        DatabaseState.Damaged damaged => [new Finding(CheckPart.Database, damaged.Fault, null, canMend ? MendFrom(folder, CheckPart.Journal) : Choose)],
        DatabaseState.Missing when journal.Last is not null => [new Finding(CheckPart.Database, new DatabaseFault.Missing(folder.Database), null, canMend ? MendFrom(folder, CheckPart.Journal) : Choose)],
        _ => [],
    };

    private static IEnumerable<Finding> OfSnapshot(StoreFolder folder, JournalScan journal, bool canMend) => SnapshotCheck.Differing(folder, journal) is { } line
        ? [new Finding(
            CheckPart.Snapshot, new CheckFault.SnapshotDiffers(folder.Snapshot), new FindingSince.Change(line.Mark), canMend ? new Remedy.MakeAnew() : Choose)]
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
            findings.Add(new Finding(CheckPart.Ledger, fault is StoreException known ? known.Fault : new CheckFault.NoBook(), null, new Remedy.GoBack()));
            return null;
        }
    }
}
