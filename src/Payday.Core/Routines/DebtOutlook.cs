using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Ids;

namespace Payday.Core.Routines;

/// <summary>The debts as a projection of them begins: each with the month of its next minimum.</summary>
/// <param name="From">The first month in which one of them has a minimum to come.</param>
/// <param name="Debts">All of them, in household order; those whose minimum of the first month is covered already begin later.</param>
public sealed record DebtOutlook(YearMonth From, ImmutableArray<DebtState> Debts)
{
    // A debt is due each month, and a covered month leaves at most one out.
    private const int MonthsAhead = 3;

    /// <summary>The debts of a book on a day.</summary>
    public static DebtOutlook Of(Book book, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        BankHolidays holidays = BankHolidays.From(book.Household.Settings.Holidays);
        ILookup<DebtId, OpenMinimum> dues = OpenDues.OfDebts(book, holidays, today.PlusMonths(MonthsAhead)).ToLookup(due => due.DebtId);
        return Begin(today.ToYearMonth(), book.Household.Debts.Select(debt => (
            debt, book.Ledger.Balances.OwedOn(debt.Id).ClampToZero(), dues[debt.Id].FirstOrDefault()?.Date.ToYearMonth())));
    }

    /// <summary>The debts after a payday has covered all minimums of its period.</summary>
    internal static DebtOutlook After(RoutineFacts facts, Func<DebtId, Money> balanceOf)
    {
        LocalDate after = facts.Period.Last.PlusDays(1);
        return Begin(facts.Period.First.ToYearMonth(), facts.Book.Household.Debts.Select(debt => (
            debt,
            balanceOf(debt.Id),
            Occurrences.Between(new Schedule.Monthly(debt.Due), Shift.None, facts.Holidays, after, after.PlusMonths(MonthsAhead))
                .Select(due => (YearMonth?)due.Date.ToYearMonth()).FirstOrDefault())));
    }

    private static DebtOutlook Begin(YearMonth now, IEnumerable<(Debt Debt, Money Balance, YearMonth? Next)> debts)
    {
        (Debt Debt, Money Balance, YearMonth Next)[] all = [.. debts.Select(one => (one.Debt, one.Balance, Later(one.Next ?? now, now)))];
        YearMonth first = all.Where(one => one.Balance.IsPositive).Select(one => one.Next).DefaultIfEmpty(now).Min();
        return new DebtOutlook(first, [.. all.Select(one => new DebtState(one.Debt.Id, one.Debt.Name, one.Balance, one.Debt.YearlyRate, one.Debt.Minimum)
        {
            MonthsCovered = Math.Max(0, ((one.Next.Year - first.Year) * 12) + one.Next.Month - first.Month),
        })]);
    }

    // An overdue minimum is one of this month.
    private static YearMonth Later(YearMonth left, YearMonth right) => left > right ? left : right;
}
