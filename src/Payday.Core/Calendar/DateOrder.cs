namespace Payday.Core.Calendar;

/// <summary>How a date in figures with the year last, such as 10/9/2026, is read.</summary>
public enum DateOrder
{
    /// <summary>Nothing settles it; whoever typed it is asked.</summary>
    Unknown,

    /// <summary>The day, then the month.</summary>
    DayFirst,

    /// <summary>The month, then the day.</summary>
    MonthFirst,
}
