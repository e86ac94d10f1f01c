using System.Collections.Immutable;
using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>The paydays of a household: those of all its sources, merged.</summary>
public static class PayCalendar
{
    /// <summary>The paydays in a window.</summary>
    /// <param name="sources">Who pays, in household order.</param>
    /// <param name="holidays">The bank holidays.</param>
    /// <param name="from">The first date of the window.</param>
    /// <param name="to">The last date of the window; before <paramref name="from"/> there are no paydays.</param>
    /// <returns>
    /// In order, each date once, both ends included. Which are extra does not depend on where the window begins.
    /// </returns>
    public static ImmutableArray<ScheduledPayday> Paydays(
        IEnumerable<IncomeSource> sources, BankHolidays holidays, LocalDate from, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(sources);
        ArgumentNullException.ThrowIfNull(holidays);
        return
        [
            .. sources
                .SelectMany(source => SourcePays.Paid(source, holidays, from, to).Select(pay => (source.Id, Pay: pay)))
                .GroupBy(paid => paid.Pay.Date)
                .OrderBy(day => day.Key)
                .Select(day => new ScheduledPayday(
                    day.Key,
                    [.. day.Select(paid => paid.Id).Distinct()],
                    day.All(paid => paid.Pay.IsExtra)) { Pays = [.. day.Select(paid => new ScheduledPay(paid.Id, paid.Pay.Scheduled))] }),
        ];
    }

    /// <summary>The first payday after a date, or null where no source pays any more.</summary>
    public static ScheduledPayday? Next(IEnumerable<IncomeSource> sources, BankHolidays holidays, LocalDate after) =>
        after == LocalDate.MaxIsoValue
            ? null
            : Spans(LocalDate.MaxIsoValue.Year - after.Year)
                .Select(years => years is { } span ? after.PlusYears(span) : LocalDate.MaxIsoValue)
                .Select(to => Paydays(sources, holidays, after.PlusDays(1), to).FirstOrDefault())
                .FirstOrDefault(payday => payday is not null);

    /// <summary>The paydays that carry what is needed in a calendar month, such as a pot's monthly amount.</summary>
    /// <returns>
    /// The usual ones and all of them. A payday is usual where any source that pays then is not extra.
    /// </returns>
    public static MonthPaydays OfMonth(IEnumerable<IncomeSource> sources, BankHolidays holidays, YearMonth month)
    {
        ArgumentNullException.ThrowIfNull(sources);
        ArgumentNullException.ThrowIfNull(holidays);
        SourcePay[] pays = [.. sources.SelectMany(source => SourcePays.For(source, holidays, month)).OrderBy(pay => pay.Date)];
        return new MonthPaydays(
            month,
            [.. pays.Where(pay => !pay.IsExtra).Select(pay => pay.Date).Distinct()],
            [.. pays.Select(pay => pay.Date).Distinct()]);
    }

    /// <summary>The calendar months that a payday carries a part of.</summary>
    /// <returns>
    /// Its own month as a rule; the neighbour where a pay was moved over the month's edge; both where two pays for
    /// different months meet; none for a date that is no payday.
    /// </returns>
    public static ImmutableArray<MonthPaydays> MonthsOf(IEnumerable<IncomeSource> sources, BankHolidays holidays, LocalDate payday)
    {
        ImmutableArray<IncomeSource> known = [.. sources];
        return MonthsOf(month => OfMonth(known, holidays, month), payday);
    }

    /// <summary>The same, of months that may be known already.</summary>
    internal static ImmutableArray<MonthPaydays> MonthsOf(Func<YearMonth, MonthPaydays> ofMonth, LocalDate payday)
    {
        YearMonth own = payday.ToYearMonth();
        return [.. Enumerable.Range(-1, 3).Select(step => ofMonth(own.PlusMonths(step))).Where(month => month.All.Contains(payday))];
    }

    // A short span finds the pay of most schedules; a long one is searched only where pay is rare, or has ended, in
    // the shorter ones, so it never holds many more paydays than the answer needs.
    private static IEnumerable<int?> Spans(int yearsLeft) =>
        new int?[] { 1, 10, 100, 1000 }.Where(years => years < yearsLeft).Append(null);
}
