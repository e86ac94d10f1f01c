using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;

namespace Payday.Store.Documents;

/// <summary>A movement as it is stored.</summary>
internal static class MovementDocument
{
    public static BsonDocument From(Movement movement) => new()
    {
        ["_id"] = movement.Number,
        ["date"] = Bson.Of(movement.Date),
        ["from"] = movement.From.Key,
        ["to"] = movement.To.Key,
        ["amount"] = movement.Amount.MinorUnits,
        ["reason"] = movement.Reason,
        ["payday"] = Bson.Of(movement.Payday),
        ["reverses"] = movement.Reverses is { } number ? number : BsonValue.Null,
    };

    public static Movement To(BsonDocument document, Currency currency) => new(
        document["_id"].AsInt64,
        Bson.Date(document["date"]),
        LedgerEnd.FromKey(document["from"].AsString),
        LedgerEnd.FromKey(document["to"].AsString),
        Bson.Amount(document["amount"], currency),
        document["reason"].AsString,
        Bson.OptionalDate(document["payday"]),
        document["reverses"].IsNull ? null : document["reverses"].AsInt64);
}
