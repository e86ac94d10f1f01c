using LiteDB;
using Payday.Store.Databases;

namespace Payday.Store.Contents;

/// <summary>All documents of a store, wherever they were read from.</summary>
internal sealed class BookContent
{
    private readonly Dictionary<string, Dictionary<object, BsonDocument>> collections =
        CollectionNames.All.ToDictionary(name => name, _ => new Dictionary<object, BsonDocument>(), StringComparer.Ordinal);

    /// <summary>The digest over all of them.</summary>
    public Digest Digest { get; private set; }

    /// <summary>How many there are.</summary>
    public int Count => collections.Values.Sum(documents => documents.Count);

    /// <summary>All documents, as the edits that would make them.</summary>
    public IEnumerable<Edit> Edits => collections.SelectMany(pair => pair.Value.Values.Select(document => new Edit(pair.Key, document["_id"], document)));

    /// <summary>Reads a database whole.</summary>
    /// <exception cref="Exception">Anything: a damaged one trips in any way there is.</exception>
    public static BookContent Read(BookDatabase database)
    {
        var content = new BookContent();
        foreach ((string name, Dictionary<object, BsonDocument> documents) in content.collections)
        {
            foreach (BsonDocument document in database.Collection(name).FindAll())
            {
                documents.Add(Edit.Key(document["_id"]), document);
                content.Digest += Digest.Of(name, document);
            }
        }

        return content;
    }

    /// <summary>The documents of a collection, in no order.</summary>
    public IEnumerable<BsonDocument> In(string collection) => collections[collection].Values;

    /// <summary>A document, or null.</summary>
    public BsonDocument? Find(string collection, BsonValue id) => collections[collection].GetValueOrDefault(Edit.Key(id));

    /// <summary>Does an edit.</summary>
    /// <exception cref="FormatException">It is of a collection that no store has.</exception>
    public void Apply(Edit edit)
    {
        if (!collections.TryGetValue(edit.Collection, out Dictionary<object, BsonDocument>? documents))
        {
            throw new FormatException($"{edit.Collection} is no collection of a store.");
        }

        object key = Edit.Key(edit.Id);
        if (documents.Remove(key, out BsonDocument? old))
        {
            Digest -= Digest.Of(edit.Collection, old);
        }

        if (edit.Document is { } put)
        {
            documents.Add(key, put);
            Digest += Digest.Of(edit.Collection, put);
        }
    }
}
