using LiteDB;
using Payday.Core.Amounts;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Contents;

/// <summary>All records of one kind, whichever that is.</summary>
internal interface IColumn
{
    /// <summary>The collection they are from.</summary>
    string Collection { get; }

    /// <summary>How many there are.</summary>
    int Count { get; }

    /// <summary>The ids and digests of their documents; none where these are not kept.</summary>
    IEnumerable<KeyValuePair<object, Digest>> Digests { get; }

    /// <summary>The documents that the records are stored as.</summary>
    IEnumerable<BsonDocument> Documents { get; }

    /// <summary>The digest of a document by its id; null where there is none.</summary>
    Digest? Find(object key);

    /// <summary>Takes the records of documents, in the order of a book.</summary>
    void Take(IEnumerable<Stored<BsonDocument>> documents, Currency currency);

    /// <summary>Does what the journal says.</summary>
    /// <param name="edits">Edits of this collection, in order.</param>
    /// <param name="currency">The currency of all amounts.</param>
    /// <returns>False where they can't be done here.</returns>
    bool Apply(IEnumerable<Edit> edits, Currency currency);

    /// <summary>Writes them all.</summary>
    void Write(PackedWriter to);

    /// <summary>Reads what <see cref="Write"/> wrote.</summary>
    void Read(PackedReader from);
}
