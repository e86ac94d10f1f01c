using LiteDB;
using Payday.Store.Folders;

namespace Payday.Store.Tests.Books;

/// <summary>Changes a store behind the program's back.</summary>
internal static class RawDatabase
{
    public static void Edit(StoreFolder folder, Action<LiteDatabase> edit)
    {
        using var database = new LiteDatabase(new ConnectionString { Filename = folder.Database, Collation = Collation.Binary });
        edit(database);
        database.Checkpoint();
    }
}
