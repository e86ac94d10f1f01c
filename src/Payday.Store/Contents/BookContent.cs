using LiteDB;
using Payday.Store.Documents;
using Payday.Store.Edits;

namespace Payday.Store.Contents;

/// <summary>All documents of a store, wherever they were read from.</summary>
internal sealed class BookContent
{
    private readonly Dictionary<string, Dictionary<object, Stored<BsonDocument>>> collections =
        CollectionNames.All.ToDictionary(name => name, _ => new Dictionary<object, Stored<BsonDocument>>(), StringComparer.Ordinal);

    /// <summary>The digest over all of them.</summary>
    public Digest Digest { get; private set; }

    /// <summary>How many there are.</summary>
    public int Count => collections.Values.Sum(documents => documents.Count);

    /// <summary>All documents, as the edits that would make them.</summary>
    public IEnumerable<Edit> Edits => collections.SelectMany(pair => pair.Value.Values.Select(stored => new Edit(pair.Key, stored.Record["_id"], stored.Record)));

    /// <summary>The documents that records are stored as.</summary>
    public static BookContent Of(StoredRecords records)
    {
        var content = new BookContent();
        content.Add(CollectionNames.Households, new BsonDocument { ["_id"] = HouseholdDocument.Id, ["file"] = records.Household.Record });
        foreach (IColumn column in records.Columns)
        {
            foreach (BsonDocument document in column.Documents)
            {
                content.Add(column.Collection, document);
            }
        }

        return content;
    }

    /// <summary>The documents of a collection, in no order.</summary>
    public IEnumerable<BsonDocument> In(string collection) => collections[collection].Values.Select(stored => stored.Record);

    /// <summary>The documents of a collection with their digests, in no order.</summary>
    public IReadOnlyList<Stored<BsonDocument>> Stored(string collection) => [.. collections[collection].Values];

    /// <summary>A document, or null.</summary>
    public BsonDocument? Find(string collection, BsonValue id) => collections[collection].GetValueOrDefault(Edit.Key(id)).Record;

    /// <summary>Does an edit.</summary>
    /// <exception cref="FormatException">It is of a collection that no store has.</exception>
    public void Apply(Edit edit)
    {
        if (!collections.TryGetValue(edit.Collection, out Dictionary<object, Stored<BsonDocument>>? documents))
        {
            throw new FormatException($"{edit.Collection} is no collection of a store.");
        }

        if (documents.Remove(Edit.Key(edit.Id), out Stored<BsonDocument> old))
        {
            Digest -= old.Digest;
        }

        if (edit.Document is { } put)
        {
            Add(edit.Collection, put);
        }
    }

    /// <summary>Adds a document that is not there yet.</summary>
    public void Add(string collection, BsonDocument document)
    {
        var stored = new Stored<BsonDocument>(document, Digest.Of(collection, document));
        collections[collection].Add(Edit.Key(document["_id"]), stored);
        Digest += stored.Digest;
    }
}
