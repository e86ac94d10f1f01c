using LiteDB;

namespace Payday.Store.Databases;

/// <summary>The version of the stored documents, in a document of its own that every store has.</summary>
internal static class Schema
{
    /// <summary>The collection that the document is in.</summary>
    public const string Collection = "meta";

    private const string Id = "schema";

    /// <summary>Writes the version into a new database.</summary>
    public static void Begin(ILiteCollection<BsonDocument> meta) =>
        meta.Insert(new BsonDocument { ["_id"] = Id, ["version"] = BookStore.SchemaVersion });

    /// <summary>Makes an older store one of this version.</summary>
    /// <remarks>
    /// Version 2 added what happens between paydays, in collections of its own, and the wallet among the jobs of cash.
    /// What a version 1 holds is all of version 2 as it stands, so there is nothing to rewrite but the version: it keeps
    /// a program that knows no wallet from opening what this one wrote.
    /// </remarks>
    public static void CarryForward(ILiteCollection<BsonDocument> meta) =>
        meta.Update(new BsonDocument { ["_id"] = Id, ["version"] = BookStore.SchemaVersion });

    /// <summary>Refuses what this program can't read.</summary>
    /// <exception cref="StoreException">There is no version, or a newer one.</exception>
    /// <returns>The version that is stored.</returns>
    public static int Check(StoreFolder folder, ILiteCollection<BsonDocument> meta)
    {
        BsonValue version = meta.FindAll().FirstOrDefault(document => document["_id"] == Id)?["version"] ?? BsonValue.Null;
        if (!version.IsInt32 || version.AsInt32 < 1)
        {
            throw DatabaseCheck.NotOurs(folder);
        }

        if (version.AsInt32 > BookStore.SchemaVersion)
        {
            throw new StoreException($"{folder.Path} was written by a newer Payday. Use that version, or another folder with --data.");
        }

        return version.AsInt32;
    }
}
