using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>A day within any month. One of the nested cases.</summary>
public abstract record MonthDay
{
    private MonthDay()
    {
    }

    /// <summary>A day by its number.</summary>
    /// <param name="Day">1 to 31; past a month's end it means the month's last day.</param>
    public sealed record Numbered(int Day) : MonthDay;

    /// <summary>The last day of the month.</summary>
    public sealed record Last : MonthDay;

    /// <summary>The last day of the month that is neither a weekend day nor a bank holiday.</summary>
    public sealed record LastWorkingDay : MonthDay;

    /// <summary>The nth weekday of the month, e.g. the second Friday.</summary>
    /// <param name="Nth">1 to 5; the fifth means the last where a month has four.</param>
    /// <param name="Weekday">Monday to Sunday.</param>
    public sealed record NthWeekday(int Nth, IsoDayOfWeek Weekday) : MonthDay;
}
