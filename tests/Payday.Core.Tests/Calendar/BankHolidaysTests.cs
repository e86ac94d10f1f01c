using NodaTime;
using Payday.Core.Calendar;
using static Payday.Core.Tests.Calendar.Dates;

namespace Payday.Core.Tests.Calendar;

public class BankHolidaysTests
{
    // 5 U.S.C. 6103, Saturday observed on Friday and Sunday on Monday (US courts); the observed dates 2026-07-03,
    // 2027-06-18, 07-05, 12-24 and 12-31 as npm date-holidays 3.37.0 has them; the rest follow from the statute.
    [Theory]
    [InlineData(2026, "01-01 01-19 02-16 05-25 06-19 07-03 09-07 10-12 11-11 11-26 12-25")]
    [InlineData(2027, "01-01 01-18 02-15 05-31 06-18 07-05 09-06 10-11 11-11 11-25 12-24 12-31")]
    [InlineData(2028, "01-17 02-21 05-29 06-19 07-04 09-04 10-09 11-10 11-23 12-25")]
    public void InYear_UnitedStates_IsAsObserved(int year, string expected) =>
        Assert.Equal(OfYear(year, expected), UnitedStates.InYear(year));

    // 2026 and the substitutes 12-27 and 12-28 of 2027: npm date-holidays 3.37.0. The rest of 2027 follows from
    // the rules (Easter 28 March; first and last Mondays).
    [Theory]
    [InlineData(2026, "01-01 04-03 04-06 05-04 05-25 08-31 12-25 12-28")]
    [InlineData(2027, "01-01 03-26 03-29 05-03 05-31 08-30 12-27 12-28")]
    public void InYear_EnglandAndWales_HasSubstitutes(int year, string expected) =>
        Assert.Equal(OfYear(year, expected), EnglandAndWales.InYear(year));

    // ECB, 14 December 2000: 1 January, Good Friday, Easter Monday, 1 May, 25 and 26 December, no substitutes.
    // Easter Sundays from memory: 23 April 2000, 31 March 2024, 20 April 2025, 5 April 2026, 28 March 2027, 25 April 2038.
    [Theory]
    [InlineData(2000, "04-23")]
    [InlineData(2024, "03-31")]
    [InlineData(2025, "04-20")]
    [InlineData(2026, "04-05")]
    [InlineData(2027, "03-28")]
    [InlineData(2038, "04-25")]
    public void InYear_Target_IsItsSixDays(int year, string easter)
    {
        LocalDate sunday = OfYear(year, easter).Single();

        Assert.Equal(
            [
                new LocalDate(year, 1, 1), sunday.PlusDays(-2), sunday.PlusDays(1), new LocalDate(year, 5, 1),
                new LocalDate(year, 12, 25), new LocalDate(year, 12, 26),
            ],
            Target.InYear(year));
    }

    [Fact]
    public void InYear_OwnDates_AreAddedInOrderOnce()
    {
        BankHolidays holidays = BankHolidays.From(
            new HolidayRules(HolidaySet.Target, [.. All("2026-12-26 2026-08-03 2025-08-04")]));

        Assert.Equal(OfYear(2026, "01-01 04-03 04-06 05-01 08-03 12-25 12-26"), holidays.InYear(2026));
        Assert.False(holidays.IsWorkingDay(Date("2026-08-03")));
    }

    [Theory]
    [InlineData("2026-07-02", true)]
    [InlineData("2026-07-03", false)] // Independence Day, observed
    [InlineData("2026-07-04", false)] // Saturday
    [InlineData("2026-07-05", false)] // Sunday
    [InlineData("2026-07-06", true)]
    [InlineData("2027-12-31", false)] // New Year's Day of 2028, observed
    public void IsWorkingDay_AroundHolidays_IsRight(string date, bool expected) =>
        Assert.Equal(expected, UnitedStates.IsWorkingDay(Date(date)));

    [Theory]
    [InlineData("2026-04-04", Shift.None, "2026-04-04")]
    [InlineData("2026-04-04", Shift.Before, "2026-04-02")] // over Good Friday
    [InlineData("2026-04-04", Shift.After, "2026-04-07")] // over Easter Monday
    [InlineData("2026-04-02", Shift.Before, "2026-04-02")]
    [InlineData("2026-04-07", Shift.After, "2026-04-07")]
    public void Shift_OverEaster_FindsTheWorkingDay(string date, Shift shift, string expected) =>
        Assert.Equal(Date(expected), EnglandAndWales.Shift(Date(date), shift));

    [Fact]
    public void IsWorkingDay_OutsideTheYearsOfTheSets_KnowsWeekendsOnly()
    {
        foreach (BankHolidays holidays in (BankHolidays[])[UnitedStates, EnglandAndWales, Target, BankHolidays.None])
        {
            Assert.Equal(LocalDate.MinIsoValue.DayOfWeek < IsoDayOfWeek.Saturday, holidays.IsWorkingDay(LocalDate.MinIsoValue));
            Assert.True(holidays.IsWorkingDay(LocalDate.MaxIsoValue));
        }
    }

    [Fact]
    public void From_UnknownSet_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BankHolidays.From(new HolidayRules((HolidaySet)9, [])));
}
