using System.Collections.Immutable;
using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>From a payday to the day before the next.</summary>
/// <param name="First">The payday.</param>
/// <param name="Last">The day before the next payday, not before <paramref name="First"/>.</param>
public readonly record struct PayPeriod(LocalDate First, LocalDate Last)
{
    /// <summary>Whether a date lies in the period, both ends included.</summary>
    public bool Contains(LocalDate date) => First <= date && date <= Last;

    /// <summary>The dates of the period that are the given weekday, in order; there may be none.</summary>
    public ImmutableArray<LocalDate> FillDays(IsoDayOfWeek fillDay)
    {
        var days = ImmutableArray.CreateBuilder<LocalDate>();
        LocalDate first = First.DayOfWeek == fillDay ? First : First.Next(fillDay);
        for (LocalDate day = first; day <= Last; day = day.PlusWeeks(1))
        {
            days.Add(day);
        }

        return days.ToImmutable();
    }
}
