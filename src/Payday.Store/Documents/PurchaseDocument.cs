using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Weeks;

namespace Payday.Store.Documents;

/// <summary>A card purchase as it is stored.</summary>
internal static class PurchaseDocument
{
    public static BsonDocument From(CardPurchase purchase) => new()
    {
        ["_id"] = purchase.Number,
        ["date"] = Bson.Of(purchase.Date),
        ["pot"] = purchase.PotId is { } pot ? pot : BsonValue.Null,
        ["amount"] = purchase.Amount.MinorUnits,
        ["owedBack"] = purchase.OwedBack.MinorUnits,
        ["what"] = purchase.What,
        ["firstMovement"] = purchase.FirstMovement,
        ["lastMovement"] = purchase.LastMovement,
        ["undone"] = purchase.Undone,
    };

    public static CardPurchase To(BsonDocument document, Currency currency) => new(
        document["_id"].AsInt64,
        Bson.Date(document["date"]),
        document["pot"].IsNull ? null : document["pot"].AsString,
        Bson.Amount(document["amount"], currency),
        Bson.Amount(document["owedBack"], currency),
        document["what"].AsString,
        document["firstMovement"].AsInt64,
        document["lastMovement"].AsInt64)
    {
        Undone = document["undone"].AsBoolean,
    };
}
