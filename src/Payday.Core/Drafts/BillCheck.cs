using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Ids;

namespace Payday.Core.Drafts;

/// <summary>Makes a bill of a draft.</summary>
internal static class BillCheck
{
    public static Bill Of(BillDraft bill, string id, string name, DraftPlace place, DraftCheck check, OpeningParts<BillId> setAside)
    {
        var made = new Bill(
            new BillId(id),
            name,
            check.Amount(bill.Amount, place.Then(BillDraft.Members.Amount)),
            ScheduleCheck.Of(bill.Schedule, place.Then(BillDraft.Members.Schedule), check),
            check.Needed(bill.Shift, place.Then(BillDraft.Members.Shift), Shift.None),
            check.Needed(bill.Essential, place.Then(BillDraft.Members.Essential), standIn: true),
            check.LaterDateOrNone(bill.Until, place.Then(BillDraft.Members.Until)))
        {
            Later = LaterCheck.Of(bill.Later, BillDraft.Members.Later, place, check),
        };
        setAside.Add(made.Id, check.AmountOrNone(bill.SetAside, place.Then(BillDraft.Members.SetAside)));
        return made;
    }
}
