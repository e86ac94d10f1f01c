using LiteDB;

namespace Payday.Store.Databases;

/// <summary>The database of a folder: its collections, and changes that are on disk or never were.</summary>
/// <remarks>
/// A commit of LiteDB writes to its log and syncs nothing; a checkpoint copies the log into the data file, syncs
/// that, and empties the log. So a change here is commit, sync of the log, checkpoint: from the sync on it outlives
/// a power cut, even one in the middle of the checkpoint, because the log is whole and is copied again.
/// LiteDB's own checkpoints are off (<see cref="Create"/>): they would come before that sync.
/// </remarks>
internal sealed class BookDatabase : IDisposable
{
    private readonly StoreFolder folder;
    private Connection? connection;

    private BookDatabase(StoreFolder folder) => this.folder = folder;

    public ILiteCollection<BsonDocument> Households => Collection("household");

    public ILiteCollection<BsonDocument> Movements => Collection("movements");

    public ILiteCollection<BsonDocument> Closed => Collection("closed");

    public ILiteCollection<BsonDocument> Drafts => Collection("drafts");

    public ILiteCollection<BsonDocument> Fills => Collection("fills");

    public ILiteCollection<BsonDocument> Purchases => Collection("purchases");

    public ILiteCollection<BsonDocument> Counts => Collection("counts");

    public ILiteCollection<BsonDocument> Settled => Collection("settled");

    public ILiteCollection<BsonDocument> Returns => Collection("returns");

    public ILiteCollection<BsonDocument> CountDrafts => Collection("countDrafts");

    // After a failure the database is opened afresh: LiteDB's state in memory can't be trusted then.
    private Connection Connected => connection ??= Connect();

    /// <summary>Opens the database of a folder whose lock is held, making it where it is missing.</summary>
    /// <exception cref="StoreException">The files are not a sound database of this program and version.</exception>
    public static BookDatabase Open(StoreFolder folder)
    {
        if (!DatabaseCheck.Exists(folder))
        {
            Create(folder);
        }

        var database = new BookDatabase(folder);
        try
        {
            int version = Schema.Check(folder, database.Collection(Schema.Collection));
            database.Settle();
            if (version < BookStore.SchemaVersion)
            {
                database.Change(() => Schema.CarryForward(database.Collection(Schema.Collection)));
            }

            return database;
        }
        catch
        {
            database.Dispose();
            throw;
        }
    }

    /// <summary>Does all of some work on the collections, or none of it; when it returns, the disk has it.</summary>
    public void Change(Action work)
    {
        Connection begun = Connected;
        long logBefore = begun.Log.Length;
        try
        {
            begun.Database.BeginTrans();
            work();
            begun.Database.Commit();
            begun.Log.Sync();
        }
        catch
        {
            Undo(logBefore);
            throw;
        }

        Settle();
    }

    /// <inheritdoc/>
    public void Dispose() => Disconnect();

    // Made under another name, so that a database of the right name is always whole: an empty one is a damaged one.
    private static void Create(StoreFolder folder)
    {
        var unfinished = new DatabaseFiles(folder.Unfinished);
        unfinished.Delete();
        try
        {
            // LiteDB would make it for all to read.
            PrivateFile.Open(unfinished.Data, FileShare.ReadWrite).Dispose();
            using (Connection made = Connection.Open(unfinished))
            {
                made.Database.CheckpointSize = 0;
                Schema.Begin(made.Database.GetCollection(Schema.Collection));
                made.Log.Sync();
                made.Database.Checkpoint();
            }

            File.Move(unfinished.Data, folder.Database);
        }
        finally
        {
            unfinished.Delete();
        }
    }

    private ILiteCollection<BsonDocument> Collection(string name) => Connected.Database.GetCollection(name);

    private Connection Connect() => DatabaseCheck.Exists(folder)
        ? Connection.Open(new DatabaseFiles(folder.Database))
        : throw DatabaseCheck.Missing(folder);

    private void Undo(long logBefore)
    {
        LogFile log = Connected.Log;
        Connected.Database.Dispose();
        try
        {
            log.Cut(logBefore);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new StoreException($"The disk that holds {folder.Path} failed while it stored what you entered. Close Payday, open it again and look whether it is there.", fault);
        }
        finally
        {
            Disconnect();
        }
    }

    // The log is synced, so where there is no room to copy it (or no disk any more) nothing is lost: the next opening
    // or the next change copies it.
    private void Settle()
    {
        try
        {
            Connected.Database.Checkpoint();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or LiteException)
        {
            Disconnect();
        }
    }

    private void Disconnect()
    {
        connection?.Dispose();
        connection = null;
    }
}
