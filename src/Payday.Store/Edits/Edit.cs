using LiteDB;

namespace Payday.Store.Edits;

/// <summary>A document put in its place, or taken out where <paramref name="Document"/> is null.</summary>
/// <param name="Collection">The collection.</param>
/// <param name="Id">The id of the document.</param>
/// <param name="Document">What is there from now on.</param>
internal sealed record Edit(string Collection, BsonValue Id, BsonDocument? Document)
{
    /// <summary>The id as a key of a dictionary: 32 and 64 bits are the same number.</summary>
    public static object Key(BsonValue id) => id.Type switch
    {
        BsonType.Int32 or BsonType.Int64 => id.AsInt64,
        BsonType.String => id.AsString,
        _ => throw new FormatException($"A document has an id of the kind {id.Type}."),
    };
}
