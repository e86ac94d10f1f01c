using LiteDB;
using Payday.Core.Weeks;

namespace Payday.Store.Documents;

/// <summary>A difference that was cleared up, as it is stored.</summary>
internal static class SettledDocument
{
    public static BsonDocument From(SettledDifference settled) => new()
    {
        ["_id"] = settled.Count,
        ["how"] = settled.How.ToString(),
        ["date"] = Bson.Of(settled.Date),
        ["movement"] = settled.Movement,
    };

    public static SettledDifference To(BsonDocument document) => new(
        document["_id"].AsInt64,
        Enum.Parse<DifferenceEnd>(document["how"].AsString),
        Bson.Date(document["date"]),
        document["movement"].AsInt64);
}
