using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>What the buffer has beyond what it keeps and what the household would need of it if no money came for a while (design, rule 10).</summary>
/// <remarks>Common practice, no source: it would carry the bills, minimums and spending pots of thirty days. What is beyond that lies idle.</remarks>
public static class IdleBuffer
{
    /// <summary>How many days it is to carry.</summary>
    public const int Days = 30;

    /// <summary>What lies idle on a payday, once the buffer has given what it gives; zero for nothing.</summary>
    /// <param name="plan">The payday.</param>
    public static Money Of(RoutinePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        BufferHelp buffer = plan.Income.Buffer;
        Money nothing = Money.Zero(buffer.Has.Currency);
        Money free = buffer.Has - buffer.Amount - (buffer.Keeps ?? nothing);
        return buffer.Short.IsPositive || !free.IsPositive ? nothing : (free - Needed(plan.Book, plan.Period.First)).ClampToZero();
    }

    /// <summary>What bills, minimums and spending pots take in thirty days.</summary>
    /// <param name="book">The book.</param>
    /// <param name="from">The first of the days.</param>
    public static Money Needed(Book book, LocalDate from)
    {
        ArgumentNullException.ThrowIfNull(book);
        Household household = book.Household;
        BankHolidays holidays = household.Holidays;
        LocalDate last = from.PlusDays(Days - 1);
        ImmutableArray<LocalDate> paydays = [.. household.Paydays.Between(from, last).Select(payday => payday.Date)];
        ImmutableArray<LocalDate> fillDays = new PayPeriod(from, last).FillDays(household.Settings.FillDay);
        Money bills = Money.Sum(OpenDues.OfBills(book, holidays, last).Select(due => due.Amount), household.Currency);
        Money pots = Money.Sum(
            household.Pots.Select(pot => pot.Kind).OfType<PotKind.Spending>().SelectMany(kind => (kind.Per switch { FillPer.Week => fillDays, FillPer.Payday => paydays, _ => [from] }).Select(kind.AmountOn)),
            household.Currency);
        return bills + Minimums(book, holidays, last) + pots;
    }

    // Of the balance as it is today: one that falls asks for no more.
    private static Money Minimums(Book book, BankHolidays holidays, LocalDate last)
    {
        ILookup<DebtId, OpenMinimum> due = OpenDues.OfDebts(book, holidays, last).ToLookup(minimum => minimum.DebtId);
        return Money.Sum(
            book.Household.Debts.Select(debt =>
            {
                Money balance = book.Ledger.Balances.OwedOn(debt.Id).ClampToZero();
                return debt.Minimum.Due(balance, balance.MonthOfInterest(debt.YearlyRate)) * due[debt.Id].Count();
            }),
            book.Household.Currency);
    }
}
