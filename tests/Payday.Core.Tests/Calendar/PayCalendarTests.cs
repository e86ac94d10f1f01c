using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using static Payday.Core.Tests.Calendar.Dates;
using Payday.Core.Faults;

namespace Payday.Core.Tests.Calendar;

public class PayCalendarTests
{
    // Fortnightly Fridays, computed from the rule: 26 in 2025 from 01-03 with three in January and August;
    // from 2026-01-02 three in January and July; 27 in 2027 from 01-01.
    [Theory]
    [InlineData(2025, "01-03", 26, "01-31 08-29")]
    [InlineData(2026, "01-02", 26, "01-30 07-31")]
    [InlineData(2027, "01-01", 27, "01-29 07-30 12-31")]
    public void Paydays_FortnightlyFridays_HaveTheirCountAndExtras(int year, string anchor, int count, string extras)
    {
        ImmutableArray<ScheduledPayday> paydays = InYear(Source(new Schedule.EveryWeeks(2, OfYear(year, anchor).Single())), year);

        Assert.Equal(count, paydays.Length);
        Assert.Equal(OfYear(year, extras), paydays.Where(payday => payday.IsExtra).Select(payday => payday.Date));
    }

    // ISO years of 53 weeks are those with 53 Thursdays: 2015 2020 2026 2032 2037 (computed), and 71 in 400 years
    // (OEIS A249404).
    [Fact]
    public void Paydays_WeeklyThursdays_Are53InIsoYearsOf53Weeks()
    {
        IncomeSource thursdays = Source(Weekly("2026-01-01"));
        int[] years = [.. Enumerable.Range(2000, 400).Where(year => InYear(thursdays, year).Length == 53)];

        Assert.Equal([2015, 2020, 2026, 2032, 2037], years.Where(year => year is > 2010 and < 2040));
        Assert.Equal(71, years.Length);
    }

    // A weekly wage has five paydays in some months (common practice, no source).
    [Fact]
    public void Paydays_Weekly_FifthOfAMonthIsExtra() =>
        Assert.Equal(
            OfYear(2026, "01-30 05-29 07-31 10-30"),
            InYear(Source(Weekly("2026-01-02")), 2026).Where(payday => payday.IsExtra).Select(payday => payday.Date));

    [Fact]
    public void Paydays_EveryFourWeeks_SecondOfAMonthIsExtra() =>
        Assert.Equal(
            OfYear(2026, "01-30"),
            InYear(Source(new Schedule.EveryWeeks(4, Date("2026-01-02"))), 2026)
                .Where(payday => payday.IsExtra).Select(payday => payday.Date));

    [Fact]
    public void Paydays_EverySixWeeks_AreNeverExtra() =>
        Assert.DoesNotContain(
            InYear(Source(new Schedule.EveryWeeks(6, Date("2026-01-02"))), 2026), payday => payday.IsExtra);

    [Fact]
    public void Paydays_WindowFromMidMonth_StillCountsFromTheFirst()
    {
        ScheduledPayday payday = Assert.Single(
            PayCalendar.Paydays([Source(Fortnightly("2026-01-02"))], BankHolidays.None, Date("2026-01-20"), Date("2026-02-01")));

        Assert.True(payday.IsExtra);
    }

    [Fact]
    public void Paydays_FortnightlyMovedIntoTheMonthBefore_CountsWhereItIsPaid()
    {
        // 1 January 2027 is closed, so that pay is there on 31 December: the third one of the month.
        ImmutableArray<ScheduledPayday> paydays = PayCalendar.Paydays(
            [Source(Fortnightly("2027-01-01"), Shift.Before)], UnitedStates, Date("2026-12-01"), Date("2027-01-31"));

        Assert.Equal(All("2026-12-04 2026-12-18 2026-12-31 2027-01-15 2027-01-29"), paydays.Select(payday => payday.Date));
        Assert.Equal(Date("2026-12-31"), Assert.Single(paydays, payday => payday.IsExtra).Date);
    }

    [Fact]
    public void Paydays_MonthlyMovedIntoTheMonthBefore_IsNotExtra()
    {
        ImmutableArray<ScheduledPayday> paydays = PayCalendar.Paydays(
            [Source(MonthlyOn(1), Shift.Before)], BankHolidays.None, Date("2026-07-01"), Date("2026-08-31"));

        Assert.Equal(All("2026-07-01 2026-07-31"), paydays.Select(payday => payday.Date));
        Assert.DoesNotContain(paydays, payday => payday.IsExtra);
    }

    [Fact]
    public void Paydays_SeveralSources_MergeInHouseholdOrder()
    {
        ImmutableArray<ScheduledPayday> paydays = PayCalendar.Paydays(
            [
                Source(Fortnightly("2026-01-02"), id: "mill"),
                Source(new Schedule.Monthly(new MonthDay.Last()), Shift.Before, "school"),
                Source(new Schedule.OnDates([Date("2026-01-09"), Date("2026-01-16")]), id: "market"),
            ],
            BankHolidays.None,
            Date("2026-01-01"),
            Date("2026-01-31"));

        Assert.Equal(All("2026-01-02 2026-01-09 2026-01-16 2026-01-30"), paydays.Select(payday => payday.Date));
        Assert.Equal(["mill"], paydays[0].Sources.Select(source => source.Text));
        Assert.Equal(["market"], paydays[1].Sources.Select(source => source.Text));
        Assert.Equal(["mill", "market"], paydays[2].Sources.Select(source => source.Text));
        Assert.Equal(["mill", "school"], paydays[3].Sources.Select(source => source.Text));

        // The mill's third pay, but the school's only one.
        Assert.False(paydays[3].IsExtra);
    }

    [Fact]
    public void Paydays_TwoPaysOfASourceMovedToOneDay_AreOnePayday()
    {
        // 15 and 16 August 2026 are a weekend.
        var days = new Schedule.TwiceMonthly(new MonthDay.Numbered(15), new MonthDay.Numbered(16));
        ScheduledPayday payday = Assert.Single(
            PayCalendar.Paydays([Source(days, Shift.Before)], BankHolidays.None, Date("2026-08-01"), Date("2026-08-31")));

        Assert.Equal(Date("2026-08-14"), payday.Date);
        Assert.Equal(["wage"], payday.Sources.Select(source => source.Text));
    }

    [Fact]
    public void NextAndLatest_RareOrEndedPay_AreFoundOrNull()
    {
        IncomeSource[] rare = [Source(new Schedule.EveryMonths(360, Date("2026-03-31")))];
        IncomeSource[] ended = [Source(MonthlyOn(15), until: Date("2026-05-15"))];

        Assert.Equal(Date("2056-03-31"), PayCalendar.Next(rare, BankHolidays.None, Date("2026-03-31"))?.Date);
        Assert.Equal(Date("1996-03-31"), PayCalendar.Latest(rare, BankHolidays.None, Date("2026-03-30"))?.Date);
        Assert.Equal(Date("2026-05-15"), PayCalendar.Next(ended, BankHolidays.None, Date("2026-05-14"))?.Date);
        Assert.Null(PayCalendar.Next(ended, BankHolidays.None, Date("2026-05-15")));
        Assert.Equal(Date("2026-05-15"), PayCalendar.Latest(ended, BankHolidays.None, Date("2056-05-15"))?.Date);
        Assert.Null(PayCalendar.Next(ended, BankHolidays.None, LocalDate.MaxIsoValue));
        Assert.Null(PayCalendar.Next([], BankHolidays.None, Date("2026-05-15")));
    }

    [Theory]
    [InlineData("2026-01-16")]
    [InlineData("2026-01-20")]
    [InlineData("2026-01-29")]
    public void PeriodOf_AnyDateInIt_IsTheSamePeriod(string date) =>
        Assert.Equal(
            Result.Of(new PayPeriod(Date("2026-01-16"), Date("2026-01-29"))),
            PayCalendar.PeriodOf([Source(Fortnightly("2026-01-02"))], BankHolidays.None, Date(date)));

    [Theory]
    [InlineData("2026-03-20", "No payday is known after 2026-03-20; add dates to a pay schedule.")]
    [InlineData("2026-02-01", "No payday is known on or before 2026-02-01; add dates to a pay schedule.")]
    public void PeriodOf_NoPaydayKnown_SaysSoAndHowToMendIt(string date, string fault)
    {
        IncomeSource[] sources = [Source(new Schedule.OnDates([Date("2026-02-13"), Date("2026-03-13")]))];

        Assert.Equal(fault, PayCalendar.PeriodOf(sources, BankHolidays.None, Date(date)).Fault);
    }

    [Fact]
    public void OfMonth_ExtraPayday_IsInAllButNotUsual()
    {
        MonthPaydays january = PayCalendar.OfMonth([Source(Fortnightly("2026-01-02"))], BankHolidays.None, new YearMonth(2026, 1));

        Assert.Equal(All("2026-01-02 2026-01-16"), january.Usual);
        Assert.Equal(All("2026-01-02 2026-01-16 2026-01-30"), january.All);
    }

    [Fact]
    public void OfMonth_PayMovedIntoTheMonthBefore_StillCarriesItsOwnMonth()
    {
        var days = new Schedule.TwiceMonthly(new MonthDay.Numbered(1), new MonthDay.Numbered(15));
        IncomeSource[] sources = [Source(days, Shift.Before)];

        Assert.Equal(All("2026-07-01 2026-07-15"), PayCalendar.OfMonth(sources, BankHolidays.None, new YearMonth(2026, 7)).All);
        Assert.Equal(All("2026-07-31 2026-08-14"), PayCalendar.OfMonth(sources, BankHolidays.None, new YearMonth(2026, 8)).Usual);
    }

    [Fact]
    public void OfMonth_EndedSource_IsEmpty()
    {
        IncomeSource[] sources = [Source(MonthlyOn(15), until: Date("2026-05-14"))];

        Assert.Empty(PayCalendar.OfMonth(sources, BankHolidays.None, new YearMonth(2026, 5)).All);
        Assert.Single(PayCalendar.OfMonth(sources, BankHolidays.None, new YearMonth(2026, 4)).All);
    }

    private static ImmutableArray<ScheduledPayday> InYear(IncomeSource source, int year) =>
        PayCalendar.Paydays([source], BankHolidays.None, new LocalDate(year, 1, 1), new LocalDate(year, 12, 31));
}
