using System.Collections.Immutable;
using System.Text;
using LiteDB;
using Payday.Core.Books;
using Payday.Store.Edits;
using Payday.Store.Fields;
using Payday.Store.Hashing;

namespace Payday.Store.Documents;

/// <summary>How a bank's files are read, as it is stored.</summary>
internal static class ReadingDocument
{
    public static readonly RecordForm<KeptReading> Form =
        new(CollectionNames.Readings, reading => Id(reading.Header), (left, right) => string.CompareOrdinal(left.Header, right.Header), Write, Read);

    private static void Write(IFieldWriter to, KeptReading reading)
    {
        to.Derived("_id", Id(reading.Header).AsString);
        to.Text("header", reading.Header);
        to.List("answers", reading.Answers, static (item, pair) =>
        {
            item.Text("asked", pair.Key);
            item.Text("answer", pair.Value);
        });
    }

    // A header may be longer than an id of the database.
    private static BsonValue Id(string header) => Convert.ToHexStringLower(Sha256.Of(Encoding.UTF8.GetBytes(header)));

    private static KeptReading Read(IFieldReader from) => new(
        from.Text("header"),
        from.List("answers", static item => KeyValuePair.Create(item.Text("asked"), item.Text("answer"))).Sorted(StringComparer.Ordinal));
}
