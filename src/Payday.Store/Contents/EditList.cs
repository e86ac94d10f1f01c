using LiteDB;
using Payday.Store.Databases;

namespace Payday.Store.Contents;

/// <summary>What a change does to the documents of a database, before anything is written.</summary>
/// <param name="database">The database as it is.</param>
/// <param name="before">The digest of all its documents.</param>
internal sealed class EditList(BookDatabase database, Digest before)
{
    private readonly OrderedDictionary<(string Collection, object Id), Edit> edits = [];

    /// <summary>The digest once they are done.</summary>
    public Digest After { get; private set; } = before;

    /// <summary>The edits, one for each document.</summary>
    public IReadOnlyList<Edit> Edits => [.. edits.Values];

    /// <summary>Adds a document that is not there.</summary>
    /// <exception cref="InvalidOperationException">It is there.</exception>
    public void Add(string collection, BsonDocument document)
    {
        if (Find(collection, document["_id"]) is not null)
        {
            throw new InvalidOperationException($"{collection} {document["_id"]} is stored already.");
        }

        Set(new Edit(collection, document["_id"], document), null);
    }

    /// <summary>Puts a document in its place, whether one is there or not.</summary>
    public void Put(string collection, BsonDocument document) =>
        Set(new Edit(collection, document["_id"], document), Find(collection, document["_id"]));

    /// <summary>Takes a document out, if it is there.</summary>
    public void Remove(string collection, BsonValue id)
    {
        if (Find(collection, id) is { } old)
        {
            Set(new Edit(collection, id, null), old);
        }
    }

    /// <summary>Takes all documents of a collection out.</summary>
    public void Clear(string collection)
    {
        BsonValue[] ids = [.. database.Collection(collection).FindAll().Select(document => document["_id"])];
        foreach (BsonValue id in ids)
        {
            Remove(collection, id);
        }
    }

    private BsonDocument? Find(string collection, BsonValue id) => edits.TryGetValue((collection, Edit.Key(id)), out Edit? pending)
        ? pending.Document
        : database.Collection(collection).FindById(id);

    private void Set(Edit edit, BsonDocument? old)
    {
        if (old is not null)
        {
            After -= Digest.Of(edit.Collection, old);
        }

        if (edit.Document is not null)
        {
            After += Digest.Of(edit.Collection, edit.Document);
        }

        edits[(edit.Collection, Edit.Key(edit.Id))] = edit;
    }
}
