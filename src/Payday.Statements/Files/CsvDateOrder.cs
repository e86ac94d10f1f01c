namespace Payday.Statements.Files;

/// <summary>How the figures of a date follow one another.</summary>
public enum CsvDateOrder
{
    /// <summary>Year, month, day.</summary>
    YearFirst,

    /// <summary>Day, month, year; also with the month's name.</summary>
    DayFirst,

    /// <summary>Month, day, year; also with the month's name.</summary>
    MonthFirst,
}
