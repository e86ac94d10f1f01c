using NodaTime;
using Payday.Core.Calendar;

namespace Payday.Core.Drafts;

/// <summary>When a schedule that has a date of its own comes round next.</summary>
public static class ScheduleNext
{
    /// <summary>The first of its dates on a day or after it, before any move to a working day.</summary>
    /// <param name="schedule">One of dates, or of every so many months.</param>
    /// <param name="day">The day.</param>
    /// <returns>Null where all its dates are past, or what it is made of is missing.</returns>
    public static LocalDate? After(ScheduleDraft schedule, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        return schedule switch
        {
            { Dates: { } dates } => dates.Where(date => date >= day).Cast<LocalDate?>().Min(),
            { Anchor: { } anchor, Months: { } months and > 0 } => Occurrences
                .Between(new Schedule.EveryMonths(months, anchor), Shift.None, BankHolidays.None, day, day.PlusMonths(months))
                .Select(one => (LocalDate?)one.Date)
                .FirstOrDefault(),
            _ => null,
        };
    }
}
