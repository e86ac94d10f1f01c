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

    // In order of their dates, so that those of a span lie together.
    private readonly Due[] dues;

    // In household order, and where each is in it.
    private readonly BillId[] bills;
    private readonly Dictionary<BillId, int> places;

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
        bills = [.. household.Bills.Select(bill => bill.Id)];
        places = bills.Index().ToDictionary(bill => bill.Item, bill => bill.Index);
    }

    /// <summary>When each bill holds all of its next due.</summary>
    /// <param name="holds">What each holds once this period's dues are paid.</param>
    /// <returns>Those that are whole in time.</returns>
    public ImmutableDictionary<BillId, LocalDate> Whole(ImmutableDictionary<BillId, Money> holds)
    {
        var whole = ImmutableDictionary.CreateBuilder<BillId, LocalDate>();
        Dictionary<BillId, SetAsideLine> waits = plan.Bills.SetAsides.Where(line => line.NextDue is not null).ToDictionary(line => line.BillId);
        Money[] held = [.. bills.Select(bill => holds[bill])];
        Note(plan.Period.First);
        for (int k = 0; k + 1 < paydays.Length && waits.Count > 0; k++)
        {
            LocalDate payday = paydays[k].Date;
            int first = FirstFrom(payday);
            int next = FirstFrom(paydays[k + 1].Date);
            held = After(held, k, first, next, FirstFrom(payday.PlusMonths(BillDues.MonthsAhead).PlusDays(1)));
            Note(payday);
            foreach (Due due in dues.AsSpan(first, next - first))
            {
                int bill = places[due.BillId];
                held[bill] = (held[bill] - due.Amount).ClampToZero();
                waits.Remove(due.BillId);
            }
        }

        return whole.ToImmutable();

        void Note(LocalDate payday)
        {
            foreach (SetAsideLine line in waits.Values.Where(line => held[places[line.BillId]] >= line.NextAmount).ToList())
            {
                whole[line.BillId] = payday;
                waits.Remove(line.BillId);
            }
        }
    }

    // What this period needs is planned for whether the day brings it or not, as in the routine; what it doesn't bring isn't there.
    // The period's dues are those from the first up to the next, the later ones those from there up to the end.
    private Money[] After(Money[] holds, int k, int first, int next, int end)
    {
        Currency currency = plan.Bills.Total.Currency;
        Money held = Money.Sum(holds, currency);
        Money[] dueNow = [.. holds.Select(_ => Money.Zero(currency))];
        foreach (Due due in dues.AsSpan(first, next - first))
        {
            dueNow[places[due.BillId]] += due.Amount;
        }

        Money needed = (Money.Sum(dueNow, currency) - held).ClampToZero();
        LocalDate to = paydays[k].Date.PlusMonths(BillDues.MonthsAhead);
        PlannedPayday[] ahead = [.. paydays.Skip(k + 1).TakeWhile(payday => payday.Date <= to)];
        bool isKnown = ahead.Any(payday => payday.Income.IsPositive);
        PlannedPayday today = isKnown ? paydays[k] with { Income = Money.Max(paydays[k].Income, needed) } : paydays[k];
        Money planned = Money.Max(
            SetAsidePlanner.Plan(plan.Book.Household.Settings.SetAsides, held, [today, .. ahead], dues[first..end]).Rows[0].SetAside, needed);
        planned = isKnown ? Money.Min(planned, paydays[k].Income) : planned;
        return [.. SetAsideShares.After([.. bills.Select((bill, i) => new BillNeed(bill, holds[i], dueNow[i]))], planned, dues[next..end])];
    }

    // Where the first due that isn't before a day is.
    private int FirstFrom(LocalDate day)
    {
        int low = 0;
        int high = dues.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = dues[middle].Date < day ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
