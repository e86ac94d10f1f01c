using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Routines;

/// <summary>Step 2: what is due in the period, and what the plan holds back for later.</summary>
internal static class BillRules
{
    /// <param name="facts">The day's facts.</param>
    /// <param name="income">Step 1, of which what the buffer gives doesn't matter here.</param>
    /// <param name="less">How much less than planned is set aside, because it doesn't fit; never so much that a due of this period is short.</param>
    /// <remarks>
    /// All that this period needs is planned for, whether the day brings it or not: what it doesn't bring is missing from
    /// the day as a whole, and is not forgotten.
    /// </remarks>
    public static BillsStep Of(RoutineFacts facts, IncomeStep income, Money less)
    {
        Book book = facts.Book;
        SetAsideMode mode = facts.Draft.SetAsides ?? book.Household.Settings.SetAsides;
        ImmutableArray<OpenDue> open = OpenDues.OfBills(book, facts.Holidays, facts.Period.First.PlusMonths(BillDues.MonthsAhead));
        ImmutableArray<DueRow> rows = Rows(facts, open);
        Dictionary<BillId, string> names = book.Household.Bills.ToDictionary(bill => bill.Id, bill => bill.Name);
        (Bill Bill, Money Held)[] byBill = [.. HeldByBill(book)];
        ImmutableArray<Due> later =
        [
            .. open.Where(due => due.Date > facts.Period.Last)
                .Select(due => new Due(due.BillId, names[due.BillId], due.Date, due.Amount) { Scheduled = due.Key.Scheduled }),
        ];

        // What was due earlier and isn't paid yet is due now, and so is what an earlier version let be paid from nothing.
        LocalDate today = facts.Period.First;
        Due[] dues =
        [
            .. Overpaid(byBill, today),
            .. rows.Select(row => new Due(row.BillId, row.Name, row.Date > today ? row.Date : today, row.Amount)),
            .. later,
        ];
        Money held = Money.Sum(byBill.Select(bill => bill.Held.ClampToZero()), book.Household.Currency);
        Money needed = (Money.Sum(dues.Take(dues.Length - later.Length).Select(due => due.Amount), held.Currency) - held).ClampToZero();
        ImmutableArray<PlannedPayday> paydays = Paydays(facts, income, needed);
        SetAsidePlan plan = SetAsidePlanner.Plan(mode, held, paydays, dues);
        Money planned = Money.Max(plan.Rows[0].SetAside, needed);
        Money total = planned - less;
        return new BillsStep(
            rows, Lines(byBill, rows, later, total), mode, held, planned, total, [.. plan.Late.Where(late => late.Due.Date > facts.Period.Last)])
        {
            Reason = mode == SetAsideMode.Level && total == plan.Rows[0].SetAside ? SetAsideReason.Of(plan, paydays[0].Income, dues) : null,
        };
    }

    private static ImmutableArray<DueRow> Rows(RoutineFacts facts, ImmutableArray<OpenDue> open)
    {
        Dictionary<BillId, Bill> bills = facts.Book.Household.Bills.ToDictionary(bill => bill.Id);
        return
        [
            .. open.Where(due => due.Date <= facts.Period.Last).Select(due =>
            {
                DueDecision? decided = Decided(facts.Draft, due);
                return new DueRow(
                    due.Key,
                    due.Date,
                    bills[due.BillId].Name,
                    bills[due.BillId].Essential,
                    due.Amount,
                    decided?.Actual ?? due.Amount,
                    decided is not null,
                    decided?.Paid ?? due.Date <= facts.Period.First)
                {
                    IsDecided = due.IsDecided || decided?.Actual is not null,
                };
            }),
        ];
    }

    // Drafts of the first versions name a due by the day it lands on.
    private static DueDecision? Decided(RoutineDraft draft, OpenDue due) =>
        draft.Dues.GetValueOrDefault(due.Key) ?? draft.Dues.GetValueOrDefault(new DueKey(due.BillId, due.Date));

    private static IEnumerable<(Bill Bill, Money Held)> HeldByBill(Book book) =>
        book.Household.Bills.Select(bill => (bill, book.Ledger.Balances[LedgerEnd.InAccount(Purpose.SetAside(bill.Id))]));

    private static IEnumerable<Due> Overpaid(IEnumerable<(Bill Bill, Money Held)> held, LocalDate today) =>
        from bill in held
        where bill.Held.IsNegative
        select new Due(bill.Bill.Id, bill.Bill.Name, today, -bill.Held);

    // What this period needs has to be there today, from the buffer if need be; so much counts as coming in today. What is
    // left of an overdraft is paid off first by the paydays to come.
    private static ImmutableArray<PlannedPayday> Paydays(RoutineFacts facts, IncomeStep income, Money needed)
    {
        Household household = facts.Book.Household;
        Money overdraft = income.Overdraft.Rest;
        var ahead = new List<PlannedPayday>();
        foreach (ScheduledPayday payday in facts.Ahead)
        {
            Money expected = IncomeRules.Expected(household, payday);
            Money paysOff = Money.Min(overdraft, expected);
            overdraft -= paysOff;
            ahead.Add(new PlannedPayday(payday.Date, expected - paysOff));
        }

        Money today = income.Free.ClampToZero();
        return [new PlannedPayday(facts.Period.First, ahead.Any(payday => payday.Income.IsPositive) ? Money.Max(today, needed) : today), .. ahead];
    }

    private static ImmutableArray<SetAsideLine> Lines((Bill Bill, Money Held)[] held, ImmutableArray<DueRow> rows, ImmutableArray<Due> later, Money total)
    {
        Currency currency = total.Currency;
        ILookup<BillId, DueRow> now = rows.ToLookup(row => row.BillId);
        ILookup<BillId, Due> ahead = later.ToLookup(due => due.BillId);
        BillNeed[] needs = [.. held.Select(bill => new BillNeed(
            bill.Bill.Id, bill.Held, Money.Sum(now[bill.Bill.Id].Select(row => row.Amount), currency)))];
        ImmutableArray<Money> after = SetAsideShares.After(needs, total, later);
        return
        [
            .. held.Select((one, i) =>
            {
                Bill bill = one.Bill;
                Due? next = ahead[bill.Id].FirstOrDefault();
                return new SetAsideLine(
                    bill.Id, bill.Name, needs[i].Held, after[i] - needs[i].Held, next?.Date, next?.Amount ?? Money.Zero(currency));
            }),
        ];
    }
}
