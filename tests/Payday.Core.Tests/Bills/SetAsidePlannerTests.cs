using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Bills.Plans;

namespace Payday.Core.Tests.Bills;

public class SetAsidePlannerTests
{
    // Level set-asides by the least concave majorant, equal incomes (computed by two algorithms). The third row's
    // thirds follow our rounding: the running total goes up to the minor unit, the last one is exact.
    [Theory]
    [InlineData(
        new long[] { 1000, 700, 800, 900, 500, 700, 300 },
        new long[] { 1000, 800, 800, 800, 600, 600, 300 })]
    [InlineData(
        new long[] { 0, 0, 30000, 0, 0, 30000, 0, 0, 0, 0, 0, 60000 },
        new long[] { 10000, 10000, 10000, 10000, 10000, 10000, 10000, 10000, 10000, 10000, 10000, 10000 })]
    [InlineData(
        new long[] { 0, 0, 60000, 0, 0, 0, 0, 0, 0, 0, 0, 120000 },
        new long[] { 20000, 20000, 20000, 13334, 13333, 13333, 13334, 13333, 13333, 13334, 13333, 13333 })]
    public void Plan_LevelEqualIncomes_IsThePublishedTable(long[] dues, long[] expected)
    {
        long[] incomes = [.. dues.Select(_ => 200_000L)];

        SetAsidePlan plan = SetAsidePlanner.Plan(SetAsideMode.Level, Cents(0), Paydays(incomes), DuesByPeriod(dues));

        Assert.Equal(expected, SetAsides(plan));
        Assert.Empty(plan.Late);
    }

    [Fact]
    public void Plan_LevelUnevenIncomes_TakesEvenSharesOfPay()
    {
        SetAsidePlan plan = SetAsidePlanner.Plan(
            SetAsideMode.Level, Cents(0), Paydays(100_000, 300_000, 200_000), DuesByPeriod(0, 0, 60_000));

        Assert.Equal([10_000, 30_000, 20_000], SetAsides(plan));
    }

    [Fact]
    public void Plan_Rows_CarryDatesDuesAndWhatIsHeld()
    {
        SetAsidePlan plan = SetAsidePlanner.Plan(
            SetAsideMode.Level, Cents(500), Paydays(5000, 5000), [DueOn(-1, 200), DueOn(3, 300), DueOn(7, 1000), DueOn(90, 500)]);

        Assert.Equal(
            [
                new SetAsideRow(FirstPayday, Cents(500), Cents(750), Cents(750)),
                new SetAsideRow(FirstPayday.PlusWeeks(1), Cents(1500), Cents(750), Cents(0)),
            ],
            plan.Rows.ToArray());
    }

    [Fact]
    public void Plan_AsTheyFall_EachPaydayPaysItsOwnPeriod()
    {
        SetAsidePlan plan = SetAsidePlanner.Plan(
            SetAsideMode.AsTheyFall, Cents(150), Paydays(1000, 1000, 1000, 1000), DuesByPeriod(100, 200, 0, 700));

        Assert.Equal([0, 150, 0, 700], SetAsides(plan));
        Assert.Equal([50, 0, 0, 0], plan.Rows.Select(row => row.HeldAfter.MinorUnits));
    }

    [Fact]
    public void Plan_AsTheyFallAndAPayBelowItsPeriod_TakesNoMoreThanThePayAndNamesWhatIsLate()
    {
        SetAsidePlan plan = SetAsidePlanner.Plan(SetAsideMode.AsTheyFall, Cents(0), Paydays(1000, 10, 500), DuesByPeriod(0, 100, 0));

        Assert.Equal([0, 10, 90], SetAsides(plan));
        Assert.Equal(Cents(90), Assert.Single(plan.Late).Short);
    }

    [Fact]
    public void Plan_NotEnoughIncome_NamesWhatIsLateAndByHowMuch()
    {
        Due early = DueOn(-3, 70, "insurance");
        Due rent = DueOn(4, 100, "rent");
        Due power = DueOn(4, 50, "power");
        Due school = DueOn(9, 20, "school");

        SetAsidePlan plan = SetAsidePlanner.Plan(
            SetAsideMode.Level, Cents(40), Paydays(100, 300), [school, rent, power, early]);

        // Before the first payday there is but what is held; the arrears of 30 and rent's 70 take the first pay.
        Assert.Equal(
            [new LateDue(early, Cents(30)), new LateDue(rent, Cents(30)), new LateDue(power, Cents(50))],
            plan.Late.ToArray());
        Assert.Equal([100, 100], SetAsides(plan));
        Assert.Equal([0, 0], plan.Rows.Select(row => row.HeldAfter.MinorUnits));
    }

    [Theory]
    [InlineData(SetAsideMode.Level, new long[] { 100, 100, 100 })]
    [InlineData(SetAsideMode.AsTheyFall, new long[] { 0, 0, 300 })]
    public void Plan_NoIncomeKnown_WeighsPaydaysAlikeAndIsNotLimited(SetAsideMode mode, long[] expected)
    {
        SetAsidePlan plan = SetAsidePlanner.Plan(mode, Cents(0), Paydays(0, 0, 0), DuesByPeriod(0, 0, 300));

        Assert.Equal(expected, SetAsides(plan));
        Assert.Empty(plan.Late);
    }

    [Fact]
    public void Plan_NoIncomeKnown_StillNamesWhatFellDueBeforeTheFirstPayday() =>
        Assert.Equal(
            Cents(60),
            Assert.Single(SetAsidePlanner.Plan(SetAsideMode.Level, Cents(40), Paydays(0), [DueOn(-1, 100)]).Late).Short);

    [Fact]
    public void Plan_PaydayThatBringsNothing_SetsNothingAside()
    {
        SetAsidePlan plan = SetAsidePlanner.Plan(
            SetAsideMode.Level, Cents(0), Paydays(0, 500, 0, 500), DuesByPeriod(0, 0, 300, 0));

        Assert.Equal([0, 300, 0, 0], SetAsides(plan));
        Assert.Empty(plan.Late);
    }

    [Fact]
    public void Plan_TwoPaydaysOnOneDate_BothComeBeforeTheDuesOfTheDay()
    {
        PlannedPayday[] paydays = [.. Paydays(100), .. Paydays(100)];

        SetAsidePlan plan = SetAsidePlanner.Plan(SetAsideMode.Level, Cents(0), paydays, [DueOn(0, 200)]);

        Assert.Equal([100, 100], SetAsides(plan));
        Assert.Empty(plan.Late);
    }

    [Fact]
    public void Plan_NothingGiven_IsEmptyOrLate()
    {
        Assert.Empty(SetAsidePlanner.Plan(SetAsideMode.Level, Cents(0), [], []).Rows);
        Assert.Equal([0, 0], SetAsides(SetAsidePlanner.Plan(SetAsideMode.Level, Cents(0), Paydays(1, 1), [])));
        Assert.Equal(
            Cents(30),
            Assert.Single(SetAsidePlanner.Plan(SetAsideMode.Level, Cents(70), [], [DueOn(1, 100)]).Late).Short);
    }

    [Fact]
    public void Plan_LargestAmounts_AreExact()
    {
        const long Most = long.MaxValue;
        SetAsidePlan plan = SetAsidePlanner.Plan(
            SetAsideMode.Level, Cents(0), Paydays(Most / 2, Most / 2, 1), DuesByPeriod(0, Most - 2, 0));

        // Half of an odd total goes up, the rest is exact.
        Assert.Equal([Most / 2, (Most / 2) - 1, 0], SetAsides(plan));
        Assert.Throws<OverflowException>(
            () => SetAsidePlanner.Plan(SetAsideMode.Level, Cents(0), Paydays(1), DuesByPeriod(Most, 1)));
        Assert.Throws<OverflowException>(
            () => SetAsidePlanner.Plan(SetAsideMode.Level, Cents(0), Paydays(Most, 1), DuesByPeriod(1)));
    }

    [Fact]
    public void Plan_WrongInput_Throws()
    {
        Assert.Throws<ArgumentException>(() => Level(Cents(0), [.. Paydays(1, 1).Reverse()]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Level(Cents(-1), []));
        Assert.Throws<ArgumentOutOfRangeException>(() => Level(Cents(0), Paydays(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Level(Cents(0), [], DueOn(0, -1)));
        Assert.Throws<InvalidOperationException>(() => Level(Money.Zero(Currency.FromCode("EUR")), Paydays(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SetAsidePlanner.Plan((SetAsideMode)7, Cents(0), [], []));
    }

    private static SetAsidePlan Level(Money held, PlannedPayday[] paydays, params Due[] dues) =>
        SetAsidePlanner.Plan(SetAsideMode.Level, held, paydays, dues);
}
