using NodaTime;
using Payday.Core.Calendar;
using static Payday.Core.Tests.Calendar.Dates;

namespace Payday.Core.Tests.Calendar;

public class OccurrencesTests
{
    // Our own rule, and where it differs from RFC 5545 3.3.10: that skips a day a month doesn't have, which
    // would leave 7 of the 12 months.
    [Fact]
    public void Between_MonthlyOnThe31st_MeansTheLastDayOfShorterMonths() =>
        Assert.Equal(
            OfYear(2026, "01-31 02-28 03-31 04-30 05-31 06-30 07-31 08-31 09-30 10-31 11-30 12-31"),
            DatesOf(MonthlyOn(31), "2026-01-01", "2026-12-31"));

    [Fact]
    public void Between_LastDay_MindsLeapYears() =>
        Assert.Equal(
            All("2028-01-31 2028-02-29 2028-03-31"),
            DatesOf(new Schedule.Monthly(new MonthDay.Last()), "2028-01-01", "2028-03-31"));

    // Last weekdays of 2026: npm rrule 2.8.1.
    [Fact]
    public void Between_LastWorkingDayOf2026_IsTheLastWeekday() =>
        Assert.Equal(
            OfYear(2026, "01-30 02-27 03-31 04-30 05-29 06-30 07-31 08-31 09-30 10-30 11-30 12-31"),
            DatesOf(new Schedule.Monthly(new MonthDay.LastWorkingDay()), "2026-01-01", "2026-12-31"));

    [Fact]
    public void In_LastWorkingDay_MindsBankHolidays()
    {
        // 31 August 2026 is the summer bank holiday; on 31 December 2027 the US observe New Year's Day of 2028.
        Assert.Equal(Date("2026-08-28"), new MonthDay.LastWorkingDay().In(new YearMonth(2026, 8), EnglandAndWales));
        Assert.Equal(Date("2027-12-30"), new MonthDay.LastWorkingDay().In(new YearMonth(2027, 12), UnitedStates));
    }

    // From the weekdays of 2026 and the published bank holidays: 1 January is one, 2 January is a Friday; 1 May is a Friday; 1 August a Saturday.
    [Fact]
    public void In_FirstWorkingDay_MindsWeekendsAndBankHolidays()
    {
        Assert.Equal(Date("2026-01-02"), new MonthDay.FirstWorkingDay().In(new YearMonth(2026, 1), EnglandAndWales));
        Assert.Equal(Date("2026-05-01"), new MonthDay.FirstWorkingDay().In(new YearMonth(2026, 5), EnglandAndWales));
        Assert.Equal(Date("2026-08-03"), new MonthDay.FirstWorkingDay().In(new YearMonth(2026, 8), EnglandAndWales));

        // New Year's Day of 2028 is a Saturday, observed on Monday the 3rd in England and Wales, on 31 December in the US.
        Assert.Equal(Date("2028-01-04"), new MonthDay.FirstWorkingDay().In(new YearMonth(2028, 1), EnglandAndWales));
        Assert.Equal(Date("2028-01-03"), new MonthDay.FirstWorkingDay().In(new YearMonth(2028, 1), UnitedStates));
    }

    [Fact]
    public void In_MonthClosedThroughout_FirstWorkingDayIsItsFirstDay()
    {
        BankHolidays shut = BankHolidays.From(
            new HolidayRules(HolidaySet.None, [.. Enumerable.Range(1, 28).Select(day => new LocalDate(2026, 2, day))]));

        Assert.Equal(Date("2026-02-01"), new MonthDay.FirstWorkingDay().In(new YearMonth(2026, 2), shut));
    }

    [Fact]
    public void In_MonthClosedThroughout_LastWorkingDayIsItsLastDay()
    {
        BankHolidays shut = BankHolidays.From(
            new HolidayRules(HolidaySet.None, [.. Enumerable.Range(1, 28).Select(day => new LocalDate(2026, 2, day))]));

        Assert.Equal(Date("2026-02-28"), new MonthDay.LastWorkingDay().In(new YearMonth(2026, 2), shut));
    }

    [Theory]
    [InlineData(1, IsoDayOfWeek.Friday, "2026-05-01")]
    [InlineData(2, IsoDayOfWeek.Friday, "2026-05-08")]
    [InlineData(5, IsoDayOfWeek.Friday, "2026-05-29")]
    [InlineData(1, IsoDayOfWeek.Thursday, "2026-05-07")]
    [InlineData(5, IsoDayOfWeek.Thursday, "2026-05-28")] // only four: the last
    [InlineData(5, IsoDayOfWeek.Sunday, "2026-05-31")]
    public void In_NthWeekday_CountsFromTheFirst(int nth, IsoDayOfWeek weekday, string expected) =>
        Assert.Equal(Date(expected), new MonthDay.NthWeekday(nth, weekday).In(new YearMonth(2026, 5), BankHolidays.None));

    [Fact]
    public void Between_EveryWeeks_CountsBothWaysFromTheAnchor() =>
        Assert.Equal(
            All("2026-01-02 2026-01-23 2026-02-13"),
            DatesOf(new Schedule.EveryWeeks(3, Date("2026-01-23")), "2026-01-02", "2026-03-05"));

    [Fact]
    public void Between_EveryMonths_KeepsTheDayOfTheAnchorBothWays()
    {
        Assert.Equal(
            All("2025-12-31 2026-01-31 2026-02-28 2026-03-31 2026-04-30"),
            DatesOf(new Schedule.EveryMonths(1, Date("2026-01-31")), "2025-12-01", "2026-04-30"));
        Assert.Equal(
            All("2025-08-31 2025-11-30 2026-02-28 2026-05-31"),
            DatesOf(new Schedule.EveryMonths(3, Date("2026-05-31")), "2025-06-01", "2026-08-30"));
        Assert.Equal(
            All("2023-02-28 2024-02-29"),
            DatesOf(new Schedule.EveryMonths(12, Date("2020-02-29")), "2023-01-01", "2024-12-31"));
    }

    [Fact]
    public void Between_TwiceMonthlyInAnyOrder_IsOrderedAndOnceWhereBothMeet()
    {
        var days = new Schedule.TwiceMonthly(new MonthDay.Last(), new MonthDay.Numbered(15));
        Assert.Equal(All("2026-02-15 2026-02-28 2026-03-15"), DatesOf(days, "2026-02-01", "2026-03-30"));

        var same = new Schedule.TwiceMonthly(new MonthDay.Numbered(30), new MonthDay.Last());
        Assert.Equal(All("2026-02-28 2026-03-30 2026-03-31"), DatesOf(same, "2026-02-01", "2026-03-31"));
    }

    [Fact]
    public void Between_TypedDates_AreOrderedAndOnce()
    {
        Assert.Equal(
            All("2026-01-05 2026-02-01"),
            DatesOf(new Schedule.OnDates([.. All("2026-02-01 2026-01-05 2026-02-01 2027-01-01")]), "2026-01-01", "2026-12-31"));
        Assert.Empty(DatesOf(new Schedule.OnDates(default), "2026-01-01", "2026-12-31"));
    }

    [Theory] // 1 August 2026 is a Saturday.
    [InlineData(Shift.Before, "2026-07-31", "2026-07-31", "2026-07-31")]
    [InlineData(Shift.Before, "2026-08-01", "2026-08-31", "")]
    [InlineData(Shift.After, "2026-08-03", "2026-08-31", "2026-08-03")]
    [InlineData(Shift.After, "2026-07-02", "2026-08-02", "")]
    [InlineData(Shift.None, "2026-08-01", "2026-08-01", "2026-08-01")]
    public void Between_DateMovedOverTheEdge_CountsWhereItLands(Shift shift, string from, string to, string expected) =>
        Assert.Equal(All(expected), DatesOf(MonthlyOn(1), from, to, shift));

    [Fact]
    public void Between_DateMovedOverALongClosure_IsFound()
    {
        BankHolidays shut = Closed("2026-08-03 2026-08-04 2026-08-05 2026-08-06 2026-08-07");

        Occurrence found = Assert.Single(
            Occurrences.Between(MonthlyOn(1), Shift.After, shut, Date("2026-08-10"), Date("2026-08-10")));

        Assert.Equal(new Occurrence(Date("2026-08-01"), Date("2026-08-10")), found);
    }

    [Theory] // 31 January 2026 is a Saturday.
    [InlineData("2026-01-31", "2026-02-02")]
    [InlineData("2026-01-30", "")]
    public void Between_Until_IsHeldAgainstTheScheduledDate(string until, string expected) =>
        Assert.Equal(
            All(expected),
            Occurrences.Between(
                MonthlyOn(31), Shift.After, BankHolidays.None, Date("2026-01-15"), Date("2026-03-15"), Date(until))
                .Select(occurrence => occurrence.Date));

    [Fact]
    public void Between_EndsOfTheCalendar_AreReached()
    {
        Schedule[] schedules = [Weekly("2026-01-02"), MonthlyOn(31), new Schedule.EveryMonths(int.MaxValue, Date("2026-01-02"))];
        foreach (Schedule schedule in schedules)
        {
            Assert.NotNull(Occurrences.Between(
                schedule, Shift.Before, UnitedStates, LocalDate.MaxIsoValue.PlusDays(-40), LocalDate.MaxIsoValue).ToArray());
            Assert.NotNull(Occurrences.Between(
                schedule, Shift.After, UnitedStates, LocalDate.MinIsoValue, LocalDate.MinIsoValue.PlusDays(40)).ToArray());
        }
    }

    [Fact]
    public void Between_WindowThatEndsBeforeItBegins_IsEmpty() =>
        Assert.Empty(DatesOf(MonthlyOn(1), "2026-03-31", "2026-03-01"));

    [Fact]
    public void Schedule_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Schedule.EveryWeeks(0, Date("2026-01-02")));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Schedule.EveryMonths(0, Date("2026-01-02")));
        Assert.Throws<ArgumentOutOfRangeException>(() => new MonthDay.Numbered(32));
        Assert.Throws<ArgumentOutOfRangeException>(() => new MonthDay.Numbered(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new MonthDay.NthWeekday(6, IsoDayOfWeek.Monday));
        Assert.Throws<ArgumentOutOfRangeException>(() => new MonthDay.NthWeekday(1, IsoDayOfWeek.None));
    }

    private static LocalDate[] DatesOf(Schedule schedule, string from, string to, Shift shift = Shift.None) =>
        [.. Occurrences.Between(schedule, shift, BankHolidays.None, Date(from), Date(to)).Select(occurrence => occurrence.Date)];
}
