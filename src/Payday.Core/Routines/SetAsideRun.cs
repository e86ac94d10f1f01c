using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Ids;

namespace Payday.Core.Routines;

/// <summary>Runs the set-asides forward over the paydays after a routine, each planned anew as <see cref="BillRules"/> has it, with the pay expected.</summary>
internal sealed class SetAsideRun
{
    private readonly RoutinePlan plan;
    private readonly ImmutableArray<PlannedPayday> paydays;
    private readonly ImmutableArray<Due> dues;

    public SetAsideRun(RoutinePlan plan)
    {
        this.plan = plan;
        Household household = plan.Book.Household;
        BankHolidays holidays = household.Holidays;

        // Until the last next due, each payday with its own 13 months before it.
        LocalDate last = plan.Bills.SetAsides.Select(line => line.NextDue ?? plan.Period.Last).Append(plan.Period.Last).Max().PlusMonths(BillDues.MonthsAhead);
        Money overdraft = plan.Income.Overdraft.Rest;
        var ahead = ImmutableArray.CreateBuilder<PlannedPayday>();
        foreach (ScheduledPayday payday in household.Paydays.Between(plan.Period.First.PlusDays(1), last))
        {
            Money expected = IncomeRules.Expected(household, payday);
            Money paysOff = Money.Min(overdraft, expected);
            overdraft -= paysOff;
            ahead.Add(new PlannedPayday(payday.Date, expected - paysOff));
        }

        paydays = ahead.ToImmutable();
        dues =
        [
            .. OpenDues.OfBills(plan.Book, holidays, last).Where(due => due.Date > plan.Period.Last)
                .Select(due => new Due(due.BillId, "", due.Date, due.Amount) { Scheduled = due.Key.Scheduled }),
        ];
    }

    /// <summary>When each bill holds all of its next due.</summary>
    /// <param name="holds">What each holds once this period's dues are paid.</param>
    /// <returns>Those that are whole in time.</returns>
    public ImmutableDictionary<BillId, LocalDate> Whole(ImmutableDictionary<BillId, Money> holds)
    {
        var whole = ImmutableDictionary.CreateBuilder<BillId, LocalDate>();
        Dictionary<BillId, SetAsideLine> waits = plan.Bills.SetAsides.Where(line => line.NextDue is not null).ToDictionary(line => line.BillId);
        Note(plan.Period.First);
        for (int k = 0; k + 1 < paydays.Length && waits.Count > 0; k++)
        {
            LocalDate first = paydays[k].Date;
            LocalDate last = paydays[k + 1].Date.PlusDays(-1);
            Due[] now = [.. dues.Where(due => due.Date >= first && due.Date <= last)];
            holds = After(holds, k, now, [.. dues.Where(due => due.Date > last && due.Date <= first.PlusMonths(BillDues.MonthsAhead))]);
            Note(first);
            foreach (Due due in now)
            {
                holds = holds.SetItem(due.BillId, (holds[due.BillId] - due.Amount).ClampToZero());
                waits.Remove(due.BillId);
            }
        }

        return whole.ToImmutable();

        void Note(LocalDate payday)
        {
            foreach (SetAsideLine line in waits.Values.Where(line => holds[line.BillId] >= line.NextAmount).ToList())
            {
                whole[line.BillId] = payday;
                waits.Remove(line.BillId);
            }
        }
    }

    // What this period needs is planned for whether the day brings it or not, as in the routine; what it doesn't bring isn't there.
    private ImmutableDictionary<BillId, Money> After(ImmutableDictionary<BillId, Money> holds, int k, Due[] now, Due[] later)
    {
        Money held = Money.Sum(holds.Values, plan.Bills.Total.Currency);
        Money needed = (Money.Sum(now.Select(due => due.Amount), held.Currency) - held).ClampToZero();
        LocalDate to = paydays[k].Date.PlusMonths(BillDues.MonthsAhead);
        PlannedPayday[] ahead = [.. paydays.Skip(k + 1).TakeWhile(payday => payday.Date <= to)];
        bool isKnown = ahead.Any(payday => payday.Income.IsPositive);
        PlannedPayday today = isKnown ? paydays[k] with { Income = Money.Max(paydays[k].Income, needed) } : paydays[k];
        Money planned = Money.Max(
            SetAsidePlanner.Plan(plan.Book.Household.Settings.SetAsides, held, [today, .. ahead], [.. now, .. later]).Rows[0].SetAside, needed);
        planned = isKnown ? Money.Min(planned, paydays[k].Income) : planned;
        ILookup<BillId, Due> dueNow = now.ToLookup(due => due.BillId);
        BillNeed[] needs = [.. plan.Book.Household.Bills.Select(bill => new BillNeed(
            bill.Id, holds[bill.Id], Money.Sum(dueNow[bill.Id].Select(due => due.Amount), held.Currency)))];
        ImmutableArray<Money> after = SetAsideShares.After(needs, planned, later);
        return needs.Select((need, i) => KeyValuePair.Create(need.BillId, after[i])).ToImmutableDictionary();
    }
}
