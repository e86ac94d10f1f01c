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

    /// <summary>The debts of a book on a day; minimums that a payday covered count as paid, with the interest of their days.</summary>
    public static DebtOutlook Of(Book book, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        BankHolidays holidays = book.Household.Holidays;
        LocalDate covered = book.LastClosed?.Period.Last ?? book.Household.Start.PlusDays(-1);
        Dictionary<DebtId, Money> balances = DebtCourse.Ahead(book, holidays, covered, due => due.Covered is not null)
            .ToDictionary(course => course.Rows[0].DebtId, course => course.Rows[^1].NewBalance.ClampToZero());
        ILookup<DebtId, OpenMinimum> dues = OpenDues.OfDebts(book, holidays, today.PlusMonths(MonthsAhead))
            .Where(due => due.Covered is null).ToLookup(due => due.DebtId);
        return Begin(today.ToYearMonth(), book.Household.Debts.Select(debt => Early(book, holidays, debt, balances[debt.Id], dues[debt.Id].FirstOrDefault()?.Date, covered)));
    }

    /// <summary>The debts after a payday has covered all minimums of its period.</summary>
    internal static DebtOutlook After(RoutineFacts facts, Func<DebtId, Money> balanceOf)
    {
        LocalDate last = facts.Period.Last;
        ILookup<DebtId, OpenMinimum> dues = OpenDues.OfDebts(facts.Book, facts.Holidays, last.PlusMonths(MonthsAhead))
            .Where(due => due.Date > last).ToLookup(due => due.DebtId);
        return Begin(facts.Period.First.ToYearMonth(), facts.Book.Household.Debts.Select(debt => Early(facts.Book, facts.Holidays, debt, balanceOf(debt.Id), dues[debt.Id].FirstOrDefault()?.Date, last)));
    }

    // A minimum that was paid early, beyond the days covered, leaves its month out; the month's interest comes on its day all the same.
    private static (Debt Debt, Money Balance, LocalDate? Next, ImmutableArray<PaidAhead> Ahead) Early(Book book, BankHolidays holidays, Debt debt, Money balance, LocalDate? open, LocalDate covered)
    {
        LocalDate to = book.Weeks.StandingPayments
            .Where(payment => payment.Completes && payment.Key.Debt == debt.Id && !(payment.Key.Scheduled >= open))
            .Select(payment => payment.Key.Scheduled).Append(covered).Max();
        Money known = book.Ledger.Balances.OwedOn(debt.Id);
        InterestBase interest = InterestBase.Of(book, debt, holidays, to);
        Money then = interest.Days.Where(day => day > covered).Aggregate(balance, (owed, day) => owed + interest.On(day, owed - known));

        // One that is due in other steps than months has its interest to come in months without a due date too.
        return (debt, then, debt.Schedule is Schedule.Monthly ? open : to.PlusDays(1), Ahead(book, debt.Id, open));
    }

    // Paid though an earlier one is open: beyond the days covered, in parts or at once.
    private static ImmutableArray<PaidAhead> Ahead(Book book, DebtId debt, LocalDate? open) =>
    [
        .. book.Weeks.StandingPayments.Where(payment => payment.Key.Debt == debt && payment.Key.Scheduled > open)
            .GroupBy(payment => payment.Key.Scheduled)
            .Where(due => due.Any(payment => payment.Completes))
            .Select(due => new PaidAhead(due.Key, Money.Sum(due.Select(payment => payment.Amount), book.Household.Currency)))
            .OrderBy(paid => paid.Due),
    ];

    private static DebtOutlook Begin(YearMonth now, IEnumerable<(Debt Debt, Money Balance, LocalDate? Next, ImmutableArray<PaidAhead> Ahead)> debts)
    {
        (Debt Debt, Money Balance, YearMonth Next, LocalDate? Due, ImmutableArray<PaidAhead> Ahead)[] all = [.. debts.Select(one => (one.Debt, one.Balance, Later(one.Next?.ToYearMonth() ?? now, now), one.Next, one.Ahead))];
        YearMonth first = all.Where(one => one.Balance.IsPositive).Select(one => one.Next).DefaultIfEmpty(now).Min();
        return new DebtOutlook(first, [.. all.Select(one => new DebtState(one.Debt.Id, one.Debt.Name, one.Balance, one.Debt.YearlyRate, one.Debt.Minimum)
        {
            MonthsCovered = Math.Max(0, ((one.Next.Year - first.Year) * 12) + one.Next.Month - first.Month),
            Schedule = one.Debt.Schedule is Schedule.Monthly ? null : one.Debt.Schedule,
            CoveredTo = one.Due?.PlusDays(-1),
            PaidAhead = one.Ahead,
        })]);
    }

    // An overdue minimum is one of this month.
    private static YearMonth Later(YearMonth left, YearMonth right) => left > right ? left : right;
}
