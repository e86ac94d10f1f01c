using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;

namespace Payday.Core.Routines;

/// <summary>
/// The dues that closed paydays and payments between them have written down, as they stand now: those of late, and older
/// ones that were left open.
/// </summary>
internal sealed class WrittenDues
{
    // A due that moved within its month may have been written down by the payday before the last one.
    private const int MonthsBack = 1;

    private readonly LocalDate from;
    private readonly ILookup<DueOwner, WrittenDue> byOwner;

    private WrittenDues(LocalDate from, IEnumerable<WrittenDue> dues) =>
        (this.from, byOwner) = (from, dues.OrderBy(due => due.Key.Scheduled).ToLookup(due => due.Key.Owner));

    public static WrittenDues OfBills(Book book) => Of(book, From(book), book.Closed, payday => payday.Dues);

    /// <summary>Likewise for minimums; paydays closed in the first versions of the store didn't write them down, and covered all of theirs.</summary>
    public static WrittenDues OfDebts(Book book) => book.LastClosed is { Minimums: null }
        ? Of(book, FromOfDebts(book), [], payday => payday.Minimums ?? [])
        : Of(book, FromOfDebts(book), book.Closed, payday => payday.Minimums ?? []);

    /// <summary>The first day that isn't history: dues before it that nobody wrote down are not asked for.</summary>
    public static LocalDate FromOfDebts(Book book) => book.LastClosed is { Minimums: null } last ? last.Period.Last.PlusDays(1) : From(book);

    /// <summary>What was written down for one bill or debt, with the time that it is now, and the times that nobody wrote down yet.</summary>
    public (ImmutableArray<(WrittenDue Due, Occurrence? Time)> Known, ImmutableArray<Occurrence> Fresh) Among(
        DueOwner owner, Schedule schedule, Shift shift, LocalDate? until, BankHolidays holidays, LocalDate to)
    {
        WrittenDue[] known = [.. byOwner[owner]];
        ImmutableArray<Occurrence> times = Occurrences.Between(schedule, shift, holidays, from.PlusMonths(-MonthsBack), to, until);
        Occurrence?[] found = DueMatch.Of(schedule, times, [.. known.Select(due => due.Key.Scheduled)]);
        HashSet<Occurrence> taken = [.. found.OfType<Occurrence>()];

        // A day that moved to before those of the last payday still has that month's due, if it comes after one that was written down.
        LocalDate since = known.Zip(found).Where(one => one.First is not { Closed: null, IsDone: false, Paid.IsPositive: false })
            .Select(one => one.Second?.Scheduled ?? one.First.Key.Scheduled).DefaultIfEmpty(LocalDate.MaxIsoValue).Min();
        return ([.. known.Zip(found)], [.. times.Where(time => !taken.Contains(time) && (time.Date >= from || time.Scheduled > since))]);
    }

    private static LocalDate From(Book book) => book.Closed.Length > 1 ? book.Closed[^2].Period.Last.PlusDays(1) : book.Household.Start;

    private static WrittenDues Of(Book book, LocalDate from, ImmutableArray<ClosedPayday> closed, Func<ClosedPayday, ImmutableArray<ClosedDue>> duesOf)
    {
        ILookup<DueKey, DuePayment> payments = book.Weeks.StandingPayments.ToLookup(payment => payment.Key);
        var dues = new Dictionary<DueKey, WrittenDue>();
        LocalDate late = from.PlusMonths(-MonthsBack);
        for (int i = closed.Length - 1; i >= 0; i--)
        {
            ClosedPayday payday = closed[i];
            bool isLate = payday.Period.Last >= late;
            foreach (ClosedDue due in duesOf(payday))
            {
                if (isLate || (!due.Paid && !ComesAgain(i, due.Key)))
                {
                    dues.TryAdd(due.Key, Written(due, due.Key, payday.LastMovement));
                }
            }
        }

        foreach (DueKey key in payments.Select(paid => paid.Key).Where(key => key.Scheduled >= late))
        {
            dues.TryAdd(key, Written(null, key, 0));
        }

        // What was paid when those paydays were closed, and is undone by now, they left out.
        foreach (DuePayment undone in book.Weeks.Payments.Where(payment => payment.Undone && payment.Key.Scheduled < from && closed.Any(payday => payday.FirstMovement > payment.LastMovement)))
        {
            dues.TryAdd(undone.Key, Written(null, undone.Key, 0));
        }

        return new WrittenDues(from, dues.Values);

        // What one payday leaves open the next one takes up; only an undone payment breaks that chain.
        bool ComesAgain(int at, DueKey key)
        {
            for (int later = at + 1; later < closed.Length; later++)
            {
                foreach (ClosedDue due in duesOf(closed[later]))
                {
                    if (due.Key == key)
                    {
                        return true;
                    }
                }
            }

            return false;
        }

        WrittenDue Written(ClosedDue? due, DueKey key, long last) => new(
            due,
            key,
            due is { Paid: true } || payments[key].Any(payment => payment.Completes),
            Money.Sum(payments[key].Select(payment => payment.Amount), book.Household.Currency),
            Money.Sum(payments[key].Where(payment => payment.FirstMovement > last).Select(payment => payment.Amount), book.Household.Currency));
    }
}
