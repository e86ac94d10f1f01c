using LiteDB;
using LiteDB.Engine;

namespace Payday.Store.Databases;

/// <summary>A LiteDB database while it is open, with its log.</summary>
internal sealed class Connection : IDisposable
{
    private Connection(LiteDatabase database, LogFile log)
    {
        Database = database;
        Log = log;
    }

    public LiteDatabase Database { get; }

    public LogFile Log { get; }

    /// <summary>Opens a database whose data file is there; an empty file is a new database.</summary>
    public static Connection Open(DatabaseFiles files)
    {
        var log = new LogFile(files.Log);
        try
        {
            // Upper and lower case differ, in every language: LiteDB's default follows the machine on which the
            // database was made.
            var engine = new LiteEngine(new EngineSettings { Filename = files.Data, LogStream = log, Collation = Collation.Binary });
            return new Connection(new LiteDatabase(engine), log);
        }
        catch
        {
            log.Dispose();
            throw;
        }
    }

    public void Dispose()
    {
        Database.Dispose();
        Log.Dispose();
    }
}
