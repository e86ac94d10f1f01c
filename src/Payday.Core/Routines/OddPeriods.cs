using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Households;

namespace Payday.Core.Routines;

/// <summary>Says in one line each what is different about a payday this time.</summary>
/// <remarks>Usual is what more than half of the paydays of half a year before and after have.</remarks>
public sealed class OddPeriods
{
    private static readonly Period HalfAYear = Period.FromMonths(6);
    private readonly RoutinePlan plan;
    private readonly Household household;
    private readonly BankHolidays holidays;
    private readonly ImmutableArray<LocalDate> paydays;
    private readonly ImmutableArray<LocalDate> fillDays;

    private OddPeriods(RoutinePlan plan)
    {
        this.plan = plan;
        household = plan.Book.Household;
        holidays = household.Holidays;
        paydays =
        [
            .. household.Paydays.Between(plan.Period.First - HalfAYear, plan.Period.First + HalfAYear)
                .Select(payday => payday.Date),
        ];
        fillDays = plan.Period.FillDays(household.Settings.FillDay);
    }

    /// <summary>Everything that is different, what needs doing first; empty for a payday like others.</summary>
    public static ImmutableArray<OddPeriod> Of(RoutinePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var odd = new OddPeriods(plan);
        OddPeriod?[] all =
        [
            odd.Missed(), odd.Moved(), odd.Extra(), odd.FillDays(), odd.FillOnPayday(), odd.Short(), odd.YearEnd(), odd.YearStart(),
        ];
        return [.. all.OfType<OddPeriod>()];
    }

    private OddPeriod.Missed? Missed()
    {
        LocalDate[] missed = [.. household.Paydays.Between(plan.Book.OpenFrom, plan.Period.First.PlusDays(-1))
            .Select(payday => payday.Date)];
        return missed is [var first, ..] ? new OddPeriod.Missed(missed.Length, first) : null;
    }

    private OddPeriod.Moved? Moved()
    {
        (string Name, LocalDate Scheduled)[] moved =
        [
            .. from source in household.Sources
               from pay in Occurrences.Between(
                   source.Schedule, source.Shift, holidays, plan.Period.First, plan.Period.First, source.Until)
               where pay.Scheduled != pay.Date
               select (source.Name, pay.Scheduled),
        ];
        return moved is [var one, ..]
            ? new OddPeriod.Moved(one.Name, one.Scheduled, plan.Period)
            : null;
    }

    private OddPeriod.Extra? Extra()
    {
        if (!plan.Payday.IsExtra)
        {
            return null;
        }

        MonthPaydays month = household.Paydays.OfMonth(plan.Period.First.ToYearMonth());
        return new OddPeriod.Extra(month.All.IndexOf(plan.Period.First) + 1, month.Month);
    }

    private OddPeriod.FillDays? FillDays()
    {
        int usual = Periods().GroupBy(period => period.FillDays(household.Settings.FillDay).Length)
            .OrderByDescending(count => count.Count()).ThenBy(count => count.Key)
            .Select(count => count.Key)
            .FirstOrDefault(fillDays.Length);
        return fillDays.Length == usual
            ? null
            : new OddPeriod.FillDays(fillDays.Length, usual, household.Settings.FillDay);
    }

    private OddPeriod.FillOnPayday? FillOnPayday() => IsOnFillDay(plan.Period.First) && !IsUsual(IsOnFillDay)
        ? new OddPeriod.FillOnPayday()
        : null;

    private OddPeriod.Short? Short() => IsShort(plan.Period) && Periods().Count(IsShort) * 2 <= Periods().Length
        ? new OddPeriod.Short(plan.Period)
        : null;

    private OddPeriod.YearEnd? YearEnd() => fillDays.Where(week => week.Year != week.PlusDays(6).Year).Select(week => (LocalDate?)week).FirstOrDefault() is { } week
        ? new OddPeriod.YearEnd(week)
        : null;

    private OddPeriod.YearStart? YearStart() => paydays.LastOrDefault(payday => payday < plan.Period.First) is var before
        && before != default && before.Year < plan.Period.First.Year
        ? new OddPeriod.YearStart(plan.Period.First.Year, before)
        : null;

    private ImmutableArray<PayPeriod> Periods() =>
        [.. paydays.Zip(paydays.Skip(1)).Select(pair => new PayPeriod(pair.First, pair.Second.PlusDays(-1))).Where(period => period.First != plan.Period.First)];

    private bool IsUsual(Func<LocalDate, bool> holds)
    {
        LocalDate[] others = [.. paydays.Where(payday => payday != plan.Period.First)];
        return others.Count(holds) * 2 > others.Length;
    }

    private bool IsOnFillDay(LocalDate date) => date.DayOfWeek == household.Settings.FillDay;

    private static bool IsShort(PayPeriod period) => Period.DaysBetween(period.First, period.Last) + 1 < 7;
}
