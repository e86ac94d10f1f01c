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
        holidays = BankHolidays.From(household.Settings.Holidays);
        paydays =
        [
            .. PayCalendar
                .Paydays(household.Sources, holidays, plan.Period.First - HalfAYear, plan.Period.First + HalfAYear)
                .Select(payday => payday.Date),
        ];
        fillDays = plan.Period.FillDays(household.Settings.FillDay);
    }

    /// <summary>Everything that is different, what needs a hand first; empty for a payday like others.</summary>
    public static ImmutableArray<OddPeriod> Of(RoutinePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var odd = new OddPeriods(plan);
        (OddKind Kind, string? Sentence)[] all =
        [
            (OddKind.Missed, odd.Missed()), (OddKind.Moved, odd.Moved()), (OddKind.Extra, odd.Extra()),
            (OddKind.FillDays, odd.FillDays()), (OddKind.FillOnPayday, odd.FillOnPayday()), (OddKind.Short, odd.Short()),
            (OddKind.YearEnd, odd.YearEnd()), (OddKind.YearStart, odd.YearStart()),
        ];
        return [.. all.Where(one => one.Sentence is not null).Select(one => new OddPeriod(one.Kind, one.Sentence!))];
    }

    private string? Missed()
    {
        LocalDate[] missed = [.. PayCalendar
            .Paydays(household.Sources, holidays, plan.Book.OpenFrom, plan.Period.First.PlusDays(-1))
            .Select(payday => payday.Date)];
        return missed switch
        {
            [] => null,
            [var one] => $"The payday of {Day(one)} was not closed: close it first, or enter its pay here as a one-off.",
            [var first, ..] => $"{missed.Length} paydays since {Day(first)} were not closed: close them first, or enter their pay here as one-offs.",
        };
    }

    private string? Moved()
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
            ? $"{one.Name} comes on {Day(plan.Period.First)} instead of {Day(one.Scheduled)}: this payday has to last {Days()}, to {Day(plan.Period.Last)}."
            : null;
    }

    private string? Extra()
    {
        if (!plan.Payday.IsExtra)
        {
            return null;
        }

        MonthPaydays month = PayCalendar.OfMonth(household.Sources, holidays, plan.Period.First.ToYearMonth());
        return $"Payday {month.All.IndexOf(plan.Period.First) + 1} of {Month(plan.Period.First)}, one more than is usual: pots filled by the month get only what they missed, so more is left for the surplus.";
    }

    private string? FillDays()
    {
        int usual = Periods().GroupBy(period => period.FillDays(household.Settings.FillDay).Length)
            .OrderByDescending(count => count.Count()).ThenBy(count => count.Key)
            .Select(count => count.Key)
            .FirstOrDefault(fillDays.Length);
        return fillDays.Length == usual
            ? null
            : fillDays.Length switch
            {
                0 => $"No {household.Settings.FillDay} before the next payday: pots by the week get nothing, and the others are filled on the payday.",
                1 => $"1 fill day instead of {usual}: pots by the week get one week, and the others are filled as ever.",
                int days => $"{days} fill days instead of {usual}: pots by the week get {days} weeks, and the others are filled once.",
            };
    }

    private string? FillOnPayday() => IsOnFillDay(plan.Period.First) && !IsUsual(IsOnFillDay)
        ? "The payday is a fill day this time: fetch the notes before the wallet is filled."
        : null;

    private string? Short() => IsShort(plan.Period) && Periods().Count(IsShort) * 2 <= Periods().Length
        ? $"The next payday is {Day(plan.Period.Last.PlusDays(1))} already: this one has to last {Days()}, and what falls due later is left to that one."
        : null;

    private string? YearEnd() => fillDays.Where(week => week.Year != week.PlusDays(6).Year).Select(week => (LocalDate?)week).FirstOrDefault() is { } week
        ? $"The week of {Day(week)} ends in {Number(week.Year + 1)}: its cash is fetched this year, and its count falls in the next."
        : null;

    private string? YearStart() => paydays.LastOrDefault(payday => payday < plan.Period.First) is var before
        && before != default && before.Year < plan.Period.First.Year
        ? $"The first payday of {Number(plan.Period.First.Year)}: the days of the year before it have their cash from {Day(before)}."
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

    private string Days() => Period.DaysBetween(plan.Period.First, plan.Period.Last) + 1 is var days && days == 1 ? "1 day" : $"{Number(days)} days";

    private static string Day(LocalDate date) => date.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    private static string Month(LocalDate date) => date.ToString("MMMM uuuu", CultureInfo.InvariantCulture);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
