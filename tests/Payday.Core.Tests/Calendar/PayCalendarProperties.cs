using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;

namespace Payday.Core.Tests.Calendar;

public class PayCalendarProperties
{
    private static readonly Gen<LocalDate> SomeDate = Gen.Int[0, 3000].Select(new LocalDate(2023, 1, 1).PlusDays);

    private static readonly Gen<MonthDay> SomeDay = Gen.OneOf<MonthDay>(
        Gen.Int[1, 31].Select(day => (MonthDay)new MonthDay.Numbered(day)),
        Gen.Const((MonthDay)new MonthDay.Last()),
        Gen.Const((MonthDay)new MonthDay.LastWorkingDay()),
        Gen.Select(Gen.Int[1, 5], Gen.Int[1, 7], (nth, day) => (MonthDay)new MonthDay.NthWeekday(nth, (IsoDayOfWeek)day)));

    private static readonly Gen<Schedule> SomeSchedule = Gen.OneOf<Schedule>(
        Gen.Select(Gen.Int[1, 9], SomeDate, (weeks, anchor) => (Schedule)new Schedule.EveryWeeks(weeks, anchor)),
        Gen.Select(SomeDay, SomeDay, (one, other) => (Schedule)new Schedule.TwiceMonthly(one, other)),
        SomeDay.Select(day => (Schedule)new Schedule.Monthly(day)),
        Gen.Select(Gen.Int[1, 14], SomeDate, (months, anchor) => (Schedule)new Schedule.EveryMonths(months, anchor)),
        SomeDate.Array[0, 30].Select(dates => (Schedule)new Schedule.OnDates([.. dates])));

    private static readonly Gen<Shift> SomeShift = Gen.Enum<Shift>();

    private static readonly Gen<BankHolidays> SomeHolidays = Gen.Select(
        Gen.Enum<HolidaySet>(), SomeDate.Array[0, 40], (set, closed) => BankHolidays.From(new HolidayRules(set, [.. closed])));

    private static readonly Gen<IncomeSource[]> SomeSources = Gen.Select(SomeSchedule, SomeShift, SomeDate.Nullable()).Array[1, 3]
        .Select(sources => sources
            .Select((source, i) => Dates.Source(source.Item1, source.Item2, "source" + (char)('a' + i), source.Item3))
            .ToArray());

    private static readonly Gen<(LocalDate From, LocalDate To)> SomeWindow =
        Gen.Select(SomeDate, Gen.Int[0, 400], (from, days) => (from, from.PlusDays(days)));

    [Fact]
    public void Paydays_Always_AreOrderedUniqueAndInTheWindow() =>
        Gen.Select(SomeSources, SomeHolidays, SomeWindow).Sample(
            (sources, holidays, window) =>
            {
                LocalDate[] dates = [.. PayCalendar.Paydays(sources, holidays, window.From, window.To).Select(payday => payday.Date)];
                return dates.SequenceEqual(dates.Distinct().Order())
                    && dates.All(date => window.From <= date && date <= window.To);
            },
            iter: 500);

    [Fact]
    public void Paydays_ShiftedSources_NeverPayOnAClosedDay() =>
        Gen.Select(SomeSchedule, SomeHolidays, SomeWindow, Gen.Bool).Sample(
            (schedule, holidays, window, before) =>
                PayCalendar.Paydays([Dates.Source(schedule, before ? Shift.Before : Shift.After)], holidays, window.From, window.To)
                    .All(payday => holidays.IsWorkingDay(payday.Date)),
            iter: 500);

    [Fact]
    public void Paydays_WindowCutInTwo_AreThoseOfTheWhole() =>
        Gen.Select(SomeSources, SomeHolidays, SomeWindow, Gen.Int[0, 400]).Sample(
            (sources, holidays, window, days) =>
            {
                LocalDate cut = LocalDate.Min(window.To, window.From.PlusDays(days));
                return Written(PayCalendar.Paydays(sources, holidays, window.From, window.To)).SequenceEqual(
                [
                    .. Written(PayCalendar.Paydays(sources, holidays, window.From, cut)),
                    .. Written(PayCalendar.Paydays(sources, holidays, cut.PlusDays(1), window.To)),
                ]);
            },
            iter: 500);

    [Fact]
    public void Between_Always_ShiftsEachScheduledDateOfAWiderWindow() =>
        Gen.Select(SomeSchedule, SomeShift, SomeHolidays, SomeWindow).Sample(
            (schedule, shift, holidays, window) =>
                Occurrences.Between(schedule, shift, holidays, window.From, window.To).SequenceEqual(
                    ScheduledDates.Between(schedule, holidays, window.From.PlusDays(-90), window.To.PlusDays(90))
                        .Select(date => new Occurrence(date, holidays.Shift(date, shift)))
                        .Where(occurrence => window.From <= occurrence.Date && occurrence.Date <= window.To)),
            iter: 500);

    [Fact]
    public void OfMonth_Always_UsualOnesAreTheCalendarsNotExtraOnes() =>
        Gen.Select(SomeSources, SomeHolidays, SomeDate).Sample(
            (sources, holidays, date) =>
            {
                MonthPaydays month = PayCalendar.OfMonth(sources, holidays, date.ToYearMonth());
                return month.Usual.All(month.All.Contains)
                    && month.Usual.All(day => !PayCalendar.Paydays(sources, holidays, day, day).Single().IsExtra);
            },
            iter: 500);

    [Fact]
    public void Known_AskedForWindowsInAnyOrder_AreThoseOfTheCalendar() =>
        Gen.Select(SomeSources, Gen.Enum<HolidaySet>(), SomeDate.Array[0, 40], SomeWindow.Array[1, 6]).Sample(
            (sources, set, closed, windows) =>
            {
                var rules = new HolidayRules(set, [.. closed]);
                var known = new KnownPaydays([.. sources], rules);
                var holidays = BankHolidays.From(rules);
                return windows.All(window =>
                    Written(known.Between(window.From, window.To)).SequenceEqual(Written(PayCalendar.Paydays(sources, holidays, window.From, window.To)))
                    && known.Next(window.From)?.Date == PayCalendar.Next(sources, holidays, window.From)?.Date
                    && known.MonthsOf(window.To).Select(Written).SequenceEqual(PayCalendar.MonthsOf(sources, holidays, window.To).Select(Written))
                    && Written(known.OfMonth(window.To.ToYearMonth())) == Written(PayCalendar.OfMonth(sources, holidays, window.To.ToYearMonth())));
            },
            iter: 500);

    [Fact]
    public void KnownExpected_OfAnyPayday_IsTheSumOverItsSources() =>
        Gen.Select(SomeSources, SomeWindow, Gen.Int[1, 9_999].Array[3]).Sample(
            (sources, window, amounts) =>
            {
                ImmutableArray<IncomeSource> paid = [.. sources.Select((source, i) => source with { Expected = Money.FromMinorUnits(amounts[i], source.Expected.Currency) })];
                var known = new KnownPaydays(paid, HolidayRules.None);
                return known.Between(window.From, window.To).All(payday =>
                    known.Expected(payday, paid[0].Expected.Currency) == Money.Sum(paid.Select(payday.Expected), paid[0].Expected.Currency));
            },
            iter: 500);

    private static string Written(MonthPaydays month) => $"{month.Month}: {string.Join(' ', month.Usual)} of {string.Join(' ', month.All)}";

    private static IEnumerable<string> Written(ImmutableArray<ScheduledPayday> paydays) =>
        paydays.Select(payday => $"{payday.Date} {string.Join('+', payday.Sources)} {payday.IsExtra}");
}
