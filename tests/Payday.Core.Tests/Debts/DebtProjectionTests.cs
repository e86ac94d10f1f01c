using NodaTime;
using Payday.Core.Debts;
using Payday.Core.Ids;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Debts.Sample;

namespace Payday.Core.Tests.Debts;

public class DebtProjectionTests
{
    [Fact]
    public void Project_ZeroRate_DividesTheBalance()
    {
        DebtProjection projection = Project(0, DebtOrder.SmallestBalance, Debt("sofa", 100, 0, 30));

        Assert.Equal(4, projection.Months);
        Assert.Equal(Usd(0), projection.Interest);
        Assert.Equal([new ProjectedDebt(new DebtId("sofa"), "sofa", new YearMonth(2026, 4), Usd(0))], projection.Debts);
        Assert.Empty(projection.Never);
    }

    // 100 by 30 a month is paid in the fourth month that isn't covered.
    [Theory]
    [InlineData(0, 4)]
    [InlineData(1, 5)]
    [InlineData(2, 6)]
    public void Project_MonthsCovered_PaysFromTheMonthAfter(int covered, int months) =>
        Assert.Equal(months, Project(0, DebtOrder.SmallestBalance, Debt("sofa", 100, 0, 30) with { MonthsCovered = covered }).Months);

    [Fact]
    public void Project_ThreeHundredPercent_EndsWhenThePaymentIsAboveTheInterest()
    {
        // 100 at 25 % a month, 50 paid: 75, 43.75, then 43.75 + 10.94 = 54.69, then 4.69 + 1.17.
        DebtProjection projection = Project(0, DebtOrder.HighestRate, Debt("payday loan", 100, 3, 50));

        Assert.Equal(4, projection.Months);
        Assert.Equal(Usd(25 + 18.75m + 10.94m + 1.17m), projection.Interest);
    }

    [Fact]
    public void Project_NoDebtsOrAllPaid_IsOverAtOnce()
    {
        DebtProjection none = Project(10, DebtOrder.HighestRate);
        DebtProjection paid = Project(10, DebtOrder.HighestRate, Debt("old", 0, 0.2m, 30), Debt("credit", -5, 0.2m, 30));

        Assert.Equal((0, Usd(0)), (none.Months, none.Interest));
        Assert.Equal((0, Usd(0)), (paid.Months, paid.Interest));
        Assert.Equal([January, January], paid.PaidOff());
        Assert.Empty(paid.Never);
    }

    [Fact]
    public void Project_OnceNowForAll_PaysBeforeAnyInterest()
    {
        DebtProjection projection = DebtProjection.Project(
            January, [Debt("a", 100, 0.5m, 10), Debt("b", 50, 0.5m, 10)], Usd(0), Usd(200), DebtOrder.HighestRate);

        Assert.Equal((0, Usd(0)), (projection.Months, projection.Interest));
        Assert.Equal([January, January], projection.PaidOff());
    }

    [Fact]
    public void Project_OnceNow_GoesDownTheOrderAndSavesInterest()
    {
        DebtState[] debts = [Debt("a", 100, 0.12m, 10), Debt("b", 50, 0.12m, 10)];
        DebtProjection without = Project(0, DebtOrder.SmallestBalance, debts);
        DebtProjection with = DebtProjection.Project(January, debts, Usd(0), Usd(60), DebtOrder.SmallestBalance);

        // b is paid at once, 10 goes to a: 90, and b's 10 a month rolls on from the first month.
        Assert.Equal([new YearMonth(2026, 5), January], with.PaidOff());
        Assert.True(with.Interest < without.Interest);
    }

    [Fact]
    public void Project_PaidOffDebt_RollsItsMinimumOn()
    {
        // No interest. b: 25 takes 10, 10, then 5, and 5 of its 10 go on to a in the same month.
        // a: 100 - 10 - 10 - (10 + 5) = 65, then 20 a month: 45, 25, 5, 0 in month 7.
        DebtProjection projection = Project(0, DebtOrder.SmallestBalance, Debt("a", 100, 0, 10), Debt("b", 25, 0, 10));

        Assert.Equal([new YearMonth(2026, 7), new YearMonth(2026, 3)], projection.PaidOff());
    }

    [Fact]
    public void Project_PaidOffPercentDebt_RollsItsLastFullMinimumOn()
    {
        // No interest. p: the larger of 10 % and 5: 10 then 100 extra clears it in month 1 with 10 to spare,
        // so 10 a month rolls on. a: 100 - 10 - 10 = 80, then 10 + 100 + 10 a month.
        DebtProjection projection = Project(
            100, DebtOrder.SmallestBalance, Debt("a", 200, 0, 10), Percent("p", 100, 0, 0.1m, 5));

        Assert.Equal([new YearMonth(2026, 3), January], projection.PaidOff());
    }

    [Fact]
    public void Project_DebtPaidFromTheStart_RollsNothingOn() =>
        Assert.Equal(10, Project(0, DebtOrder.SmallestBalance, Debt("a", 100, 0, 10), Debt("old", 0, 0, 90)).Months);

    [Fact]
    public void Project_DebtClearedAtOnce_RollsItsMinimumOnFromTheFirstMonth()
    {
        // No interest: a is paid with 10 + 90 in the first month.
        DebtProjection projection = Project(
            0, DebtOrder.SmallestBalance, Debt("a", 100, 0, 10), Debt("b", 500, 0, 90) with { PaidAtOnce = Usd(500) });

        Assert.Equal([January, January], projection.PaidOff());
        Assert.Equal([false, true], projection.Debts.Select(debt => debt.AtOnce));
    }

    [Fact]
    public void Project_PartPaidAtOnce_BearsNoInterestOnIt() =>
        Assert.Equal(Usd(1), Project(0, DebtOrder.SmallestBalance, Debt("a", 150, 0.12m, 200) with { PaidAtOnce = Usd(50) }).Interest);

    [Theory]
    [InlineData(-1)]
    [InlineData(101)]
    public void Project_PaidAtOnceOutOfRange_IsRefused(decimal atOnce) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Project(0, DebtOrder.SmallestBalance, Debt("a", 100, 0, 10) with { PaidAtOnce = Usd(atOnce) }));

    [Fact]
    public void Project_Extra_OverflowsToTheNextInTheSameMonth() =>
        Assert.Equal(
            [January, January, new YearMonth(2026, 2)],
            Project(100, DebtOrder.SmallestBalance, Debt("a", 20, 0, 5), Debt("b", 30, 0, 5), Debt("c", 100, 0, 5)).PaidOff());

    [Theory]
    [InlineData(DebtOrder.SmallestBalance, null, "small")]
    [InlineData(DebtOrder.HighestRate, null, "dear")]
    [InlineData(DebtOrder.HighestRate, "plain", "plain")]
    [InlineData(DebtOrder.HighestRate, "gone", "dear")]
    public void Project_Order_DecidesWhichEndsFirst(DebtOrder order, string? chosen, string first)
    {
        DebtState[] debts =
            [Debt("plain", 300, 0.10m, 10), Debt("small", 200, 0.05m, 10), Debt("dear", 400, 0.20m, 10)];
        DebtProjection projection = DebtProjection.Project(January, debts, Usd(100), Usd(0), order, chosen is null ? null : new DebtId(chosen));

        Assert.Equal(first, projection.Debts.MinBy(debt => debt.PaidOff)!.Id.Text);
    }

    [Fact]
    public void Project_HighestRate_CostsNoMoreThanSmallestBalanceInTypicalCases()
    {
        // Not a theorem: rounding and percentage minimums can turn it round. It holds for these.
        DebtState[][] households =
        [
            [Debt("card", 4200, 0.2399m, 105), Debt("car", 9800, 0.069m, 245), Debt("family", 600, 0, 50)],
            [Debt("a", 1500, 0.1799m, 35), Debt("b", 2500, 0.2799m, 60), Debt("c", 800, 0.1299m, 25)],
            [Percent("a", 5000, 0.22m, 0.02m, 25), Debt("b", 12000, 0.05m, 180), Percent("c", 900, 0.29m, 0.03m, 20)],
            [Debt("a", 1000, 0.1m, 20), Debt("b", 1000, 0.3m, 30)],
        ];
        foreach (DebtState[] debts in households)
        {
            DebtProjection byRate = Project(150, DebtOrder.HighestRate, debts);
            DebtProjection byBalance = Project(150, DebtOrder.SmallestBalance, debts);

            Assert.True(byRate.Interest <= byBalance.Interest);
            Assert.True(byRate.Months <= byBalance.Months);
        }
    }

    [Fact]
    public void Project_OutOfRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Project(-1, DebtOrder.HighestRate, Debt("a", 1, 0, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Project(0, DebtOrder.HighestRate, Debt("a", 1, -0.1m, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Project(0, DebtOrder.HighestRate, Debt("a", 1, 10.1m, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Project(0, DebtOrder.HighestRate, Debt("a", 1, 0, -1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Project(0, DebtOrder.HighestRate, Percent("a", 1, 0, 1.1m, 1)));
        Assert.Throws<ArgumentException>(() => Project(0, DebtOrder.HighestRate, Debt("a", 1, 0, 1), Debt("a", 2, 0, 1)));
        Assert.Throws<InvalidOperationException>(() => Project(
            0, DebtOrder.HighestRate, new DebtState(new DebtId("a"), "a", Of(1, "EUR"), 0, new MinimumRule.Fixed(Usd(1)))));
    }
}
