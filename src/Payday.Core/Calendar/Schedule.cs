using System.Collections.Immutable;
using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>
/// When something comes round: pay from a source, or a bill. One of the nested cases.
/// </summary>
/// <remarks>
/// A day past a month's end means the month's last day. RFC 5545 (3.3.10) skips such a date instead;
/// a wage or a rent is not skipped because February is short.
/// </remarks>
public abstract record Schedule
{
    private Schedule()
    {
    }

    private static int AtLeastOne(int value, string name)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, 1, name);
        return value;
    }

    /// <summary>Every so many weeks, counted both ways from an anchor date.</summary>
    /// <param name="Weeks">1 or more.</param>
    /// <param name="Anchor">A date on which it fell or falls.</param>
    public sealed record EveryWeeks(int Weeks, LocalDate Anchor) : Schedule
    {
        /// <summary>1 or more.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is below 1.</exception>
        public int Weeks { get; init => field = AtLeastOne(value, nameof(Weeks)); } = AtLeastOne(Weeks, nameof(Weeks));
    }

    /// <summary>Twice a month, on two days of the month; once where both are the same date.</summary>
    public sealed record TwiceMonthly(MonthDay First, MonthDay Second) : Schedule;

    /// <summary>Once a month, on a day of the month.</summary>
    public sealed record Monthly(MonthDay Day) : Schedule;

    /// <summary>Every so many months, counted both ways from a date whose day of the month it keeps.</summary>
    /// <param name="Months">1 or more; 3 for a quarter, 12 for a year.</param>
    /// <param name="Anchor">A date on which it fell or falls.</param>
    public sealed record EveryMonths(int Months, LocalDate Anchor) : Schedule
    {
        /// <summary>1 or more.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is below 1.</exception>
        public int Months { get; init => field = AtLeastOne(value, nameof(Months)); } = AtLeastOne(Months, nameof(Months));
    }

    /// <summary>On dates typed in, and no others.</summary>
    /// <param name="Dates">In any order; doubles count once.</param>
    public sealed record OnDates(ImmutableArray<LocalDate> Dates) : Schedule;
}
