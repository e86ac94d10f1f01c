using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;

namespace Payday.Core.Routines;

/// <summary>The dues that closed paydays have written down, as they stand now: those of late, and older ones that were left open.</summary>
internal sealed class WrittenDues
{
    // A due that moved within its month may have been written down by the payday before the last one.
    private const int MonthsBack = 1;

    private readonly LocalDate from;
    private readonly ILookup<DueOwner, ClosedDue> byOwner;

    private WrittenDues(LocalDate from, IEnumerable<ClosedDue> dues) =>
        (this.from, byOwner) = (from, dues.OrderBy(due => due.Key.Scheduled).ToLookup(due => due.Key.Owner));

    public static WrittenDues OfBills(Book book) => Of(book, payday => payday.Dues);

    /// <summary>Likewise for minimums; paydays closed in the first versions of the store didn't write them down, and covered all of theirs.</summary>
    public static WrittenDues OfDebts(Book book) => book.LastClosed is { Minimums: null } last
        ? new WrittenDues(last.Period.Last.PlusDays(1), [])
        : Of(book, payday => payday.Minimums ?? []);

    /// <summary>What was written down for one bill or debt, with the time that it is now, and the times that nobody wrote down yet.</summary>
    public (ImmutableArray<(ClosedDue Due, Occurrence? Time)> Known, ImmutableArray<Occurrence> Fresh) Among(
        DueOwner owner, Schedule schedule, Shift shift, LocalDate? until, BankHolidays holidays, LocalDate to)
    {
        ClosedDue[] known = [.. byOwner[owner]];
        ImmutableArray<Occurrence> times = Occurrences.Between(schedule, shift, holidays, from.PlusMonths(-MonthsBack), to, until);
        Occurrence?[] found = DueMatch.Of(schedule, times, [.. known.Select(due => due.Key.Scheduled)]);
        HashSet<Occurrence> taken = [.. found.OfType<Occurrence>()];

        // A day that moved to before those of the last payday still has that month's due, if it comes after one that was written down.
        LocalDate since = known.Zip(found, (due, time) => time?.Scheduled ?? due.Key.Scheduled).DefaultIfEmpty(LocalDate.MaxIsoValue).Min();
        return ([.. known.Zip(found)], [.. times.Where(time => !taken.Contains(time) && (time.Date >= from || time.Scheduled > since))]);
    }

    private static WrittenDues Of(Book book, Func<ClosedPayday, ImmutableArray<ClosedDue>> duesOf)
    {
        ImmutableArray<ClosedPayday> closed = book.Closed;
        LocalDate from = closed.Length > 1 ? closed[^2].Period.Last.PlusDays(1) : book.Household.Start;
        var dues = new Dictionary<DueKey, ClosedDue>();
        for (int i = closed.Length - 1; i >= 0; i--)
        {
            bool isLate = closed[i].Period.Last >= from.PlusMonths(-MonthsBack);
            foreach (ClosedDue due in duesOf(closed[i]).Where(due => isLate || (!due.Paid && !ComesAgain(i, due.Key))))
            {
                dues.TryAdd(due.Key, due);
            }
        }

        return new WrittenDues(from, dues.Values);

        // What one payday leaves open the next one takes up; only an undone payment breaks that chain.
        bool ComesAgain(int at, DueKey key) => closed.Skip(at + 1).Any(later => duesOf(later).Any(due => due.Key == key));
    }
}
