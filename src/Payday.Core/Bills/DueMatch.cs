using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Calendar;

namespace Payday.Core.Bills;

/// <summary>Finds dues that were written down among those that a schedule gives now.</summary>
/// <remarks>
/// A schedule may have changed since, and a due that was paid on the 10th is not due again on the 12th. Exact dates go
/// first, then moved ones (the way old records name a due), and what is left is paired by what makes two dates the same
/// due: the calendar month where the schedule goes by months, less than half of its step where it goes by weeks. Typed
/// dates are only themselves. Each due is paired once. Common practice, no source.
/// </remarks>
internal static class DueMatch
{
    /// <summary>For each due written down the time that it is now, or null where the schedule has none for it any more.</summary>
    /// <param name="schedule">The schedule now.</param>
    /// <param name="times">Its times, in order.</param>
    /// <param name="written">The dates of the dues written down, in order.</param>
    public static Occurrence?[] Of(Schedule schedule, ImmutableArray<Occurrence> times, IReadOnlyList<LocalDate> written)
    {
        var found = new Occurrence?[written.Count];
        List<Occurrence> free = [.. times];
        Pair((date, time) => time.Scheduled == date);
        Pair((date, time) => time.Date == date);
        Pair((date, time) => IsSame(schedule, date, time.Scheduled));
        return found;

        void Pair(Func<LocalDate, Occurrence, bool> isIt)
        {
            for (int i = 0; i < found.Length && free.Count > 0; i++)
            {
                int at = found[i] is null ? free.FindIndex(time => isIt(written[i], time)) : -1;
                if (at >= 0)
                {
                    found[i] = free[at];
                    free.RemoveAt(at);
                }
            }
        }
    }

    private static bool IsSame(Schedule schedule, LocalDate written, LocalDate scheduled) => schedule switch
    {
        Schedule.EveryWeeks weeks => Math.Abs(Period.DaysBetween(written, scheduled)) * 2 < weeks.Weeks * 7,
        Schedule.OnDates => false,
        _ => written.ToYearMonth() == scheduled.ToYearMonth(),
    };
}
