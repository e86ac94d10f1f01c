using System.Globalization;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Text;

namespace Payday.Reports;

/// <summary>When something comes round, in a few words.</summary>
internal static class ScheduleText
{
    /// <summary>The words, e.g. <c>monthly, 25th</c> or <c>every 2 weeks, Fri</c>; at most 24 columns, but for dates.</summary>
    public static string Of(Schedule schedule) => schedule switch
    {
        Schedule.EveryWeeks { Weeks: 1 } weeks => $"weekly, {Weekday(weeks.Anchor)}",
        Schedule.EveryWeeks weeks => $"every {weeks.Weeks} weeks, {Weekday(weeks.Anchor)}",
        Schedule.TwiceMonthly twice => $"{Day(twice.First)} and {Day(twice.Second)}",
        Schedule.Monthly monthly => $"monthly, {Day(monthly.Day)}",
        Schedule.EveryMonths { Months: 12 } months => $"yearly, {DateText.Short(months.Anchor)}",
        Schedule.EveryMonths months => $"every {months.Months} months, {DateText.Short(months.Anchor)}",
        Schedule.OnDates dates => string.Join(", ", dates.Dates.Select(DateText.Day)),
        _ => throw new ArgumentOutOfRangeException(nameof(schedule)),
    };

    private static string Day(MonthDay day) => day switch
    {
        MonthDay.Numbered numbered => Ordinal(numbered.Day),
        MonthDay.Last => "last",
        MonthDay.LastWorkingDay => "last working day",
        MonthDay.FirstWorkingDay => "first working day",
        MonthDay.NthWeekday nth => $"{Ordinal(nth.Nth)} {nth.Weekday.ToString()[..3]}",
        _ => throw new ArgumentOutOfRangeException(nameof(day)),
    };

    private static string Ordinal(int number) => number.ToString(CultureInfo.InvariantCulture) + ((number % 100, number % 10) switch
    {
        (11 or 12 or 13, _) => "th",
        (_, 1) => "st",
        (_, 2) => "nd",
        (_, 3) => "rd",
        _ => "th",
    });

    private static string Weekday(LocalDate date) => date.DayOfWeek.ToString()[..3];
}
