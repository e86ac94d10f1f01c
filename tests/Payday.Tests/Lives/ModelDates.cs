namespace Payday.Tests.Lives;

/// <summary>Dates of the schedules that the model's household has, written out day by day (design, 5.1).</summary>
internal static class ModelDates
{
    private static readonly DateOnly First = new(2025, 12, 1);
    private static readonly DateOnly Last = new(2028, 12, 31);

    /// <summary>The bank holidays of the household's file.</summary>
    public static IReadOnlyList<DateOnly> Holidays { get; } = [new(2026, 4, 17), new(2026, 12, 25), new(2027, 1, 1)];

    /// <summary>A rhythm of days from any date on which it falls.</summary>
    public static IEnumerable<DateOnly> Every(int days, DateOnly anchor)
    {
        for (DateOnly date = First; date <= Last; date = date.AddDays(1))
        {
            if ((date.DayNumber - anchor.DayNumber) % days == 0)
            {
                yield return date;
            }
        }
    }

    /// <summary>A day of each month; past its end the last.</summary>
    public static IEnumerable<DateOnly> EachMonth(int day) => Months().Select(month => On(month, day));

    /// <summary>A day of each so many months.</summary>
    public static IEnumerable<DateOnly> EachMonths(int months, DateOnly anchor) => Months()
        .Where(month => (Number(month) - Number(anchor)) % months == 0)
        .Select(month => On(month, anchor.Day));

    /// <summary>The last day of each month on which the bank is open.</summary>
    public static IEnumerable<DateOnly> LastWorkingDays() => Months().Select(month => Moved(On(month, 31), -1));

    /// <summary>Where a date on a closed day goes.</summary>
    /// <param name="date">The date.</param>
    /// <param name="step">-1 for the working day before, 1 for the one after, 0 for staying.</param>
    public static DateOnly Moved(DateOnly date, int step)
    {
        while (step != 0 && (date.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday || Holidays.Contains(date)))
        {
            date = date.AddDays(step);
        }

        return date;
    }

    private static IEnumerable<DateOnly> Months() => Enumerable.Range(0, Number(Last) - Number(First) + 1).Select(First.AddMonths);

    private static DateOnly On(DateOnly month, int day) => new(month.Year, month.Month, Math.Min(day, DateTime.DaysInMonth(month.Year, month.Month)));

    private static int Number(DateOnly date) => (date.Year * 12) + date.Month;
}
