namespace Payday.Core.Drafts;

/// <summary>How often something comes round, as a person says it.</summary>
public enum ScheduleKind
{
    /// <summary>Every week.</summary>
    Weekly,

    /// <summary>Every two weeks.</summary>
    Fortnightly,

    /// <summary>Every so many weeks.</summary>
    EveryWeeks,

    /// <summary>On two days of each month.</summary>
    TwiceMonthly,

    /// <summary>On a day of each month.</summary>
    Monthly,

    /// <summary>Every so many months.</summary>
    EveryMonths,

    /// <summary>Once a year.</summary>
    Yearly,

    /// <summary>On certain dates.</summary>
    Dates,
}
