using LiteDB;
using LiteDB.Engine;
using Payday.Store.Contents;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Databases;

/// <summary>The database of a folder while it is only looked at: whatever LiteDB does, its files stay as they are.</summary>
internal sealed class DatabasePeek : IDisposable
{
    private readonly StoreFolder folder;
    private readonly UnwrittenFile data;
    private readonly UnwrittenFile log;
    private readonly LiteDatabase database;

    /// <summary>Opens the files of a folder whose lock is held.</summary>
    /// <exception cref="Exception">Anything: a damaged one trips in any way there is.</exception>
    public DatabasePeek(StoreFolder folder)
    {
        this.folder = folder;
        var files = new DatabaseFiles(folder.Database);
        data = new UnwrittenFile(files.Data);
        try
        {
            log = new UnwrittenFile(files.Log);
        }
        catch
        {
            data.CloseFile();
            throw;
        }

        try
        {
            database = new LiteDatabase(new LiteEngine(new EngineSettings { DataStream = data, LogStream = log, Collation = Collation.Binary }));
            Version = Schema.Check(folder, Collection(Schema.Collection));
        }
        catch
        {
            Dispose();
            throw;
        }
    }

    /// <summary>The version of what is stored.</summary>
    public int Version { get; }

    /// <summary>The last line of the journal that is in the database; null in a store where nothing was stored yet, or of before the journal.</summary>
    public JournalLine? LastLine => Version < Schema.FirstWithJournal ? null : Schema.LastLine(folder, Collection(Schema.Collection));

    /// <summary>All its documents.</summary>
    /// <exception cref="Exception">Anything: a damaged one trips in any way there is.</exception>
    public BookContent Content() => DatabaseContent.Of(Collection);

    /// <inheritdoc/>
    public void Dispose()
    {
        try
        {
            database?.Dispose();
        }
        finally
        {
            data.CloseFile();
            log.CloseFile();
        }
    }

    private ILiteCollection<BsonDocument> Collection(string name) => database.GetCollection(name);
}
