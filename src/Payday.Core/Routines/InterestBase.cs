using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Routines;

/// <summary>The months of a debt whose interest isn't charged yet, and what each is charged on.</summary>
/// <remarks>
/// Rule (design, section 5.9): once a calendar month, on the debt's first due date of that month (<see cref="InterestDays"/>),
/// on the balance of that date, which is what is owed when the day begins. A minimum that left the account before its own
/// day changes nothing of it, so it counts as still owed; what was paid beyond the minimum does.
/// </remarks>
internal sealed class InterestBase
{
    private readonly Debt debt;
    private readonly Money nothing;
    private readonly ImmutableArray<Movement> movements;
    private readonly ImmutableArray<Early> early;

    private InterestBase(Book book, Debt debt, BankHolidays holidays, LocalDate to)
    {
        this.debt = debt;
        nothing = Money.Zero(book.Household.Currency);
        movements = [.. book.Ledger.Of(new LedgerEnd.Owed(debt.Id))];
        early = [.. Paid(book, debt)];
        Days = DaysOf(book, debt, holidays, to);
    }

    /// <summary>The days up to the one asked for on which interest is still to be charged, in order.</summary>
    public ImmutableArray<LocalDate> Days { get; }

    /// <summary>Works it out.</summary>
    /// <param name="book">The book.</param>
    /// <param name="debt">A debt of it.</param>
    /// <param name="holidays">The bank holidays.</param>
    /// <param name="to">The last day that is looked at.</param>
    public static InterestBase Of(Book book, Debt debt, BankHolidays holidays, LocalDate to) =>
        book.Remembered(static _ => new Known()).Of(debt.Id, holidays, to, () => new InterestBase(book, debt, holidays, to));

    /// <summary>A month's interest on a day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="more">What is owed then beyond what the ledger knows: interest of earlier days, less payments that are only planned.</param>
    public Money On(LocalDate day, Money more) => (OwedAt(day) + more).ClampToZero().MonthOfInterest(debt.YearlyRate);

    private Money OwedAt(LocalDate day)
    {
        Money owed = nothing;
        foreach (Movement movement in movements.Where(movement => movement.Date < day || (movement.Date == day && movement.To is LedgerEnd.Outside { Kind: OutsideKind.Opening })))
        {
            owed += movement.From is LedgerEnd.Owed ? movement.Amount : -movement.Amount;
        }

        return owed + Money.Sum(early.Where(payment => payment.Paid < day && payment.Due >= day).Select(payment => payment.Minimum), nothing.Currency);
    }

    private static ImmutableArray<LocalDate> DaysOf(Book book, Debt debt, BankHolidays holidays, LocalDate to)
    {
        LocalDate from = WrittenDues.FromOfDebts(book);
        HashSet<YearMonth> charged = [.. Charged(book, debt, from)];
        YearMonth last = charged.DefaultIfEmpty(from.ToYearMonth()).Min();
        return
        [
            .. Months(Earlier(from.ToYearMonth(), last), to.ToYearMonth())
                .Where(month => !charged.Contains(month))
                .Select(month => InterestDays.In(debt.Schedule, holidays, month))
                .Where(day => day <= to && day >= book.Household.Start && (day >= from || charged.Any(month => month < day.ToYearMonth()))),
        ];
    }

    private static IEnumerable<YearMonth> Charged(Book book, Debt debt, LocalDate from)
    {
        foreach ((ClosedPayday payday, DueKey key) in Records(book).Charged[debt.Id])
        {
            if (payday.Period.Last >= from.PlusMonths(-1))
            {
                yield return key.Scheduled.ToYearMonth();
            }
        }

        foreach (Movement charge in book.Ledger.Of(LedgerEnd.InterestOn(debt.Id)).Where(charge => charge.Payday is null && charge.Date >= from.PlusMonths(-1)))
        {
            yield return charge.Date.ToYearMonth();
        }
    }

    // Minimums that left the account before their day: ticked between paydays, or in a routine.
    private static IEnumerable<Early> Paid(Book book, Debt debt)
    {
        foreach (DuePayment payment in book.Weeks.StandingPayments.Where(payment => payment.Key.Debt == debt.Id && payment.Date < payment.Key.Scheduled))
        {
            yield return new Early(payment.Date, payment.Key.Scheduled, Money.Min(payment.Amount, payment.Asked ?? payment.Amount));
        }

        foreach (Early payment in Records(book).Early[debt.Id])
        {
            yield return payment;
        }
    }

    // Once for all debts: each would go through all of every payday's.
    private static ClosedRecords Records(Book book) => book.Remembered(static of => new ClosedRecords(
        of.Closed
            .SelectMany(payday => (payday.Charged ?? payday.Minimums?.Select(due => due.Key) ?? []).Select(key => (payday, key)))
            .Where(one => one.key.Debt is not null)
            .ToLookup(one => one.key.Debt!.Value),
        of.Closed
            .Where(payday => payday.Charged is not null)
            .SelectMany(payday => (payday.Minimums ?? []).Where(due => due.Paid && due.Key.Scheduled > payday.Payday).Select(due => (payday.Payday, Due: due)))
            .Where(one => one.Due.Key.Debt is not null)
            .ToLookup(one => one.Due.Key.Debt!.Value, one => new Early(one.Payday, one.Due.Key.Scheduled, Money.Min(one.Due.Amount, one.Due.Asked ?? one.Due.Amount)))));

    private static YearMonth Earlier(YearMonth left, YearMonth right) => left < right ? left : right;

    private static IEnumerable<YearMonth> Months(YearMonth first, YearMonth last)
    {
        for (YearMonth month = first; month <= last; month = month.PlusMonths(1))
        {
            yield return month;
        }
    }

    // A routine asks for the same ones for what is due and for what comes after, and again with each of its decisions.
    private sealed class Known
    {
        private readonly Dictionary<(DebtId Debt, BankHolidays Holidays, LocalDate To), InterestBase> known = [];

        public InterestBase Of(DebtId debt, BankHolidays holidays, LocalDate to, Func<InterestBase> workOut)
        {
            if (!known.TryGetValue((debt, holidays, to), out InterestBase? one))
            {
                known[(debt, holidays, to)] = one = workOut();
            }

            return one;
        }
    }

    private sealed record ClosedRecords(ILookup<DebtId, (ClosedPayday Payday, DueKey Key)> Charged, ILookup<DebtId, Early> Early);

    private readonly record struct Early(LocalDate Paid, LocalDate Due, Money Minimum);
}
