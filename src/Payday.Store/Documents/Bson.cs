using System.Collections.Immutable;
using System.Globalization;
using LiteDB;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;

namespace Payday.Store.Documents;

/// <summary>How single values stand in documents: dates as ISO text, amounts as whole minor units.</summary>
internal static class Bson
{
    public static BsonValue Of(LocalDate? date) => date is { } value ? LocalDatePattern.Iso.Format(value) : BsonValue.Null;

    public static LocalDate Date(BsonValue value) => LocalDatePattern.Iso.Parse(value.AsString).GetValueOrThrow();

    public static LocalDate? OptionalDate(BsonValue value) => value.IsNull ? null : Date(value);

    public static Money Amount(BsonValue value, Currency currency) => Money.FromMinorUnits(value.AsInt64, currency);

    // A list, not a document: the fields of a BSON document don't differ by case alone, and names that people give may.
    public static BsonArray Of(ImmutableSortedDictionary<string, Money> amounts) =>
        Array(amounts.Select(pair => new BsonDocument { ["id"] = pair.Key, ["amount"] = pair.Value.MinorUnits }));

    public static ImmutableSortedDictionary<string, Money> Amounts(BsonValue value, Currency currency) =>
        value.AsArray.ToImmutableSortedDictionary(
            pair => pair["id"].AsString, pair => Amount(pair["amount"], currency), StringComparer.Ordinal);

    public static BsonDocument Of(ImmutableSortedDictionary<long, int> notes)
    {
        var document = new BsonDocument();
        foreach ((long note, int count) in notes)
        {
            document[note.ToString(CultureInfo.InvariantCulture)] = count;
        }

        return document;
    }

    public static ImmutableSortedDictionary<long, int> Notes(BsonValue value) =>
        value.AsDocument.ToImmutableSortedDictionary(
            pair => long.Parse(pair.Key, CultureInfo.InvariantCulture), pair => pair.Value.AsInt32);

    public static BsonArray Array(IEnumerable<BsonDocument> documents) => new(documents.Cast<BsonValue>());
}
