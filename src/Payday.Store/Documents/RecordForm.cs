using LiteDB;
using Payday.Core.Amounts;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>How a kind of record is stored: where, under which id, and which fields it has.</summary>
/// <param name="Collection">The collection that holds them.</param>
/// <param name="Id">The id of a record's document.</param>
/// <param name="Order">The order in which a book has them.</param>
/// <param name="Write">Says the fields.</param>
/// <param name="Read">Asks for them, in the same order.</param>
internal sealed record RecordForm<T>(
    string Collection, Func<T, BsonValue> Id, Comparison<T> Order, Action<IFieldWriter, T> Write, Func<IFieldReader, T> Read)
{
    /// <summary>Whether their ids are numbers that rise in the order of a book.</summary>
    public bool IsNumbered { get; init; }

    /// <summary>What is known of a record in a snapshot without a look at it: its traits and the number of its pot; null where nothing has to be.</summary>
    public Func<T, (byte Traits, byte Pot)>? Mark { get; init; }

    /// <summary>A record as a document.</summary>
    public BsonDocument From(T record) => DocumentWriter.Of(record, Write);

    /// <summary>A document as a record.</summary>
    /// <exception cref="Exception">Anything: it is not the document of such a record.</exception>
    public T To(BsonDocument document, Currency currency) => Read(new DocumentReader(document, currency));
}
