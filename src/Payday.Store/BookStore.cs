using System.Collections.Immutable;
using Payday.Core.Households;
using Payday.Core.Weeks;
using Payday.Store.Backups;
using Payday.Store.Checks;
using Payday.Store.Contents;
using Payday.Store.Documents;

namespace Payday.Store;

/// <summary>The book of one data folder, in a LiteDB database and a journal that one process at a time may open.</summary>
/// <remarks>
/// Each <see cref="Save"/> is one line of the journal and one transaction of the database, both synced to disk before
/// it returns: what was acknowledged is there twice after a power cut. Use it from one thread at a time.
/// </remarks>
public sealed class BookStore : IDisposable
{
    /// <summary>The version of the documents that this program reads and writes.</summary>
    public const int SchemaVersion = 3;

    private readonly FolderLock folderLock;
    private StoreFiles files;

    // Whether they are closed since they could not be opened anew; the next call tries again, and says what it meets.
    private bool areClosed;

    // The number of the last movement stored, once it is known.
    private long? lastMovement;

    // What is stored of what happened between paydays, once it is known.
    private WeekRecords? lastWeeks;
    private bool isDisposed;

    private BookStore(StoreFolder folder, FolderLock folderLock, StoreFiles files)
    {
        Folder = folder;
        this.folderLock = folderLock;
        this.files = files;
        Notices = [.. files.Notices, .. FolderDoubts.Of(folder)];
    }

    /// <summary>The folder.</summary>
    public StoreFolder Folder { get; }

    /// <summary>What was found wrong and was mended, or could not be done beside the work: a sentence each, to be shown to the person.</summary>
    public ImmutableArray<string> Notices { get; private set; }

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

    /// <summary>The book as another process that has the folder open last stored it, read from the journal alone; nothing is written.</summary>
    /// <param name="folder">The folder.</param>
    /// <returns>The book, null where no household is stored yet; and who has the folder, one sentence.</returns>
    /// <exception cref="StoreException">The journal can't be read.</exception>
    public static (Book? Book, string Notice) Look(StoreFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return StoreFaults.Explained(folder, StoreAction.Read, () =>
        {
            // A line that is being written is not whole yet, and so not part of it.
            Journals.JournalScan journal = Journals.JournalScan.Read(folder.Journal);
            Book? book = journal.HasItsBeginning ? ContentBook.Of(folder, journal.Content())?.Book : throw StoreFaults.Damage(folder);
            return (book, $"{FolderLock.Taken(folder)}. This is a look at what is stored.");
        });
    }

    /// <summary>The whole book, or null where no household has been stored.</summary>
    /// <exception cref="StoreException">The store can't be read, or what it holds doesn't add up.</exception>
    public Book? Load()
    {
        ObjectDisposedException.ThrowIf(isDisposed, this);
        return StoreFaults.Explained(Folder, StoreAction.Read, ReadBook);
    }

    /// <summary>Stores a change whole, and returns when it is synced to disk.</summary>
    /// <exception cref="StoreException">It could not be stored; nothing of it is.</exception>
    /// <exception cref="ArgumentException">The household is one that could not be read again; nothing is stored.</exception>
    public void Save(BookChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        ObjectDisposedException.ThrowIf(isDisposed, this);
        long last = StoreFaults.Explained(Folder, StoreAction.Read, () => lastMovement ?? Content().In(CollectionNames.Movements).Count());
        if (change.Closed is not null)
        {
            Notices = Notices.AddRange(AutomaticBackup.Make(Folder));
        }

        // A fault of the program comes out here, as it is; from here on whatever goes wrong is one of disk or database.
        var documents = new ChangeDocuments(change, last, lastWeeks);
        StoreFaults.Explained(Folder, StoreAction.Write, () =>
        {
            Write(documents);
            return true;
        });
        lastMovement = last + change.Movements.Length;
        lastWeeks = change.Weeks ?? lastWeeks;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        isDisposed = true;
        files.Dispose();
        folderLock.Dispose();
    }

    // A database can be read and yet be damaged where it is written to. Nothing of the change is in the journal then,
    // which has all that was acknowledged: the database is made anew from it, and the change tried once more.
    private void Write(ChangeDocuments documents)
    {
        try
        {
            Reopen();
            WriteOnce(documents);
        }
        catch (Exception fault) when (fault is not StoreException && StoreFaults.IsDamage(fault))
        {
            Renew(StoreFiles.Rebuilt);
            WriteOnce(documents);
        }
    }

    private void WriteOnce(ChangeDocuments documents)
    {
        var edits = new EditList(files.Database, files.Journal.Last?.Digest ?? default);
        documents.AddTo(edits);
        files.Write(edits);
    }

    private void Renew(Func<StoreFolder, StoreFiles> open)
    {
        files.Dispose();
        areClosed = true;
        files = open(Folder);
        areClosed = false;
        Notices = Notices.AddRange(files.Notices);
    }

    private void Reopen()
    {
        if (areClosed)
        {
            Renew(StoreFiles.Open);
        }
    }

    private Book? ReadBook()
    {
        BookContent content = Content();
        if (ContentBook.Of(Folder, content) is not { } read)
        {
            return null;
        }

        lastMovement = read.Book.Ledger.Movements.Count;
        lastWeeks = read.Weeks;
        return read.Book;
    }

    // Opening looks at the ends of both files alone; damage in the middle of the database is met here.
    private BookContent Content()
    {
        Reopen();
        if (files.Content() is { } content)
        {
            return content;
        }

        Renew(StoreFiles.Mended);
        return files.Content() ?? throw StoreFaults.Damage(Folder);
    }
}
