using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Outlooks;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Status;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

/// <summary>A bill, wage or pot that changes from a date on: each rule takes what holds on its own day.</summary>
public sealed class LaterAmountTests
{
    private static readonly Bill Rent = Bill("Rent", 600, new(2026, 3, 10));

    [Fact]
    public void Plan_ABillThatRises_IsDueWithWhatHoldsOnItsDay()
    {
        Book book = Book.Begin(Bare with { Bills = [Rent with { Later = From(2026, 4, 10, 650) }] });
        Book next = WeekHomes.Close(WeekHomes.Close(book, Friday6March), Friday6March.PlusWeeks(2));

        Assert.Equal([Usd(600)], Plan(book, Friday6March).Bills.Dues.Select(due => due.Amount));
        Assert.Equal(Usd(650), Plan(book, Friday6March).Bills.SetAsides.Single().NextAmount);
        Assert.Equal([Usd(650)], Plan(next, new(2026, 4, 3)).Bills.Dues.Select(due => due.Amount));
        Assert.Equal([Usd(600), Usd(650), Usd(650)], ComingDues.Between(book, Friday6March, new(2026, 5, 31)).Select(due => due.Amount));
    }

    [Fact]
    public void Plan_SetAsides_KnowTheRiseAheadOfTime()
    {
        // Half a year of 100 a month, then 160: the level plan begins to carry the rise before it comes.
        Household home = Bare with { Sources = [Bare.Sources[0] with { Expected = Usd(90) }], Bills = [Bill("Rent", 100, new(2026, 3, 15))], Opening = Bare.Opening with { Account = Usd(0) } };
        Book even = Book.Begin(home);
        Book rising = Book.Begin(home with { Bills = [home.Bills[0] with { Later = From(2026, 9, 1, 160) }] });

        Due[] dues = [.. BillDues.Between(rising.Household.Bills, BankHolidays.None, Friday6March, Friday6March.PlusMonths(13))];

        Assert.Equal(6, dues.Count(due => due.Amount == Usd(100)));
        Assert.Equal(7, dues.Count(due => due.Amount == Usd(160)));
        Assert.True(Plan(rising, Friday6March).Bills.Total >= Plan(even, Friday6March).Bills.Total);
        Assert.Empty(Plan(rising, Friday6March).Bills.Late.Where(late => late.Due.Amount == Usd(100) && late.Due.Date > Friday6March.PlusMonths(1)));
    }

    // The rent of 1 August, a Saturday, is due on Friday 31 July; it is August's all the same. So is the wage.
    [Fact]
    public void Plan_ADateMovedOverTheChange_IsThatOfItsSchedule()
    {
        var rent = new Bill(new("rent"), "Rent", Usd(600), new Schedule.Monthly(new MonthDay.Numbered(1)), Shift.Before, true) { Later = From(2026, 8, 1, 650) };
        var wage = new IncomeSource(new("wage"), "Wage", new Schedule.Monthly(new MonthDay.Numbered(1)), Shift.Before, Usd(1000)) { Later = From(2026, 8, 1, 1100) };
        Book book = Book.Begin(Bare with { Start = new(2026, 7, 1), Bills = [rent], Sources = [wage] });
        RoutinePlan july = Plan(book, new(2026, 7, 1));
        RoutinePlan august = Plan(WeekHomes.Close(book, new(2026, 7, 1)), new(2026, 7, 31));

        Assert.Equal((Usd(1000), Usd(600)), (july.Income.CameIn, july.Bills.Due));
        Assert.Equal((Usd(1100), Usd(650)), (august.Income.CameIn, august.Bills.Due));
        Assert.Equal([Usd(1000), Usd(1100)], Outlook.Of(book, 2).Value!.Paydays.Select(payday => payday.Income));
    }

    [Fact]
    public void Plan_TwoPaysOfOneDay_AreExpectedEachByItsOwnDate()
    {
        // 31 May 2026 is a Sunday, so that pay is there on Monday 1 June, as the one of the 1st is.
        var wage = new IncomeSource(new("wage"), "Wage", new Schedule.TwiceMonthly(new MonthDay.Numbered(1), new MonthDay.Last()), Shift.After, Usd(500)) { Later = From(2026, 6, 1, 530) };
        Book book = Book.Begin(Bare with { Start = new(2026, 5, 20), Sources = [wage] });

        Assert.Equal(Usd(1030), Assert.Single(Plan(book, new(2026, 6, 1)).Income.Lines).Expected);
    }

    [Fact]
    public void Plan_WhatWaits_FollowsTheBillAsItStandsThen()
    {
        Book book = Book.Begin(Bare with { Bills = [Rent] });
        var open = new RoutineDraft(Friday6March) { Dues = ImmutableSortedDictionary<DueKey, DueDecision>.Empty.Add(new(Rent.Id, new(2026, 3, 10)), new DueDecision(null, false)) };
        Book waiting = Closing.Of(Routine.Plan(book, open).Value!).Value!;
        Book changed = waiting with { Household = waiting.Household with { Bills = [Rent with { Later = LaterAmounts.Of(new(new(2026, 3, 9), Usd(610)), new(new(2026, 3, 11), Usd(700))) }] } };

        Assert.Equal([Usd(610)], OpenDues.OfBills(changed, BankHolidays.None, new(2026, 3, 31)).Select(due => due.Amount));
    }

    [Fact]
    public void Plan_AWeeklyPot_HasWhatHoldsOnEachFillDay()
    {
        Household home = Bare with { Pots = [CashPot("Food", 50) with { Kind = new PotKind.Spending(Usd(50), FillPer.Week) { Later = From(2026, 3, 13, 60) } }] };
        RoutinePlan plan = Plan(Book.Begin(home), Friday6March);

        Assert.Equal((Usd(110), "50, then 60 a week, 2 weeks"), (plan.Pots.Rows[0].Fill, plan.Pots.Rows[0].Why));
        Assert.Equal([Usd(50), Usd(60)], plan.Withdrawal.Pots[0].Weeks.Select(week => week.Share));
        Assert.Equal(Usd(120), Plan(WeekHomes.Close(Book.Begin(home), Friday6March), Friday6March.PlusWeeks(2)).Pots.Rows[0].Fill);
    }

    [Theory]
    [InlineData(6, 15)]
    [InlineData(20, 18)]
    public void Plan_APaydaysPot_HasWhatHoldsOnThePayday(int day, decimal fill)
    {
        Book book = Book.Begin(Bare with { Pots = [AccountPot("Phone", 15) with { Kind = new PotKind.Spending(Usd(15), FillPer.Payday) { Later = From(2026, 3, 20, 18) } }] });

        Assert.Equal(Usd(fill), Plan(book, new(2026, 3, day)).Pots.Rows[0].Fill);
    }

    // Fortnightly from 6 March: 90 a month over the 6th and 20th; from the 20th on it is 120 a month.
    [Fact]
    public void Plan_AMonthsPotThatChangesInTheMiddle_HasTheShareThatHoldsOnEachPayday()
    {
        Book book = Book.Begin(Bare with { Pots = [Month(90, From(2026, 3, 20, 120))] });
        Book second = WeekHomes.Close(book, Friday6March);

        Assert.Equal((Usd(45), "90 a month, part 1 of 2"), Fill(book, Friday6March));
        Assert.Equal((Usd(60), "120 a month, part 2 of 2"), Fill(second, Friday6March.PlusWeeks(2)));
        Assert.Equal((Usd(60), "120 a month, part 1 of 2"), Fill(WeekHomes.Close(second, Friday6March.PlusWeeks(2)), new(2026, 4, 3)));
    }

    [Theory]
    [InlineData(20, 85, "85 of 120 to go")]
    [InlineData(45, 60, "120 a month, part 2 of 2")]
    [InlineData(70, 35, "35 of 120 to go")]
    [InlineData(200, 0, "120 a month, full")]
    public void Plan_AMonthsPotThatChanges_PutsItselfRight(decimal before, decimal then, string why)
    {
        Book book = Book.Begin(Bare with { Pots = [Month(90, From(2026, 3, 20, 120))] });
        Book closed = Closing.Of(Routine.Plan(book, new RoutineDraft(Friday6March) { Fills = PotSums(("goods", before)) }).Value!).Value!;

        Assert.Equal((Usd(then), why), Fill(closed, Friday6March.PlusWeeks(2)));
    }

    // 80 a month over four, from the 18th on 120: 20, 20, 30 and 30. Three are left, that of the 11th first.
    [Theory]
    [InlineData(20, 20)] // as planned
    [InlineData(0, 30)] // 20 missed: 10, 5 and 5 on top
    [InlineData(15, 25)] // 5 missed
    [InlineData(35, 5)] // 15 too much so far come off the next
    [InlineData(50, 0)]
    public void Plan_AChangeStillToCome_LeavesTheOwnShareAndPartsWhatWasMissed(decimal soFar, decimal fill)
    {
        Pot pot = Month(80, From(2026, 3, 18, 120)) with { Place = Place.Cash };
        PotFacts facts = Pots.PotSamples.Facts with { Payday = new(2026, 3, 11), Months = Pots.PotSamples.Months(Pots.PotSamples.March("4 11 18 25"), soFar) };

        Assert.Equal(Usd(fill), PotFills.Propose(pot, facts).Amount);
    }

    [Fact]
    public void Plan_AMonthsPaydayThatIsThereInTheMonthBefore_HasTheAmountOfItsMonth()
    {
        // The wage for 1 August, a Saturday, is there on 31 July.
        var wage = new IncomeSource(new("wage"), "Wage", new Schedule.Monthly(new MonthDay.Numbered(1)), Shift.Before, Usd(1000));
        Book book = Book.Begin(Bare with { Start = new(2026, 7, 2), Sources = [wage], Pots = [Month(90, From(2026, 8, 1, 120))] });

        Assert.Equal((Usd(120), "120 a month"), Fill(book, new(2026, 7, 31)));
    }

    /// <summary>Each month gets, payday by payday, the share of what holds that day, where all is filled as proposed.</summary>
    [Fact]
    public void Plan_MonthsFilledAsProposed_GetEachPaydaysOwnShare() => Gen.Select(Gen.Int[1, 3], Gen.Int[20, 300], Gen.Select(Gen.Int[0, 120], Gen.Int[0, 300]).Array[0, 4]).Sample((weeks, first, changes) =>
    {
        LaterAmounts later = LaterAmounts.Of([.. changes.DistinctBy(change => change.Item1).OrderBy(change => change.Item1).Select(change => new LaterAmount(Friday6March.PlusDays(change.Item1), Usd(change.Item2)))]);
        Book book = Book.Begin(Bare with
        {
            Start = new(2026, 3, 1),
            Sources = [Bare.Sources[0] with { Schedule = new Schedule.EveryWeeks(weeks, Friday6March) }],
            Pots = [Month(first, later)],
        });
        int inMonth = Math.Max(1, 4 / weeks);
        var seen = new Dictionary<YearMonth, int>();
        for (LocalDate payday = Friday6March; payday < new LocalDate(2026, 8, 1); payday = payday.PlusWeeks(weeks))
        {
            int at = seen[payday.ToYearMonth()] = seen.GetValueOrDefault(payday.ToYearMonth()) + 1;
            LocalDate[] all = [.. Enumerable.Range(1, 31).Where(day => day <= payday.Calendar.GetDaysInMonth(payday.Year, payday.Month)).Select(day => new LocalDate(payday.Year, payday.Month, day)).Where(day => day >= Friday6March && Period.DaysBetween(Friday6March, day) % (7 * weeks) == 0)];
            int count = Math.Min(inMonth, all.Length);
            long cents = later.On(payday, Usd(first)).MinorUnits;
            long share = at > count ? 0 : at < count ? (cents + count - at) / count : cents / count;
            Assert.Equal(Cents(share), Fill(book, payday).Fill);
            book = WeekHomes.Close(book, payday);
        }
    }, iter: 100);

    [Fact]
    public void Plan_ASinkingPot_SavesForWhatHoldsOnItsDate()
    {
        PotKind.Sinking kind = new(Usd(100), new(2026, 4, 3));
        Pot before = AccountPot("Insurance", 0) with { Kind = kind with { Later = From(2026, 4, 4, 500) } };
        Pot on = AccountPot("Insurance", 0) with { Kind = kind with { Later = From(2026, 4, 3, 160) } };

        Assert.Equal(Usd(50), Fill(Book.Begin(Bare with { Pots = [before] }), Friday6March).Fill);
        Assert.Equal((Usd(80), "160 short, 2 paydays"), Fill(Book.Begin(Bare with { Pots = [on] }), Friday6March));
    }

    [Fact]
    public void Plan_ASinkingPotThatIsBoughtAndRepeats_SavesForTheNextTarget()
    {
        Pot insurance = AccountPot("Insurance", 0) with { Kind = new PotKind.Sinking(Usd(100), new(2026, 3, 20)) { Repeats = new Schedule.EveryMonths(1, new(2026, 3, 20)), Later = From(2026, 4, 20, 130) } };
        Book full = WeekHomes.Close(Book.Begin(Bare with { Pots = [insurance] }), Friday6March);
        Book bought = full.Spend("insurance", 100, new(2026, 3, 20));

        Assert.Equal(Usd(100), Plan(full, Friday6March.PlusWeeks(2)).Pots.Rows[0].HasNow);
        Assert.Equal((Usd(43.34m), "130 short, 3 paydays"), Fill(bought, Friday6March.PlusWeeks(2)));
        Assert.Equal(Usd(130), PotTarget.Of(bought, insurance, new(2026, 3, 20)));
        Assert.Equal(Usd(100), PotTarget.Of(full, insurance, new(2026, 3, 19)));
    }

    [Fact]
    public void Plan_AReserveWhoseLevelRises_IsFilledAgain()
    {
        Pot reserve = AccountPot("Reserve", 0) with { Kind = new PotKind.Reserve(Usd(60), Usd(40)) { Later = From(2026, 4, 3, 100) } };
        Book book = Book.Begin(Bare with { Pots = [reserve] });
        Book second = WeekHomes.Close(book, Friday6March);
        Book third = WeekHomes.Close(second, Friday6March.PlusWeeks(2));

        Assert.Equal([Usd(40), Usd(20), Usd(40)], [Fill(book, Friday6March).Fill, Fill(second, Friday6March.PlusWeeks(2)).Fill, Fill(third, new(2026, 4, 3)).Fill]);
        Assert.Equal("to 100", Fill(third, new(2026, 4, 3)).Why);
        Assert.Equal([Friday6March.PlusWeeks(2)], Outlook.Of(book, 3).Value!.Reached.Select(pot => pot.On));
    }

    [Fact]
    public void Of_AReserveThatRises_IsFullWhereItReachesTheLevelOfItsDay()
    {
        // 20 a payday from 6 March: 60 would be there on 3 April, but by then it is 90.
        Pot reserve = AccountPot("Reserve", 0) with { Kind = new PotKind.Reserve(Usd(60), Usd(20)) { Later = From(2026, 3, 25, 90) } };

        Assert.Equal(new LocalDate(2026, 5, 1), PotCourse.Of(Plan(Book.Begin(Bare with { Pots = [reserve] }), Friday6March)).Single().Without);
    }

    [Fact]
    public void Needed_ThirtyDays_HasWhatHoldsOnItsDays()
    {
        Household home = Bare with
        {
            Bills = [Rent with { Later = From(2026, 3, 10, 650) }],
            Pots = [CashPot("Food", 50) with { Kind = new PotKind.Spending(Usd(50), FillPer.Week) { Later = From(2026, 3, 20, 60) } }],
        };

        // Fill days 6, 13, 20, 27 March and 3 April.
        Assert.Equal(Usd(650 + 50 + 50 + 60 + 60 + 60), IdleBuffer.Needed(Book.Begin(home), Friday6March));
    }

    [Fact]
    public void In_ATrial_StandsInThePlaceOfEveryLaterAmount()
    {
        Book book = Book.Begin(Bare with { Bills = [Rent with { Later = From(2026, 4, 1, 650) }], Sources = [Bare.Sources[0] with { Later = From(2026, 4, 1, 1200) }] });
        Book tried = new Trial.OfSource(new("wage"), Usd(900)).In(new Trial.OfBill(new("rent"), Usd(700)).In(book));

        Assert.Equal([Usd(900)], Outlook.Of(tried, 4).Value!.Paydays.Select(payday => payday.Income).Distinct());
        Assert.Equal([Usd(700)], OpenDues.OfBills(tried, BankHolidays.None, new(2026, 8, 1)).Select(due => due.Amount).Distinct());
    }

    private static Pot Month(decimal amount, LaterAmounts later) =>
        AccountPot("Goods", 0) with { Kind = new PotKind.Spending(Usd(amount), FillPer.Month) { Later = later } };

    private static (Money Fill, string Why) Fill(Book book, LocalDate payday)
    {
        PotRow row = Plan(book, payday).Pots.Rows.Single();
        return (row.Fill, row.Why);
    }

    private static RoutinePlan Plan(Book book, LocalDate payday) => Routine.Plan(book, new RoutineDraft(payday)).Value!;

    private static LaterAmounts From(int year, int month, int day, decimal amount) => LaterAmounts.Of(new LaterAmount(new(year, month, day), Usd(amount)));
}
