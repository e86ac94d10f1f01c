using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Ids;
using Payday.Store.Contents;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A closed payday as it is stored.</summary>
internal static class ClosedDocument
{
    public static readonly RecordForm<ClosedPayday> Form =
        new(CollectionNames.Closed, closed => Bson.Of(closed.Payday), (left, right) => left.Payday.CompareTo(right.Payday), Write, Read);

    private static void Write(IFieldWriter to, ClosedPayday closed)
    {
        to.Date("_id", closed.Payday);
        to.Date("last", closed.Period.Last);
        to.Whole("firstMovement", closed.FirstMovement);
        to.Whole("lastMovement", closed.LastMovement);
        to.List("dues", closed.Dues, static (item, due) =>
        {
            item.Text("bill", due.Key.Bill!.Value.Text);
            item.Date("date", due.Key.Scheduled);
            item.Amount("amount", due.Amount);
            item.Flag("paid", due.Paid);
            item.OptionalFlag("decided", due.IsDecided ? true : null);
        });
        to.List("parts", closed.Parts, static (item, part) =>
        {
            item.Text("pot", part.PotId.Text);
            item.OptionalDate("week", part.Week);
            item.Notes("notes", part.Notes);
        });
        to.Amounts("keptBack", closed.KeptBack, static pot => pot.Text);
        to.Notes("withdraw", closed.Withdraw);
        to.Notes("reused", closed.Reused);
        to.Notes("onHandAfter", closed.LooseAfter);
        to.OptionalPart("draft", closed.Draft, DraftDocument.Form.Write);
        to.OptionalList<ClosedDue>("minimums", closed.Minimums, static (item, due) =>
        {
            item.Text("debt", due.Key.Debt!.Value.Text);
            item.Date("date", due.Key.Scheduled);
            item.Amount("amount", due.Amount);
            item.Flag("paid", due.Paid);
            item.OptionalAmount("asked", due.Asked);
            item.OptionalAmount("bought", due.Bought);
        });
        to.OptionalList<DueKey>("charged", closed.Charged, static (item, key) =>
        {
            item.Text("debt", key.Debt!.Value.Text);
            item.Date("date", key.Scheduled);
        });
        to.OptionalList<Money>("trips", closed.Trips.IsEmpty ? null : closed.Trips, static (item, trip) => item.Amount("amount", trip));
    }

    private static ClosedPayday Read(IFieldReader from)
    {
        var period = new PayPeriod(from.Date("_id"), from.Date("last"));
        return new(
            period,
            from.Whole("firstMovement"),
            from.Whole("lastMovement"),
            from.List("dues", static item => new ClosedDue(
                new DueKey(new BillId(item.Text("bill")), item.Date("date")), item.Amount("amount"), item.Flag("paid"), item.OptionalFlag("decided") ?? false)),
            from.List("parts", static item => new ClosedPart(new(item.Text("pot")), item.OptionalDate("week"), item.Notes("notes"))),
            from.Amounts("keptBack", static text => new PotId(text)),
            from.Notes("withdraw"),
            from.Notes("reused"),
            from.Notes("onHandAfter"),

            // Paydays closed in the first weeks of this format don't have it: all their proposals were taken, as far as is known.
            from.OptionalPart("draft", DraftDocument.Form.Read) ?? new RoutineDraft(period.First))
        {
            Minimums = from.OptionalList("minimums", static item => new ClosedDue(
                new DueKey(new DebtId(item.Text("debt")), item.Date("date")), item.Amount("amount"), item.Flag("paid")) { Asked = item.OptionalAmount("asked"), Bought = item.OptionalAmount("bought") }),
            Charged = from.OptionalList("charged", static item => new DueKey(new DebtId(item.Text("debt")), item.Date("date"))),
            Trips = from.OptionalList("trips", static item => item.Amount("amount")) ?? [],
        };
    }
}
