using System.Collections.Immutable;
using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Routines;

namespace Payday.Store.Documents;

/// <summary>A routine begun, as it is stored: the decisions alone.</summary>
internal static class DraftDocument
{
    private static readonly ImmutableSortedDictionary<PartKey, ImmutableSortedDictionary<long, int>> None =
        ImmutableSortedDictionary<PartKey, ImmutableSortedDictionary<long, int>>.Empty;

    public static BsonDocument From(RoutineDraft draft) => new()
    {
        ["_id"] = Bson.Of(draft.Payday),
        ["step"] = draft.Step.ToString(),
        ["incomes"] = Bson.Of(draft.Incomes),
        ["oneOffs"] = Bson.Of(draft.OneOffs),
        ["dues"] = Bson.Array(draft.Dues.Select(Due)),
        ["setAsides"] = draft.SetAsides?.ToString() is { } mode ? mode : BsonValue.Null,
        ["debtPayments"] = Bson.Of(draft.DebtPayments),
        ["paidDebts"] = new BsonArray(draft.PaidDebts.Select(id => new BsonValue(id))),
        ["fills"] = Bson.Of(draft.Fills),
        ["notes"] = Bson.Array(draft.Notes.Select(Chosen)),
        ["leavesNotesAtHome"] = draft.LeavesNotesAtHome,
        ["asksATeller"] = draft.AsksATeller,
        ["usesOwedBack"] = draft.UsesOwedBack,
        ["placements"] = draft.Placements is { } placements ? Bson.Array(placements.Select(Placed)) : BsonValue.Null,
    };

    public static RoutineDraft To(BsonDocument document, Currency currency) => new(Bson.Date(document["_id"]))
    {
        Step = Enum.Parse<RoutineStep>(document["step"].AsString),
        Incomes = Bson.Amounts(document["incomes"], currency),
        OneOffs = Bson.Amounts(document["oneOffs"], currency),
        Dues = document["dues"].AsArray.ToImmutableSortedDictionary(
            due => new DueKey(due["bill"].AsString, Bson.Date(due["date"])),
            due => new DueDecision(
                due["actual"].IsNull ? null : Bson.Amount(due["actual"], currency),
                due["paid"].IsNull ? null : due["paid"].AsBoolean)),
        SetAsides = document["setAsides"].IsNull ? null : Enum.Parse<SetAsideMode>(document["setAsides"].AsString),
        DebtPayments = Bson.Amounts(document["debtPayments"], currency),
        PaidDebts = document["paidDebts"].IsNull
            ? ImmutableSortedSet.Create<string>(StringComparer.Ordinal)
            : document["paidDebts"].AsArray.Select(id => id.AsString).ToImmutableSortedSet(StringComparer.Ordinal),
        Fills = Bson.Amounts(document["fills"], currency),
        // Drafts of the first weeks of this format don't have the next three.
        Notes = document["notes"].IsNull ? None : document["notes"].AsArray.ToImmutableSortedDictionary(
            part => new PartKey(part["pot"].AsString, Bson.OptionalDate(part["week"])),
            part => Bson.Notes(part["notes"])),
        LeavesNotesAtHome = !document["leavesNotesAtHome"].IsNull && document["leavesNotesAtHome"].AsBoolean,
        UsesOwedBack = !document["usesOwedBack"].IsNull && document["usesOwedBack"].AsBoolean,
        AsksATeller = !document["asksATeller"].IsNull && document["asksATeller"].AsBoolean,
        Placements = document["placements"].IsNull
            ? null
            : [.. document["placements"].AsArray.Select(placed => new Placement(
                Enum.Parse<PlacementTarget>(placed["target"].AsString),
                placed["id"].AsString,
                Bson.Amount(placed["amount"], currency)))],
    };

    private static BsonDocument Due(KeyValuePair<DueKey, DueDecision> due) => new()
    {
        ["bill"] = due.Key.BillId,
        ["date"] = Bson.Of(due.Key.Date),
        ["actual"] = due.Value.Actual is { } actual ? actual.MinorUnits : BsonValue.Null,
        ["paid"] = due.Value.Paid is { } paid ? paid : BsonValue.Null,
    };

    private static BsonDocument Chosen(KeyValuePair<PartKey, ImmutableSortedDictionary<long, int>> part) => new()
    {
        ["pot"] = part.Key.PotId,
        ["week"] = Bson.Of(part.Key.Week),
        ["notes"] = Bson.Of(part.Value),
    };

    private static BsonDocument Placed(Placement placement) => new()
    {
        ["target"] = placement.Target.ToString(),
        ["id"] = placement.Id,
        ["amount"] = placement.Amount.MinorUnits,
    };
}
