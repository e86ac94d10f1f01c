using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>One pay of one source: when it is there, the date its schedule gives, which calendar month it is for, and whether that month has its usual count already.</summary>
internal readonly record struct SourcePay(LocalDate Date, LocalDate Scheduled, YearMonth Month, bool IsExtra);

/// <summary>The pays of one source, told apart into usual and extra ones.</summary>
/// <remarks>
/// A rhythm of weeks knows no months: its pays belong to the month in which they are paid, and those beyond the
/// month's usual count are extra. Any other schedule pays for the month of its scheduled date, and never more often
/// than is usual: a wage for 1 August that is there on 31 July, the 1st being a Saturday, is not a second wage for July.
/// </remarks>
internal static class SourcePays
{
    /// <summary>The pays that are there in a window, both ends included, in order.</summary>
    public static IEnumerable<SourcePay> Paid(IncomeSource source, BankHolidays holidays, LocalDate from, LocalDate to)
    {
        // The count of a month starts at its first, even when the window does not.
        bool counts = source.Schedule is Schedule.EveryWeeks;
        LocalDate first = counts ? from.With(DateAdjusters.StartOfMonth) : from;
        YearMonth month = first.ToYearMonth();
        int inMonth = 0;
        foreach (Occurrence pay in Occurrences.Between(source.Schedule, source.Shift, holidays, first, to, source.Until))
        {
            YearMonth paid = pay.Date.ToYearMonth();
            inMonth = paid == month ? inMonth + 1 : 1;
            month = paid;
            if (pay.Date >= from)
            {
                yield return counts
                    ? new SourcePay(pay.Date, pay.Scheduled, paid, inMonth > UsualCount((Schedule.EveryWeeks)source.Schedule))
                    : new SourcePay(pay.Date, pay.Scheduled, pay.Scheduled.ToYearMonth(), IsExtra: false);
            }
        }
    }

    /// <summary>The pays that are for a calendar month, in order; a moved one may be there in a neighbouring month.</summary>
    public static IEnumerable<SourcePay> For(IncomeSource source, BankHolidays holidays, YearMonth month)
    {
        DateInterval days = month.ToDateInterval();
        if (source.Schedule is Schedule.EveryWeeks)
        {
            return Paid(source, holidays, days.Start, days.End);
        }

        LocalDate end = source.Until < days.End ? source.Until.Value : days.End;
        return ScheduledDates.Between(source.Schedule, holidays, days.Start, end)
            .Select(date => new SourcePay(holidays.Shift(date, source.Shift), date, month, IsExtra: false));
    }

    // Every month has at least 28 days, so this is what the shortest of them surely holds.
    private static int UsualCount(Schedule.EveryWeeks weeks) => Math.Max(1, 4 / weeks.Weeks);
}
