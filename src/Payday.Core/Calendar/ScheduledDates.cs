using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>The dates of a schedule before any of them moves off a weekend or bank holiday.</summary>
internal static class ScheduledDates
{
    /// <summary>The scheduled dates in a window, both ends included, in order, each once.</summary>
    public static IEnumerable<LocalDate> Between(Schedule schedule, BankHolidays holidays, LocalDate from, LocalDate to) =>
        from > to ? [] : schedule switch
        {
            Schedule.EveryWeeks weeks => Weekly(weeks, from, to),
            Schedule.TwiceMonthly twice => Months(from, to)
                .SelectMany(month => InOrder(twice.First.In(month, holidays), twice.Second.In(month, holidays)))
                .Where(date => from <= date && date <= to),
            Schedule.Monthly monthly => Months(from, to)
                .Select(month => monthly.Day.In(month, holidays))
                .Where(date => from <= date && date <= to),
            Schedule.EveryMonths months => EveryMonths(months, from, to),
            Schedule.OnDates typed => typed.Dates.IsDefaultOrEmpty
                ? []
                : typed.Dates.Where(date => from <= date && date <= to).Distinct().Order(),
            _ => throw new ArgumentOutOfRangeException(nameof(schedule), schedule, "There is no such schedule."),
        };

    // Counting whole steps from the anchor, not adding them up, never leaves the calendar at its two ends.
    private static IEnumerable<LocalDate> Weekly(Schedule.EveryWeeks weeks, LocalDate from, LocalDate to)
    {
        long step = 7L * weeks.Weeks;
        long last = Period.DaysBetween(weeks.Anchor, to);
        for (long days = NextMultiple(Period.DaysBetween(weeks.Anchor, from), step); days <= last; days += step)
        {
            yield return weeks.Anchor.PlusDays((int)days);
        }
    }

    // Always from the anchor itself: 31 January, then 28 February, then 31 March again.
    private static IEnumerable<LocalDate> EveryMonths(Schedule.EveryMonths schedule, LocalDate from, LocalDate to)
    {
        long anchor = MonthNumber(schedule.Anchor);
        long last = MonthNumber(to) - anchor;
        for (long months = NextMultiple(MonthNumber(from) - anchor, schedule.Months); months <= last; months += schedule.Months)
        {
            LocalDate date = schedule.Anchor.PlusMonths((int)months);
            if (from <= date && date <= to)
            {
                yield return date;
            }
        }
    }

    private static IEnumerable<YearMonth> Months(LocalDate from, LocalDate to)
    {
        YearMonth month = from.ToYearMonth();
        int count = MonthNumber(to) - MonthNumber(from) + 1;
        return Enumerable.Range(0, count).Select(month.PlusMonths);
    }

    private static LocalDate[] InOrder(LocalDate one, LocalDate other) =>
        one == other ? [one] : one < other ? [one, other] : [other, one];

    private static int MonthNumber(LocalDate date) => (date.Year * 12) + date.Month - 1;

    private static long NextMultiple(long value, long step)
    {
        long rest = value % step;
        return rest > 0 ? value - rest + step : value - rest;
    }
}
