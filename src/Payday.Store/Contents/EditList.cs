using LiteDB;
using Payday.Store.Edits;

namespace Payday.Store.Contents;

/// <summary>What a change does to the documents stored, before anything is written.</summary>
/// <param name="stored">What is stored.</param>
/// <param name="before">The digest of all its documents.</param>
internal sealed class EditList(StoredDigests stored, Digest before)
{
    private readonly OrderedDictionary<(string Collection, object Id), Stored<Edit>> edits = [];

    /// <summary>The digest once they are done.</summary>
    public Digest After { get; private set; } = before;

    /// <summary>The edits, one for each document.</summary>
    public IReadOnlyList<Edit> Edits => [.. edits.Values.Select(edit => edit.Record)];

    /// <summary>The digest of the document that one of the edits puts.</summary>
    public Digest DigestOf(Edit edit) => edits[(edit.Collection, Edit.Key(edit.Id))].Digest;

    /// <summary>Adds a document that is not there.</summary>
    /// <exception cref="InvalidOperationException">It is there.</exception>
    public void Add(string collection, BsonDocument document)
    {
        if (Find(collection, document["_id"]) is not null)
        {
            throw new InvalidOperationException($"{collection} {document["_id"]} is stored already.");
        }

        Put(collection, document);
    }

    /// <summary>Puts a document in its place, whether one is there or not.</summary>
    public void Put(string collection, BsonDocument document) => Set(new Edit(collection, document["_id"], document));

    /// <summary>Takes a document out, if it is there.</summary>
    public void Remove(string collection, BsonValue id)
    {
        if (Find(collection, id) is not null)
        {
            Set(new Edit(collection, id, null));
        }
    }

    /// <summary>Takes all documents of a collection out.</summary>
    public void Clear(string collection)
    {
        foreach (object key in stored.Keys(collection))
        {
            Remove(collection, key is long number ? number : (string)key);
        }
    }

    private Digest? Find(string collection, BsonValue id) => edits.TryGetValue((collection, Edit.Key(id)), out Stored<Edit> pending)
        ? pending.Record.Document is null ? null : pending.Digest
        : stored.Find(collection, Edit.Key(id));

    private void Set(Edit edit)
    {
        if (Find(edit.Collection, edit.Id) is { } old)
        {
            After -= old;
        }

        Digest digest = edit.Document is null ? default : Digest.Of(edit.Collection, edit.Document);
        After += digest;
        edits[(edit.Collection, Edit.Key(edit.Id))] = new Stored<Edit>(edit, digest);
    }
}
