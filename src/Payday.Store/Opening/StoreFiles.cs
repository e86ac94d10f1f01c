using System.Collections.Immutable;
using Payday.Store.Backups;
using Payday.Store.Contents;
using Payday.Store.Databases;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;
using Payday.Store.Recovery;

namespace Payday.Store.Opening;

/// <summary>Database and journal of a folder, which agree.</summary>
internal sealed class StoreFiles : IDisposable
{
    private readonly StoreFolder folder;

    private StoreFiles(StoreFolder folder, BookDatabase database, JournalFile journal)
    {
        this.folder = folder;
        Database = database;
        Journal = journal;
    }

    /// <summary>The database.</summary>
    public BookDatabase Database { get; }

    /// <summary>The journal.</summary>
    public JournalFile Journal { get; }

    /// <summary>What was wrong when they were opened, and was done about it.</summary>
    public ImmutableArray<StoreFault> Notices { get; private init; } = [];

    /// <summary>Opens both, mending first what doesn't agree.</summary>
    /// <exception cref="StoreException">They can't be brought to agree.</exception>
    public static StoreFiles Open(StoreFolder folder) => TryOpen(folder) ?? Mended(folder);

    /// <summary>Opens both after mending, where a whole look found damage that opening doesn't see.</summary>
    public static StoreFiles Mended(StoreFolder folder)
    {
        ImmutableArray<StoreFault> notices;
        try
        {
            notices = Mending.Mend(folder);
            if (TryOpen(folder, notices) is { } files)
            {
                return files;
            }
        }
        catch (Exception fault) when (fault is not StoreException && StoreFaults.IsDamage(fault))
        {
            notices = [];
        }

        // A database can be read and yet fail when it is written to: pages of a torn log do that.
        notices = [.. notices, .. Mending.Rebuild(folder)];
        return TryOpen(folder, notices) ?? throw StoreFaults.Damage(folder);
    }

    /// <summary>Makes the database anew from the journal, where it could be read and failed when it was written to.</summary>
    public static StoreFiles Rebuilt(StoreFolder folder)
    {
        ImmutableArray<StoreFault> notices = Mending.Rebuild(folder);
        return TryOpen(folder, notices) ?? throw StoreFaults.Damage(folder);
    }

    /// <summary>All documents, if they are those that were written.</summary>
    /// <returns>The documents; null where the database is damaged.</returns>
    public BookContent? Content()
    {
        try
        {
            BookContent content = Database.Content();
            return content.Digest == (Journal.Last?.Digest ?? default) ? content : null;
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            return null;
        }
    }

    /// <summary>Writes a change to both; when this returns, both disks have it.</summary>
    /// <exception cref="StoreException">It is too large for one line of the journal; it is in neither.</exception>
    /// <exception cref="Exception">It could not be written; it is in neither.</exception>
    public void Write(EditList edits)
    {
        if (edits.Edits.Count == 0)
        {
            return;
        }

        JournalLine? before = Journal.Last;
        long length = Journal.Length;
        string book = before?.Book is { Length: > 0 } known ? known : BookName.New();
        JournalLine line = JournalLine.Make(before, edits.Edits, edits.After, folder.Clock.GetUtcNow(), book);
        if (line.Text.Length > JournalLine.Longest)
        {
            throw new StoreException(new JournalFault.ChangeTooLarge(line.Text.Length, JournalLine.Longest));
        }

        if (length + line.Text.Length >= JournalScan.MostBytes)
        {
            throw new StoreException(new JournalFault.Full(folder.Journal));
        }

        Journal.Append(line);
        try
        {
            Database.Take(line, edits.Edits);
        }
        catch
        {
            TakeBack(length, before);
            throw;
        }
    }

    /// <summary>The path of the first file that is not the one any more that is open here; null where all are.</summary>
    public string? Replaced => Journal.IsThere ? Database.Replaced : folder.Journal;

    /// <inheritdoc/>
    public void Dispose()
    {
        Database.Dispose();
        Journal.Dispose();
    }

    private static StoreFiles? TryOpen(StoreFolder folder, ImmutableArray<StoreFault> notices = default)
    {
        BookDatabase? database = null;
        JournalFile? journal = null;
        try
        {
            if (!DatabaseCheck.Exists(folder))
            {
                return null;
            }

            database = BookDatabase.Open(folder);
            journal = database.Version < Schema.FirstWithJournal ? null : JournalFile.OpenSound(folder.Journal);
            if (journal is not null && journal.Last?.Sha == database.LastLine?.Sha)
            {
                var files = new StoreFiles(folder, database, journal) { Notices = [.. notices.IsDefault ? [] : notices, .. Doubts(folder, journal)] };
                (database, journal) = (null, null);
                return files;
            }

            return null;
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            return null;
        }
        finally
        {
            journal?.Dispose();
            database?.Dispose();
        }
    }

    private static IEnumerable<StoreFault> Doubts(StoreFolder folder, JournalFile journal) => BackupFiles.GoingOn(folder, journal.Last) is { } further
        ? [new MendingNote.MaybeOldCopy(further.Number, journal.Last?.Mark)]
        : [];

    private void TakeBack(long length, JournalLine? last)
    {
        try
        {
            Journal.TakeBack(length, last);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(new FolderFault.DiskFailedAmid(folder.Path), fault);
        }
    }
}
