using NodaTime;
using NodaTime.Text;

namespace Payday.Text;

/// <summary>Dates as people read them, in English and in no other order on any machine.</summary>
internal static class DateText
{
    private static readonly LocalDatePattern LongPattern = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM uuuu");
    private static readonly LocalDatePattern WeekdayPattern = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM");
    private static readonly LocalDatePattern DayPattern = LocalDatePattern.CreateWithInvariantCulture("d MMM uuuu");
    private static readonly LocalDatePattern ShortPattern = LocalDatePattern.CreateWithInvariantCulture("d MMM");

    /// <summary>With weekday and year, e.g. <c>Fri 6 Mar 2026</c>; at most 15 columns.</summary>
    public static string Long(LocalDate date) => LongPattern.Format(date);

    /// <summary>With the weekday, e.g. <c>Fri 6 Mar</c>; where the year is known.</summary>
    public static string Weekday(LocalDate date) => WeekdayPattern.Format(date);

    /// <summary>Day, month and year, e.g. <c>6 Mar 2026</c>; at most 11 columns.</summary>
    public static string Day(LocalDate date) => DayPattern.Format(date);

    /// <summary>Day and month, e.g. <c>6 Mar</c>; at most 6 columns.</summary>
    public static string Short(LocalDate date) => ShortPattern.Format(date);
}
