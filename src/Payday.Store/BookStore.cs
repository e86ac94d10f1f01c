using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Weeks;
using Payday.Store.Databases;
using Payday.Store.Documents;

namespace Payday.Store;

/// <summary>The book of one data folder, in a LiteDB database that one process at a time may open.</summary>
/// <remarks>
/// Each <see cref="Save"/> is one transaction, synced to disk before it returns: what was acknowledged is there
/// after a power cut. Use it from one thread at a time.
/// </remarks>
public sealed class BookStore : IDisposable
{
    /// <summary>The version of the documents that this program reads and writes.</summary>
    public const int SchemaVersion = 2;

    private readonly FolderLock folderLock;
    private readonly BookDatabase database;

    // The number of the last movement stored, once it is known.
    private long? lastMovement;

    // What is stored of what happened between paydays, once it is known.
    private WeekRecords? lastWeeks;
    private bool isDisposed;

    private BookStore(StoreFolder folder, FolderLock folderLock, BookDatabase database)
    {
        Folder = folder;
        this.folderLock = folderLock;
        this.database = database;
    }

    /// <summary>The folder.</summary>
    public StoreFolder Folder { get; }

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
                return new BookStore(folder, folderLock, BookDatabase.Open(folder));
            }
            catch
            {
                folderLock.Dispose();
                throw;
            }
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
        long last = StoreFaults.Explained(
            Folder, StoreAction.Read, () => lastMovement ?? database.Movements.FindAll().LastOrDefault()?["_id"].AsInt64 ?? 0);

        // A fault of the program comes out here, as it is; from here on whatever goes wrong is one of disk or database.
        var documents = new ChangeDocuments(change, last, lastWeeks);
        StoreFaults.Explained(Folder, StoreAction.Write, () =>
        {
            database.Change(() => documents.WriteTo(database));
            return true;
        });
        lastMovement = last + change.Movements.Length;
        lastWeeks = change.Weeks ?? lastWeeks;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        isDisposed = true;
        database.Dispose();
        folderLock.Dispose();
    }

    private Book? ReadBook()
    {
        if (database.Households.FindAll().FirstOrDefault() is not { } stored)
        {
            return database.Movements.FindAll().Any() ? throw new StoreException(StoreFaults.Damaged(Folder)) : null;
        }

        Household household = HouseholdDocument.To(stored);
        Currency currency = household.Currency;
        ImmutableArray<Movement> movements =
            [.. database.Movements.FindAll().Select(document => MovementDocument.To(document, currency)).OrderBy(movement => movement.Number)];
        ImmutableArray<ClosedPayday> closed =
            [.. database.Closed.FindAll().Select(document => ClosedDocument.To(document, currency)).OrderBy(payday => payday.Payday)];
        RoutineDraft? draft = database.Drafts.FindAll().Select(document => DraftDocument.To(document, currency)).FirstOrDefault();
        WeekRecords weeks = WeekDocuments.Read(database, currency);
        Ledger ledger = StoredLedger.Sound(Folder, household, movements, closed, weeks);
        lastMovement = movements.Length;
        lastWeeks = weeks;
        return new Book(household, ledger, closed, draft is null ? null : DraftFit.To(household, draft)) { Weeks = weeks.Fitting(household) };
    }
}
