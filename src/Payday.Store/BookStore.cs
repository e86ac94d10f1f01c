using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Store.Backups;
using Payday.Store.Changes;
using Payday.Store.Checks;
using Payday.Store.Contents;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;
using Payday.Store.Opening;
using Payday.Store.Snapshots;

namespace Payday.Store;

/// <summary>The book of one data folder, in a LiteDB database and a journal that one process at a time may open.</summary>
/// <remarks>
/// Each <see cref="Save(Book?, Book)"/> is one line of the journal and one transaction of the database, both synced to disk before
/// it returns: what was acknowledged is there twice after a power cut. Use it from one thread at a time.
/// </remarks>
public sealed class BookStore : IDisposable
{
    private readonly FolderLock folderLock;
    private readonly BackupWork backups;
    private StoreFiles files;

    // Whether they are closed since they could not be opened anew; the next call tries again, and says what it meets.
    private bool areClosed;

    // What is stored, once it is known.
    private StoredState? state;

    // The snapshot to be written when the store is closed, where there is none or an old one.
    private Snapshot? snapshot;
    private bool isDisposed;

    private BookStore(StoreFolder folder, FolderLock folderLock, StoreFiles files)
    {
        Folder = folder;
        this.folderLock = folderLock;
        this.files = files;
        backups = new BackupWork(folder);
        Notices = [.. files.Notices, .. FolderDoubts.Of(folder)];
    }

    /// <summary>The folder.</summary>
    public StoreFolder Folder { get; }

    /// <summary>What was found wrong and was mended, or could not be done beside the work, to be told the person.</summary>
    public ImmutableArray<StoreFault> Notices
    {
        get => field = field.AddRange(backups.TakeWarnings());
        private set;
    }

    /// <summary>The number of the last change stored; 0 where none was.</summary>
    public long LastChange => files.Journal.Last?.Number ?? 0;

    /// <summary>The digest over all that is stored.</summary>
    internal Digest LastDigest => files.Journal.Last?.Digest ?? default;

    /// <summary>Opens the store of a folder, making both where they are missing.</summary>
    /// <exception cref="StoreException">
    /// Another process has it, the folder can't be used, or what is in it is damaged, not Payday's or of a newer version.
    /// </exception>
    public static BookStore Open(StoreFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return StoreFaults.Explained(folder, StoreAction.Open, () =>
        {
            folder.Make();
            FolderLock folderLock = FolderLock.Take(folder);
            try
            {
                return new BookStore(folder, folderLock, StoreFiles.Open(folder));
            }
            catch
            {
                folderLock.Dispose();
                throw;
            }
        });
    }

    /// <summary>The book as another process that has the folder open last stored it, read without the database; nothing is written.</summary>
    /// <param name="folder">The folder.</param>
    /// <returns>The book, and who has the folder.</returns>
    /// <exception cref="StoreException">The journal can't be read.</exception>
    public static BookPeek Peek(StoreFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return StoreFaults.Explained(folder, StoreAction.Read, () =>
        {
            StrangeFiles.Refuse(folder);
            Book? book = SnapshotFile.TryLook(folder) is { } records ? ContentBook.Of(folder, records).Book : ContentBook.Of(folder, Content(folder))?.Book;
            return new BookPeek(book, FolderLock.Holder(folder));
        });
    }

    /// <summary>Which book a folder holds, also where another process has it open.</summary>
    /// <returns>Its name, made with its first change and kept for good; empty where nothing tells it.</returns>
    /// <exception cref="StoreException">The journal can't be read.</exception>
    public static string NameOf(StoreFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return StoreFaults.Explained(folder, StoreAction.Read, () =>
        {
            using JournalFile? journal = JournalFile.OpenToLook(folder.Journal);
            return journal?.Last?.Book ?? BookName.None;
        });
    }

    /// <summary>The whole book, or null where no household has been stored.</summary>
    /// <exception cref="StoreException">The store can't be read, or what it holds doesn't add up.</exception>
    public Book? Load()
    {
        ObjectDisposedException.ThrowIf(isDisposed, this);
        return StoreFaults.Explained(Folder, StoreAction.Read, ReadBook);
    }

    /// <summary>Stores what an action changed whole, and returns when it is synced to disk.</summary>
    /// <param name="before">The book as it is stored; null where nothing is.</param>
    /// <param name="after">The book after the action.</param>
    /// <exception cref="StoreException">It could not be stored; nothing of it is.</exception>
    /// <exception cref="ArgumentException">
    /// The household is one that could not be read again, or the ledger doesn't go on from the one before; nothing is stored.
    /// </exception>
    public void Save(Book? before, Book after) => Save(BookChange.Between(before, after));

    /// <summary>Stores a change whole, and returns when it is synced to disk.</summary>
    /// <exception cref="StoreException">It could not be stored; nothing of it is.</exception>
    /// <exception cref="ArgumentException">The household is one that could not be read again; nothing is stored.</exception>
    internal void Save(BookChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        ObjectDisposedException.ThrowIf(isDisposed, this);
        StoreFaults.Explained(Folder, StoreAction.Write, Reopen);
        MustBeThere(isWritten: false);
        StoredState before = StoreFaults.Explained(Folder, StoreAction.Read, () => state ??= new StoredState(Read(), null));
        if (!change.Closed.IsEmpty)
        {
            backups.Begin(files.Journal.End);
        }

        // A fault of the program comes out here, as it is; from here on whatever goes wrong is one of disk or database.
        var documents = new ChangeDocuments(change, before.Digests.Movements, before.Weeks);
        StoreFaults.Explained(Folder, StoreAction.Write, () =>
        {
            EditList edits = Write(documents, before.Digests);

            // What went into a file that lost its name meanwhile must not count as stored.
            MustBeThere(isWritten: true);
            before.Take(edits, change);
            return true;
        });
    }

    /// <summary>Waits for the backups that are being made beside the work; what can't be done is in <see cref="Notices"/> then.</summary>
    /// <param name="most">How long at most; until they are done where not said.</param>
    public void FinishBackups(TimeSpan? most = null) => backups.Finish(most ?? Timeout.InfiniteTimeSpan);

    /// <inheritdoc/>
    public void Dispose()
    {
        if (isDisposed)
        {
            return;
        }

        isDisposed = true;
        backups.Finish(Timeout.InfiniteTimeSpan);
        bool isThere = Replaced is null;
        if (!isThere && !areClosed)
        {
            files.Database.Abandon();
        }

        files.Dispose();
        if (snapshot is not null && isThere)
        {
            SnapshotFile.TryWrite(Folder, snapshot);
        }

        snapshot = null;
        folderLock.Dispose();
    }

    // A database can be read and yet be damaged where it is written to. Nothing of the change is in the journal then,
    // which has all that was acknowledged: the database is made anew from it, and the change tried once more.
    private EditList Write(ChangeDocuments documents, StoredDigests stored)
    {
        var edits = new EditList(stored, LastDigest);
        documents.AddTo(edits);
        try
        {
            files.Write(edits);
        }
        catch (Exception fault) when (fault is not StoreException && StoreFaults.IsDamage(fault))
        {
            Renew(StoreFiles.Rebuilt);
            files.Write(edits);
        }

        return edits;
    }

    // Another process may be at a folder whose lock is another one by now, and files that were replaced are no damage.
    private string? Replaced => !folderLock.IsThere ? Folder.Lock : areClosed ? null : files.Replaced;

    private void MustBeThere(bool isWritten)
    {
        string? changed = Replaced ?? (areClosed || files.Journal.IsAsLeft ? null : Folder.Journal);
        if (changed is not null)
        {
            throw FolderChanged.Fault(changed, isWritten);
        }
    }

    private void Renew(Func<StoreFolder, StoreFiles> open)
    {
        if (Replaced is { } path)
        {
            throw FolderChanged.Fault(path, isWritten: false);
        }

        files.Dispose();
        areClosed = true;
        files = open(Folder);
        areClosed = false;
        Notices = Notices.AddRange(files.Notices);
    }

    // A line that is being written is not whole yet, and so not part of it.
    private static BookContent Content(StoreFolder folder) => JournalScan.Read(folder.Journal) is { HasItsBeginning: true } journal
        ? journal.Content()
        : throw StoreFaults.Damage(folder);

    private bool Reopen()
    {
        if (areClosed)
        {
            Renew(StoreFiles.Open);
        }

        return true;
    }

    private Book? ReadBook()
    {
        StoredRecords? records = Read();
        ContentBook? read = records is null ? null : ContentBook.Of(Folder, records);
        state = new StoredState(records, read?.Weeks);
        return read?.Book;
    }

    // From the snapshot, where it is of this journal; else all documents are read.
    private StoredRecords? Read()
    {
        Reopen();
        Snapshot? kept = SnapshotFile.TryRead(Folder);
        StoredRecords? records = kept?.CarriedOn(files.Journal) ?? ContentBook.Records(Folder, Content());
        bool isWorthIt = records?.Count >= Folder.Snapshots.FewestRecords
            && !(records == kept?.Records && files.Journal.Length - kept.Place.Offset < Folder.Snapshots.FurthestBehind);
        snapshot = isWorthIt ? new Snapshot(files.Journal.End, records!) : null;
        return records;
    }

    // Opening looks at the ends of both files alone; damage in the middle of the database is met here.
    private BookContent Content()
    {
        if (files.Content() is { } content)
        {
            return content;
        }

        Renew(StoreFiles.Mended);
        return files.Content() ?? throw StoreFaults.Damage(Folder);
    }
}
