namespace Payday.Store.Formats;

/// <summary>The days of the month that have a word of their own.</summary>
public enum DayWord
{
    /// <summary>The last day.</summary>
    Last,

    /// <summary>The last day that the bank is open.</summary>
    LastWorkingDay,

    /// <summary>The first day that the bank is open.</summary>
    FirstWorkingDay,
}
