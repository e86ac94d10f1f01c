using System.Collections.Immutable;
using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Store.Documents;

namespace Payday.Store;

/// <summary>The book of one data folder, in a LiteDB database that one process at a time may open.</summary>
/// <remarks>
/// Each <see cref="Save"/> is one transaction followed by a checkpoint, because only a checkpoint syncs
/// the data file to disk: what was acknowledged is there after a power cut.
/// </remarks>
public sealed class BookStore : IDisposable
{
    /// <summary>The version of the documents that this program reads and writes.</summary>
    public const int SchemaVersion = 1;

    private const string SchemaId = "schema";
    private const string HouseholdId = "household";
    private readonly FolderLock folderLock;
    private readonly LiteDatabase database;

    private BookStore(StoreFolder folder, FolderLock folderLock, LiteDatabase database)
    {
        Folder = folder;
        this.folderLock = folderLock;
        this.database = database;
    }

    /// <summary>The folder.</summary>
    public StoreFolder Folder { get; }

    private ILiteCollection<BsonDocument> Meta => database.GetCollection("meta");

    private ILiteCollection<BsonDocument> Households => database.GetCollection("household");

    private ILiteCollection<BsonDocument> Movements => database.GetCollection("movements", BsonAutoId.Int64);

    private ILiteCollection<BsonDocument> Closed => database.GetCollection("closed");

    private ILiteCollection<BsonDocument> Drafts => database.GetCollection("drafts");

    /// <summary>Opens the store of a folder, making both where they are missing.</summary>
    /// <exception cref="StoreException">
    /// Another process has it, the folder can't be used, or the store was written by a newer version.
    /// </exception>
    public static BookStore Open(StoreFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return StoreFaults.Explained(folder, "open", () =>
        {
            MakePrivate(folder);
            FolderLock folderLock = FolderLock.Take(folder);
            LiteDatabase? database = null;
            try
            {
                database = new LiteDatabase(new ConnectionString { Filename = folder.Database, Connection = ConnectionType.Direct });
                var store = new BookStore(folder, folderLock, database);
                store.CheckSchema();
                return store;
            }
            catch
            {
                database?.Dispose();
                folderLock.Dispose();
                throw;
            }
        });
    }

    /// <summary>The whole book, or null where no household has been stored.</summary>
    /// <exception cref="StoreException">The store can't be read, or what it holds doesn't add up.</exception>
    public Book? Load() => StoreFaults.Explained(Folder, "read", () =>
    {
        BsonDocument? stored = Households.FindById(HouseholdId);
        if (stored is null)
        {
            return null;
        }

        Household household = HouseholdDocument.To(stored);
        Currency currency = household.Currency;
        ImmutableArray<Movement> movements =
            [.. Movements.Query().OrderBy("_id").ToEnumerable().Select(document => MovementDocument.To(document, currency))];
        ImmutableArray<ClosedPayday> closed =
            [.. Closed.Query().OrderBy("_id").ToEnumerable().Select(document => ClosedDocument.To(document, currency))];
        RoutineDraft? draft = Drafts.FindAll().Select(document => DraftDocument.To(document, currency)).FirstOrDefault();
        return new Book(household, Sound(movements, household), closed, draft);
    });

    /// <summary>Stores a change whole, and returns when it is synced to disk.</summary>
    /// <exception cref="StoreException">It could not be stored; nothing of it is.</exception>
    public void Save(BookChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        StoreFaults.Explained(Folder, "write", () =>
        {
            database.BeginTrans();
            try
            {
                Write(change);
                database.Commit();
            }
            catch
            {
                database.Rollback();
                throw;
            }

            database.Checkpoint();
            return true;
        });
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        database.Dispose();
        folderLock.Dispose();
    }

    private void Write(BookChange change)
    {
        if (change.Household is { } household)
        {
            Households.Upsert(HouseholdDocument.From(household, HouseholdId));
        }

        long number = Movements.Count();
        foreach (Movement movement in change.Movements)
        {
            number++;
            Movements.Insert(MovementDocument.From(movement with { Number = number }));
        }

        if (change.Closed is { } closed)
        {
            Closed.Insert(ClosedDocument.From(closed));
        }

        if (change.DropsDraft || change.Draft is not null)
        {
            Drafts.DeleteAll();
        }

        if (change.Draft is { } draft)
        {
            Drafts.Insert(DraftDocument.From(draft));
        }
    }

    private void CheckSchema()
    {
        BsonDocument? stored = Meta.FindById(SchemaId);
        if (stored is null)
        {
            Meta.Insert(new BsonDocument { ["_id"] = SchemaId, ["version"] = SchemaVersion });
        }
        else if (stored["version"].AsInt32 > SchemaVersion)
        {
            throw new StoreException($"{Folder.Path} was written by a newer Payday. Use that version, or another folder with --data.");
        }
    }

    private Ledger Sound(ImmutableArray<Movement> movements, Household household)
    {
        for (int i = 0; i < movements.Length; i++)
        {
            if (movements[i].Number != i + 1)
            {
                throw new StoreException($"Movement {i + 1} is missing from the ledger in {Folder.Path}. Nothing was changed; keep a copy of the folder.");
            }
        }

        Ledger ledger = Ledger.Empty(household.Currency).Add(movements);
        string? fault = LedgerCheck.Faults(ledger.Balances, household.Settings.Numbers).FirstOrDefault();
        return fault is null
            ? ledger
            : throw new StoreException($"The ledger in {Folder.Path} doesn't add up: {fault} Nothing was changed; keep a copy of the folder.");
    }

    private static void MakePrivate(StoreFolder folder)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(folder.Path);
        }
        else
        {
            Directory.CreateDirectory(folder.Path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }
}
