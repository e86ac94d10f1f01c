using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Routines;
using Payday.Core.Weeks;

namespace Payday.Store.Documents;

/// <summary>A confirmed count as it is stored.</summary>
internal static class CountDocument
{
    public static BsonDocument From(WeekCount count) => new()
    {
        ["_id"] = count.Number,
        ["date"] = Bson.Of(count.Date),
        ["week"] = Bson.Of(count.Week),
        ["pot"] = count.PotId,
        ["since"] = Bson.Of(count.Since),
        ["before"] = count.Before.MinorUnits,
        ["filled"] = count.Filled.MinorUnits,
        ["owedBack"] = count.OwedBack.MinorUnits,
        ["moved"] = count.Moved.MinorUnits,
        ["left"] = count.Left.MinorUnits,
        ["notes"] = count.Notes is { } notes ? Bson.Of(notes) : BsonValue.Null,
        ["spent"] = count.Spent.MinorUnits,
        ["difference"] = count.Difference.MinorUnits,
        ["differenceName"] = count.DifferenceName,
        ["movesOnTo"] = Of(count.MovesOnTo),
        ["firstMovement"] = count.FirstMovement,
        ["lastMovement"] = count.LastMovement,
        ["move"] = count.Move is { } move ? move : BsonValue.Null,
    };

    public static WeekCount To(BsonDocument document, Currency currency) => new(
        document["_id"].AsInt64,
        Bson.Date(document["date"]),
        Bson.Date(document["week"]),
        document["pot"].AsString,
        Bson.OptionalDate(document["since"]),
        Bson.Amount(document["before"], currency),
        Bson.Amount(document["filled"], currency),
        Bson.Amount(document["owedBack"], currency),
        Bson.Amount(document["moved"], currency),
        Bson.Amount(document["left"], currency),
        document["notes"].IsNull ? null : Bson.Notes(document["notes"]),
        Bson.Amount(document["spent"], currency),
        Bson.Amount(document["difference"], currency),
        document["differenceName"].AsString,
        Target(document["movesOnTo"]),
        document["firstMovement"].AsInt64,
        document["lastMovement"].AsInt64,
        document["move"].IsNull ? null : document["move"].AsInt64);

    public static BsonValue Of(MoveTarget? target) => target is null
        ? BsonValue.Null
        : new BsonDocument { ["target"] = target.Target.ToString(), ["id"] = target.Id };

    public static MoveTarget? Target(BsonValue value) => value.IsNull
        ? null
        : new MoveTarget(Enum.Parse<PlacementTarget>(value["target"].AsString), value["id"].AsString);
}
