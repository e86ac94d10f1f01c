using NodaTime;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Routines;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Routines;

public class OddPeriodTests
{
    [Fact]
    public void Of_OrdinaryPayday_SaysNothing() => Assert.Empty(Odd(Book.Begin(House), Friday6March));

    [Fact]
    public void Of_MonthOfFiveFillDays_SaysSo() => Assert.Contains(
        new OddPeriod(OddKind.FillDays, "5 fill days instead of 4: pots by the week get 5 weeks, and the others are filled once."),
        Odd(Book.Begin(Monthly(Shift.None)), new(2026, 5, 1)));

    // Three fortnightly paydays: 31 July 2026 (the calendar of the check values).
    [Fact]
    public void Of_ThirdFortnightlyPayday_SaysSo()
    {
        Household household = House with { Sources = [House.Sources[0] with { Schedule = new Schedule.EveryWeeks(2, new(2026, 1, 2)) }] };
        Assert.Contains(
            new OddPeriod(OddKind.Extra, "Payday 3 of July 2026, one more than is usual: pots filled by the month get only what they missed, so more is left for the surplus."),
            Odd(Book.Begin(household), new(2026, 7, 31)));
    }

    [Fact]
    public void Of_PaydayNotClosed_SaysSo()
    {
        Assert.Contains(
            new OddPeriod(OddKind.Missed, "The payday of Fri 20 Mar was not closed: close it first, or enter its pay here as a one-off."),
            Odd(Closed, new(2026, 4, 3)));
        Assert.Contains("2 paydays since Fri 20 Mar", Odd(Closed, new(2026, 4, 17))[0].Sentence, StringComparison.Ordinal);
    }

    // 1 August 2026 is a Saturday.
    [Fact]
    public void Of_EarlyPay_SaysHowLongItHasToLast() => Assert.Contains(
        new OddPeriod(OddKind.Moved, "Wage comes on Fri 31 Jul instead of Sat 1 Aug: this payday has to last 32 days, to Mon 31 Aug."),
        Odd(Book.Begin(Monthly(Shift.Before)), new(2026, 7, 31)));

    [Fact]
    public void Of_FillDayOnAPayday_SaysSoWhereItIsNotUsual() => Assert.Contains(
        new OddPeriod(OddKind.FillOnPayday, "The payday is a fill day this time: fetch the notes before the wallet is filled."),
        Odd(Book.Begin(Monthly(Shift.None)), new(2026, 5, 1)));

    [Fact]
    public void Of_TwoPaydaysInOneWeek_SaysSo()
    {
        Household household = House with
        {
            Sources = [.. House.Sources, new IncomeSource(new SourceId("rent"), "Lodger", new Schedule.Monthly(new MonthDay.Numbered(8)), Shift.None, Usd(100))],
        };
        OddPeriod[] odd = [.. Odd(Book.Begin(household), Friday6March)];
        Assert.Contains(
            new OddPeriod(OddKind.Short, "The next payday is Sun 8 Mar already: this one has to last 2 days, and what falls due later is left to that one."), odd);
        Assert.Contains(odd, one => one.Kind == OddKind.FillDays && one.Sentence.StartsWith("1 fill day instead of", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_NoFillDay_SaysSo()
    {
        Household household = House with
        {
            Sources = [.. House.Sources, new IncomeSource(new SourceId("rent"), "Lodger", new Schedule.Monthly(new MonthDay.Numbered(17)), Shift.None, Usd(100))],
        };
        Assert.Contains(
            Odd(Book.Begin(household), new(2026, 3, 17)),
            one => one.Sentence == "No Friday before the next payday: pots by the week get nothing, and the others are filled on the payday.");
    }

    [Fact]
    public void Of_TurnOfTheYear_SaysWhereTheWeekCounts()
    {
        Book book = Book.Begin(House);
        Assert.Contains(
            new OddPeriod(OddKind.YearEnd, "The week of Fri 31 Dec ends in 2028: its cash is fetched this year, and its count falls in the next."),
            Odd(book, new(2027, 12, 24)));
        Assert.Contains(
            new OddPeriod(OddKind.YearStart, "The first payday of 2028: the days of the year before it have their cash from Fri 24 Dec."),
            Odd(book, new(2028, 1, 7)));
    }

    private static OddPeriod[] Odd(Book book, LocalDate payday) => [.. OddPeriods.Of(Routine.Plan(book, new RoutineDraft(payday)).Value!)];

    private static Household Monthly(Shift shift) => House with
    {
        Sources = [House.Sources[0] with { Schedule = new Schedule.Monthly(new MonthDay.Numbered(1)), Shift = shift }],
    };
}
