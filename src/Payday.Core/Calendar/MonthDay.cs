using System.Runtime.CompilerServices;
using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>A day within any month. One of the nested cases.</summary>
public abstract record MonthDay
{
    /// <summary>The highest number of a day.</summary>
    public const int LastDay = 31;

    /// <summary>The highest count of a weekday.</summary>
    public const int LastNth = 5;

    private MonthDay()
    {
    }

    /// <summary>The date that this day is in a month.</summary>
    /// <param name="month">Any month.</param>
    /// <param name="holidays">The bank holidays, which the last working day minds.</param>
    /// <returns>A date of that very month.</returns>
    public abstract LocalDate In(YearMonth month, BankHolidays holidays);

    private static LocalDate LastOf(YearMonth month) => month.ToDateInterval().End;

    private static int Within(int value, int most, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, 1, name);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, most, name);
        return value;
    }

    /// <summary>A day by its number.</summary>
    /// <param name="Day">1 to 31; past a month's end it means the month's last day.</param>
    public sealed record Numbered(int Day) : MonthDay
    {
        /// <summary>1 to 31.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is not 1 to 31.</exception>
        public int Day { get; init => field = Within(value, LastDay, nameof(Day)); } = Within(Day, LastDay);

        /// <inheritdoc/>
        public override LocalDate In(YearMonth month, BankHolidays holidays) =>
            month.OnDayOfMonth(Math.Min(Day, LastOf(month).Day));
    }

    /// <summary>The last day of the month.</summary>
    public sealed record Last : MonthDay
    {
        /// <inheritdoc/>
        public override LocalDate In(YearMonth month, BankHolidays holidays) => LastOf(month);
    }

    /// <summary>
    /// The last day of the month that is neither a weekend day nor a bank holiday;
    /// the last day where the household's own dates close the bank for the whole month.
    /// </summary>
    public sealed record LastWorkingDay : MonthDay
    {
        /// <inheritdoc/>
        public override LocalDate In(YearMonth month, BankHolidays holidays)
        {
            ArgumentNullException.ThrowIfNull(holidays);
            LocalDate last = LastOf(month);
            for (int day = last.Day; day >= 1; day--)
            {
                if (holidays.IsWorkingDay(month.OnDayOfMonth(day)))
                {
                    return month.OnDayOfMonth(day);
                }
            }

            return last;
        }
    }

    /// <summary>
    /// The first day of the month that is neither a weekend day nor a bank holiday;
    /// the first day where the household's own dates close the bank for the whole month.
    /// </summary>
    public sealed record FirstWorkingDay : MonthDay
    {
        /// <inheritdoc/>
        public override LocalDate In(YearMonth month, BankHolidays holidays)
        {
            ArgumentNullException.ThrowIfNull(holidays);
            int last = LastOf(month).Day;
            for (int day = 1; day <= last; day++)
            {
                if (holidays.IsWorkingDay(month.OnDayOfMonth(day)))
                {
                    return month.OnDayOfMonth(day);
                }
            }

            return month.OnDayOfMonth(1);
        }
    }

    /// <summary>The nth weekday of the month, e.g. the second Friday.</summary>
    /// <param name="Nth">1 to 5; the fifth means the last where a month has four, so it is the last of every month.</param>
    /// <param name="Weekday">Monday to Sunday.</param>
    public sealed record NthWeekday(int Nth, IsoDayOfWeek Weekday) : MonthDay
    {
        /// <summary>1 to 5.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is not 1 to 5.</exception>
        public int Nth { get; init => field = Within(value, LastNth, nameof(Nth)); } = Within(Nth, LastNth);

        /// <summary>Monday to Sunday.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is not a day of the week.</exception>
        public IsoDayOfWeek Weekday { get; init => field = ADay(value); } = ADay(Weekday);

        /// <inheritdoc/>
        public override LocalDate In(YearMonth month, BankHolidays holidays)
        {
            int first = 1 + (((int)Weekday - (int)month.OnDayOfMonth(1).DayOfWeek + 7) % 7);
            int nth = first + (7 * (Nth - 1));
            return month.OnDayOfMonth(nth <= LastOf(month).Day ? nth : nth - 7);
        }

        private static IsoDayOfWeek ADay(IsoDayOfWeek day) => (IsoDayOfWeek)Within((int)day, 7, nameof(Weekday));
    }
}
