using System.Text;
using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Weeks;

namespace Payday.Store.Documents;

/// <summary>A fill of the wallet as it is stored.</summary>
internal static class FillDocument
{
    public static BsonDocument From(WalletFill fill) => new()
    {
        ["_id"] = Id(fill.Key),
        ["payday"] = Bson.Of(fill.Key.Payday),
        ["week"] = Bson.Of(fill.Key.Week),
        ["pot"] = fill.Key.PotId,
        ["state"] = fill.State.ToString(),
        ["date"] = Bson.Of(fill.Date),
        ["amount"] = fill.Amount.MinorUnits,
        ["movement"] = fill.Movement is { } number ? number : BsonValue.Null,
    };

    public static WalletFill To(BsonDocument document, Currency currency) => new(
        new FillKey(Bson.Date(document["payday"]), Bson.OptionalDate(document["week"]), document["pot"].AsString),
        Enum.Parse<FillState>(document["state"].AsString),
        Bson.Date(document["date"]),
        Bson.Amount(document["amount"], currency),
        document["movement"].IsNull ? null : document["movement"].AsInt64);

    // The pot in hexadecimal, because ids of documents don't differ by case alone.
    private static string Id(FillKey key) =>
        $"{Bson.Of(key.Payday).AsString} {(key.Week is null ? "-" : Bson.Of(key.Week).AsString)} {Convert.ToHexString(Encoding.UTF8.GetBytes(key.PotId))}";
}
