using System.Text;
using LiteDB;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Databases;

/// <summary>The version of the stored documents and the last line of the journal, in documents of their own.</summary>
/// <remarks>
/// Version 2 added what happens between paydays, in collections of its own, and the wallet among the purposes of cash.
/// Version 3 added the journal, version 4 has household files of version 2, version 5 has due payments, moves, account
/// entries, reconciliations and notes received, version 6 what is entered from statements. What an older version holds is all of this
/// one as it stands, so there is nothing to rewrite: the version keeps an older program from opening what this one wrote,
/// and from taking it for damaged.
/// </remarks>
internal static class Schema
{
    /// <summary>The collection that the documents are in.</summary>
    public const string Collection = "meta";

    /// <summary>The first version with a journal.</summary>
    public const int FirstWithJournal = 3;

    private const string Id = "schema";
    private const string JournalId = "journal";

    /// <summary>Writes the version, and the journal's line that comes to what is stored.</summary>
    public static void Mark(ILiteCollection<BsonDocument> meta, JournalLine? line)
    {
        meta.Upsert(new BsonDocument { ["_id"] = Id, ["version"] = StoreVersion.Current });
        if (line is null)
        {
            meta.Delete(JournalId);
        }
        else
        {
            meta.Upsert(new BsonDocument { ["_id"] = JournalId, ["line"] = Encoding.UTF8.GetString(line.Text.Span) });
        }
    }

    /// <summary>The line of the journal that comes to what is stored; null where nothing was stored yet.</summary>
    /// <exception cref="StoreException">It is damaged.</exception>
    public static JournalLine? LastLine(StoreFolder folder, ILiteCollection<BsonDocument> meta) =>
        Find(meta, JournalId) is { } marked
            ? JournalLine.Read(Encoding.UTF8.GetBytes(marked["line"].AsString)) ?? throw StoreFaults.Damage(folder)
            : null;

    /// <summary>Refuses what this program can't read.</summary>
    /// <exception cref="StoreException">There is no version, or a newer one.</exception>
    /// <returns>The version that is stored.</returns>
    public static int Check(StoreFolder folder, ILiteCollection<BsonDocument> meta)
    {
        BsonValue version = Find(meta, Id)?["version"] ?? BsonValue.Null;
        if (!version.IsInt32 || version.AsInt32 < 1)
        {
            throw DatabaseCheck.NotOurs(folder);
        }

        if (version.AsInt32 > StoreVersion.Current)
        {
            throw new StoreException(new FolderFault.Newer(folder.Path));
        }

        return version.AsInt32;
    }

    // Read through the whole collection: what is damaged there is met too.
    private static BsonDocument? Find(ILiteCollection<BsonDocument> meta, string id) => meta.FindAll().FirstOrDefault(document => document["_id"] == id);
}
