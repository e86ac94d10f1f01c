using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Calendar;

namespace Payday.Core.Debts;

/// <summary>The day of a month on which a debt's interest is charged.</summary>
/// <remarks>
/// Rule (design, section 5.9): once a calendar month, on the first due date of that month. A month without a due date, as
/// where a debt is paid by quarters, is charged on its last day, so that no month is left out (common practice, no source).
/// </remarks>
internal static class InterestDays
{
    /// <summary>The due dates of a month.</summary>
    public static ImmutableArray<Occurrence> DuesIn(Schedule schedule, BankHolidays holidays, YearMonth month)
    {
        DateInterval days = month.ToDateInterval();
        return Occurrences.Between(schedule, Shift.None, holidays, days.Start, days.End);
    }

    /// <summary>The day on which a month's interest is charged.</summary>
    public static LocalDate In(Schedule schedule, BankHolidays holidays, YearMonth month) =>
        DuesIn(schedule, holidays, month) is [var first, ..] ? first.Date : month.ToDateInterval().End;
}
