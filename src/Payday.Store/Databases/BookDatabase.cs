using LiteDB;
using Payday.Store.Contents;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

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

    // The data file as it was first opened.
    private FileFacts data;

    private BookDatabase(StoreFolder folder) => this.folder = folder;

    /// <summary>The version of what is stored.</summary>
    public int Version { get; private set; }

    /// <summary>The last line of the journal that is in the database; null in a store where nothing was stored yet.</summary>
    public JournalLine? LastLine => Schema.LastLine(folder, Collection(Schema.Collection));

    /// <summary>The path of the first of its files that is not the one any more that was opened; null where all are.</summary>
    public string? Replaced => !data.IsStillAt(folder.Database) ? folder.Database
        : connection?.Log.IsThere == false ? new DatabaseFiles(folder.Database).Log
        : null;

    // After a failure the database is opened afresh: LiteDB's state in memory can't be trusted then.
    private Connection Connected => connection ??= Connect();

    /// <summary>Opens the database of a folder whose lock is held.</summary>
    /// <exception cref="StoreException">The files are missing, or not a sound database of this program and version.</exception>
    public static BookDatabase Open(StoreFolder folder)
    {
        var database = new BookDatabase(folder);
        try
        {
            database.Version = Schema.Check(folder, database.Collection(Schema.Collection));
            database.Settle();
            return database;
        }
        catch
        {
            database.Dispose();
            throw;
        }
    }

    /// <summary>A collection by its name.</summary>
    public ILiteCollection<BsonDocument> Collection(string name) => Connected.Database.GetCollection(name);

    /// <summary>All its documents.</summary>
    /// <exception cref="Exception">Anything: a damaged one trips in any way there is.</exception>
    public BookContent Content() => DatabaseContent.Of(Collection);

    /// <summary>Does what a line of the journal says; afterwards it is the last line in the database.</summary>
    public void Take(JournalLine line, IEnumerable<Edit> edits) => Change(() =>
    {
        foreach (Edit edit in edits)
        {
            ILiteCollection<BsonDocument> collection = Collection(edit.Collection);
            if (edit.Document is { } document)
            {
                collection.Upsert(document);
            }
            else
            {
                collection.Delete(edit.Id);
            }
        }

        Schema.Mark(Collection(Schema.Collection), line);
    });

    /// <summary>Marks the line of the journal that comes to what is stored, and the version.</summary>
    public void Mark(JournalLine? line) => Change(() => Schema.Mark(Collection(Schema.Collection), line));

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

    /// <summary>Leaves the files as they are when this is closed: they, or the folder, are another process's by now.</summary>
    public void Abandon() => connection?.Log.Abandon();

    /// <inheritdoc/>
    public void Dispose() => Disconnect();

    /// <summary>Makes the database of a folder that has none.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="content">What is in it.</param>
    /// <param name="last">The line of the journal that comes to this.</param>
    public static void Create(StoreFolder folder, BookContent content, JournalLine? last)
    {
        // Made under another name, so that a database of the right name is always whole: an empty one is a damaged one.
        var unfinished = new DatabaseFiles(folder.Unfinished);
        unfinished.Delete();
        try
        {
            // LiteDB would make it for all to read.
            PrivateFile.Open(unfinished.Data, FileShare.ReadWrite).Dispose();
            using (Connection made = Connection.Open(unfinished))
            {
                made.Database.CheckpointSize = 0;
                Fill(made.Database, content, last);
                made.Log.Sync();
                made.Database.Checkpoint();
            }

            File.Move(unfinished.Data, folder.Database);
            FolderSync.Of(folder.Path);
        }
        finally
        {
            unfinished.Delete();
        }
    }

    private static void Fill(LiteDatabase made, BookContent content, JournalLine? last)
    {
        made.BeginTrans();
        foreach (string name in CollectionNames.All)
        {
            // In the order of their ids, which is the order in which they were stored and are read.
            made.GetCollection(name).Insert(content.In(name).OrderBy(document => document["_id"]));
        }

        Schema.Mark(made.GetCollection(Schema.Collection), last);
        made.Commit();
    }

    private Connection Connect()
    {
        if (!DatabaseCheck.Exists(folder))
        {
            throw DatabaseCheck.Missing(folder);
        }

        data = data == default ? FileFacts.Of(folder.Database) : data;
        if (!data.IsStillAt(folder.Database))
        {
            throw FolderChanged.Fault(folder.Database, isWritten: false);
        }

        return Connection.Open(new DatabaseFiles(folder.Database));
    }

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
            throw new StoreException(new FolderFault.DiskFailedAmid(folder.Path), fault);
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
