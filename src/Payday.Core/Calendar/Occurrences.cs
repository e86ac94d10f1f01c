using System.Collections.Immutable;
using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>When a schedule comes round in a span of dates.</summary>
public static class Occurrences
{
    /// <summary>The times that a schedule comes round in a window.</summary>
    /// <param name="schedule">When it comes round.</param>
    /// <param name="shift">Where a date on a weekend or bank holiday moves.</param>
    /// <param name="holidays">The bank holidays.</param>
    /// <param name="from">The first date of the window.</param>
    /// <param name="to">The last date of the window.</param>
    /// <param name="until">
    /// The last scheduled date there may be, or null. It is held against the date before any move, so a last
    /// wage scheduled on its very day still comes when the bank opens later.
    /// </param>
    /// <returns>
    /// Those whose moved date lies in the window, both ends included, in order of the scheduled date, which is
    /// then the order of the moved date too. Each scheduled date is there once; two of them may move to one day.
    /// </returns>
    public static ImmutableArray<Occurrence> Between(
        Schedule schedule, Shift shift, BankHolidays holidays, LocalDate from, LocalDate to, LocalDate? until = null)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        ArgumentNullException.ThrowIfNull(holidays);

        // A date moves over closed days only, so what can move into the window lies in the closed days beside it.
        LocalDate first = shift == Shift.After ? WithClosedDays(from, -1, holidays) : from;
        LocalDate last = shift == Shift.Before ? WithClosedDays(to, 1, holidays) : to;
        LocalDate end = until < last ? until.Value : last;
        return
        [
            .. ScheduledDates.Between(schedule, holidays, first, end)
                .Select(date => new Occurrence(date, holidays.Shift(date, shift)))
                .Where(occurrence => from <= occurrence.Date && occurrence.Date <= to),
        ];
    }

    private static LocalDate WithClosedDays(LocalDate edge, int step, BankHolidays holidays)
    {
        LocalDate end = step > 0 ? LocalDate.MaxIsoValue : LocalDate.MinIsoValue;
        while (edge != end && !holidays.IsWorkingDay(edge.PlusDays(step)))
        {
            edge = edge.PlusDays(step);
        }

        return edge;
    }
}
