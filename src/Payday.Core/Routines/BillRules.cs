using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Ledgers;

namespace Payday.Core.Routines;

/// <summary>Step 2: what is due in the period, and what the plan holds back for later.</summary>
internal static class BillRules
{
    /// <param name="facts">The day's facts.</param>
    /// <param name="toPlace">What came in and was carried over.</param>
    /// <param name="less">How much less than planned is set aside, because it doesn't fit; never so much that a due of this period is short.</param>
    public static BillsStep Of(RoutineFacts facts, Money toPlace, Money less)
    {
        Book book = facts.Book;
        SetAsideMode mode = facts.Draft.SetAsides ?? book.Household.Settings.SetAsides;
        ImmutableArray<DueRow> rows = Rows(facts);
        ImmutableArray<Due> later = BillDues.Between(
            book.Household.Bills, facts.Holidays, facts.Period.Last.PlusDays(1), facts.Period.First.PlusMonths(BillDues.MonthsAhead));

        // What was due earlier and isn't paid yet is due now.
        Due[] dues = [.. rows.Select(row => new Due(row.Key.BillId, row.Name, Later(row.Key.Date, facts.Period.First), row.Amount)), .. later];

        Money held = Money.Sum(
            book.Ledger.Balances.JobsIn(Place.Account).Where(job => job.Job.Kind == JobKind.SetAside).Select(job => job.Amount),
            book.Household.Currency);
        SetAsidePlan plan = SetAsidePlanner.Plan(mode, held, Paydays(facts, toPlace), dues);
        Money planned = plan.Rows[0].SetAside;
        Money total = planned - less;
        return new BillsStep(rows, Lines(facts, rows, later, total), mode, held, planned, total, plan.Late);
    }

    private static ImmutableArray<DueRow> Rows(RoutineFacts facts)
    {
        Book book = facts.Book;
        Dictionary<string, Bill> bills = book.Household.Bills.ToDictionary(bill => bill.Id);
        LocalDate newFrom = book.LastClosed is { } last ? last.Period.Last.PlusDays(1) : book.Household.Start;
        IEnumerable<(DueKey Key, Money Usual)> open = book.LastClosed?.Dues
            .Where(due => !due.Paid && bills.ContainsKey(due.Key.BillId))
            .Select(due => (due.Key, due.Amount)) ?? [];
        IEnumerable<(DueKey Key, Money Usual)> fresh = BillDues
            .Between(book.Household.Bills, facts.Holidays, newFrom, facts.Period.Last)
            .Select(due => (new DueKey(due.BillId, due.Date), due.Amount));
        return
        [
            .. open.Concat(fresh).DistinctBy(due => due.Key).OrderBy(due => due.Key.Date).Select(due =>
            {
                DueDecision? decided = facts.Draft.Dues.GetValueOrDefault(due.Key);
                return new DueRow(
                    due.Key,
                    bills[due.Key.BillId].Name,
                    bills[due.Key.BillId].Essential,
                    due.Usual,
                    decided?.Actual ?? due.Usual,
                    decided is not null,
                    decided?.Paid ?? due.Key.Date <= facts.Period.First);
            }),
        ];
    }

    private static ImmutableArray<PlannedPayday> Paydays(RoutineFacts facts, Money toPlace)
    {
        Dictionary<string, Money> expected = facts.Book.Household.Sources.ToDictionary(source => source.Id, source => source.Expected);
        return
        [
            new PlannedPayday(facts.Period.First, toPlace),
            .. facts.Ahead.Select(payday => new PlannedPayday(
                payday.Date, Money.Sum(payday.Sources.Select(source => expected[source]), facts.Book.Household.Currency))),
        ];
    }

    private static ImmutableArray<SetAsideLine> Lines(RoutineFacts facts, ImmutableArray<DueRow> rows, ImmutableArray<Due> later, Money total)
    {
        Currency currency = facts.Book.Household.Currency;
        BillNeed[] needs = [.. facts.Book.Household.Bills.Select(bill => new BillNeed(
            bill.Id,
            facts.Book.Ledger.Balances[LedgerEnd.InAccount(Job.SetAside(bill.Id))],
            Money.Sum(rows.Where(row => row.Key.BillId == bill.Id).Select(row => row.Amount), currency)))];
        ImmutableArray<Money> after = SetAsideShares.After(needs, total, later);
        return
        [
            .. facts.Book.Household.Bills.Select((bill, i) =>
            {
                Due? next = later.FirstOrDefault(due => due.BillId == bill.Id);
                return new SetAsideLine(
                    bill.Id, bill.Name, needs[i].Held, after[i] - needs[i].Held, next?.Date, next?.Amount ?? Money.Zero(currency));
            }),
        ];
    }

    private static LocalDate Later(LocalDate left, LocalDate right) => left > right ? left : right;
}
