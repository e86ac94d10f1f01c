using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Drafts;
using Payday.Store.Json;
using Members = Payday.Calculators.SetAsideDraft.Members;
using Row = Payday.Calculators.SetAsideDraft.Row;

namespace Payday.Calculators;

/// <summary>The input of the <c>setaside</c> calculator.</summary>
/// <param name="Held">What is held already.</param>
/// <param name="Paydays">The paydays, in order.</param>
/// <param name="Dues">What falls due.</param>
internal sealed record SetAsideFile(Money Held, ImmutableArray<PlannedPayday> Paydays, ImmutableArray<Due> Dues)
{
    /// <summary>Reads it.</summary>
    public static SetAsideFile Read(JsonCursor file) => CalculatorFile.Read(file, SetAsideDraft.Fields, draft => draft.Currency, Of);

    private static SetAsideFile Of(SetAsideDraft draft, DraftCheck check)
    {
        check.IsThere(draft.Currency, DraftPlace.Of(Members.Currency));
        Money held = check.AmountOrNone(draft.Held, DraftPlace.Of(Members.Held)) ?? Money.Zero(check.Currency);
        DraftPlace paydaysAt = DraftPlace.Of(Members.Paydays);
        ImmutableArray<PlannedPayday> paydays = check.IsThere(draft.Paydays, paydaysAt) ? Planned(draft.Paydays!.Value, check) : [];
        check.IsThere(draft.Dues, DraftPlace.Of(Members.Dues));
        return new SetAsideFile(held, paydays, [.. (draft.Dues ?? []).Select((due, i) => Due(due, DraftPlace.Of(Members.Dues, i), check))]);
    }

    private static ImmutableArray<PlannedPayday> Planned(ImmutableArray<Row> rows, DraftCheck check)
    {
        ImmutableArray<PlannedPayday> paydays = [.. rows.Select((row, i) => Payday(row, Place(i), check))];
        if (paydays.IsEmpty)
        {
            check.Refuse(new DraftFault.NoPayday(DraftPlace.Of(Members.Paydays)));
        }

        for (int i = 1; i < paydays.Length; i++)
        {
            if (check.IsSound(Place(i)) && check.IsSound(Place(i - 1)) && paydays[i].Date <= paydays[i - 1].Date)
            {
                check.Refuse(new DraftFault.PaydayNotAfter(Place(i)));
            }
        }

        return paydays;

        static DraftPlace Place(int index) => DraftPlace.Of(Members.Paydays, index);
    }

    private static PlannedPayday Payday(Row row, DraftPlace place, DraftCheck check) => new(
        check.Date(row.Date, place.Then(Row.Members.Date)),
        check.Amount(row.Amount, place.Then(Row.Members.Amount)));

    private static Due Due(Row row, DraftPlace place, DraftCheck check)
    {
        string bill = check.Line(row.Bill, place.Then(Row.Members.Bill));
        return new Due(new(bill), bill, check.Date(row.Date, place.Then(Row.Members.Date)), check.Amount(row.Amount, place.Then(Row.Members.Amount)));
    }
}
