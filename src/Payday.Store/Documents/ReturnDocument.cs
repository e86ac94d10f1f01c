using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Weeks;

namespace Payday.Store.Documents;

/// <summary>A cash return as it is stored.</summary>
internal static class ReturnDocument
{
    public static BsonDocument From(CashReturn back) => new()
    {
        ["_id"] = back.Number,
        ["date"] = Bson.Of(back.Date),
        ["payday"] = Bson.Of(back.Payday),
        ["pots"] = Bson.Array(back.Pots.Select(pot => new BsonDocument
        {
            ["pot"] = pot.PotId,
            ["amount"] = pot.Amount.MinorUnits,
            ["notes"] = pot.Notes is { } notes ? Bson.Of(notes) : BsonValue.Null,
        })),
        ["swaps"] = Bson.Array(back.Swaps.Select(swap => new BsonDocument
        {
            ["pot"] = swap.PotId,
            ["with"] = swap.With is { } with ? with : BsonValue.Null,
            ["gives"] = Bson.Of(swap.Gives),
            ["gets"] = Bson.Of(swap.Gets),
        })),
        ["settles"] = Bson.Array(back.Settles.Select(settle => new BsonDocument
        {
            ["kind"] = settle.Item.Kind.ToString(),
            ["number"] = settle.Item.Number,
            ["amount"] = settle.Amount.MinorUnits,
        })),
        ["firstMovement"] = back.FirstMovement,
        ["lastMovement"] = back.LastMovement,
    };

    public static CashReturn To(BsonDocument document, Currency currency) => new(
        document["_id"].AsInt64,
        Bson.Date(document["date"]),
        Bson.OptionalDate(document["payday"]),
        [.. document["pots"].AsArray.Select(pot => new ReturnedPot(
            pot["pot"].AsString, Bson.Amount(pot["amount"], currency), pot["notes"].IsNull ? null : Bson.Notes(pot["notes"])))],
        [.. document["swaps"].AsArray.Select(swap => new NoteSwap(
            swap["pot"].AsString, swap["with"].IsNull ? null : swap["with"].AsString, Bson.Notes(swap["gives"]), Bson.Notes(swap["gets"])))],
        [.. document["settles"].AsArray.Select(settle => new SettledItem(
            new OwedKey(Enum.Parse<OwedKind>(settle["kind"].AsString), settle["number"].AsInt64), Bson.Amount(settle["amount"], currency)))],
        document["firstMovement"].AsInt64,
        document["lastMovement"].AsInt64);
}
