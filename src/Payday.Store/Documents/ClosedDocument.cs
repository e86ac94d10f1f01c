using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Routines;

namespace Payday.Store.Documents;

/// <summary>A closed payday as it is stored.</summary>
internal static class ClosedDocument
{
    public static BsonDocument From(ClosedPayday closed) => new()
    {
        ["_id"] = Bson.Of(closed.Payday),
        ["last"] = Bson.Of(closed.Period.Last),
        ["firstMovement"] = closed.FirstMovement,
        ["lastMovement"] = closed.LastMovement,
        ["dues"] = Bson.Array(closed.Dues.Select(due => new BsonDocument
        {
            ["bill"] = due.Key.BillId,
            ["date"] = Bson.Of(due.Key.Date),
            ["amount"] = due.Amount.MinorUnits,
            ["paid"] = due.Paid,
        })),
        ["parts"] = Bson.Array(closed.Parts.Select(part => new BsonDocument
        {
            ["pot"] = part.PotId,
            ["week"] = Bson.Of(part.Week),
            ["notes"] = Bson.Of(part.Notes),
        })),
        ["keptBack"] = Bson.Of(closed.KeptBack),
        ["withdraw"] = Bson.Of(closed.Withdraw),
        ["reused"] = Bson.Of(closed.Reused),
        ["onHandAfter"] = Bson.Of(closed.OnHandAfter),
        ["draft"] = DraftDocument.From(closed.Draft),
    };

    public static ClosedPayday To(BsonDocument document, Currency currency) => new(
        new PayPeriod(Bson.Date(document["_id"]), Bson.Date(document["last"])),
        document["firstMovement"].AsInt64,
        document["lastMovement"].AsInt64,
        [.. document["dues"].AsArray.Select(due => new ClosedDue(
            new DueKey(due["bill"].AsString, Bson.Date(due["date"])),
            Bson.Amount(due["amount"], currency),
            due["paid"].AsBoolean))],
        [.. document["parts"].AsArray.Select(part => new ClosedPart(
            part["pot"].AsString, Bson.OptionalDate(part["week"]), Bson.Notes(part["notes"])))],
        Bson.Amounts(document["keptBack"], currency),
        Bson.Notes(document["withdraw"]),
        Bson.Notes(document["reused"]),
        Bson.Notes(document["onHandAfter"]),

        // Paydays closed in the first weeks of this format don't have it: all their proposals were taken, as far as is known.
        document["draft"].IsNull ? new RoutineDraft(Bson.Date(document["_id"])) : DraftDocument.To(document["draft"].AsDocument, currency));
}
