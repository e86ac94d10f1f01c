using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Debts;
using Payday.Core.Ids;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Debts.Sample;

namespace Payday.Core.Tests.Debts;

public class NeverEndingDebtTests
{
    [Theory]
    [InlineData(10.00, false)] // exactly the interest
    [InlineData(9.00, false)]
    [InlineData(0, false)]
    [InlineData(11.00, true)]
    public void EndsAtItsMinimum_AThousandAtTwelve_NeedsMoreThanTheInterest(decimal minimum, bool ends) =>
        Assert.Equal(ends, DebtProjection.EndsAtItsMinimum(Debt("card", 1000, 0.12m, minimum)));

    [Theory]
    [InlineData(0.02, 25, true)]
    [InlineData(0.01, 0, false)] // one percent of the balance is just the interest
    [InlineData(0.02, 0, false)] // at 0.74 both the minimum and the interest round to a cent
    [InlineData(0.02, 0.02, true)]
    public void EndsAtItsMinimum_PercentOfAThousandAtTwelve_NeedsAFloor(decimal percent, decimal floor, bool ends) =>
        Assert.Equal(ends, DebtProjection.EndsAtItsMinimum(Percent("card", 1000, 0.12m, percent, floor)));

    [Fact]
    public void Project_NeverEnding_IsNamedAndOthersStillEnd()
    {
        DebtProjection projection = Project(
            0, DebtOrder.SmallestBalance, Debt("never", 5000, 3, 10), Debt("ends", 100, 0, 50));

        Assert.Equal(["never"], projection.Never.Select(id => id.Text));
        Assert.Equal([null, new YearMonth(2026, 2)], projection.PaidOff());
        Assert.Equal(2, projection.Months);
        Assert.Equal(Usd(0), projection.Interest);
        Assert.Null(projection.Debts[0].Interest);
    }

    [Fact]
    public void Project_MinimumBelowInterest_EndsOnceTheOtherRollsOn()
    {
        // 1000 at 12 % grows on 9 a month until the other's 50 rolls on.
        DebtProjection projection = Project(
            0, DebtOrder.SmallestBalance, Debt("slow", 1000, 0.12m, 9), Debt("ends", 500, 0, 50));

        Assert.Empty(projection.Never.Select(id => id.Text));
        Assert.Equal(new YearMonth(2026, 10), projection.Debts[1].PaidOff);
        Assert.True(projection.Debts[0].PaidOff > projection.Debts[1].PaidOff);
    }

    [Fact]
    public void Project_TheCapOfMonths_IsTheLastThatCounts()
    {
        Assert.Equal(1_200, Project(0, DebtOrder.HighestRate, Debt("long", 1200, 0, 1)).Months);
        Assert.Equal(["long"], Project(0, DebtOrder.HighestRate, Debt("long", 1201, 0, 1)).Never.Select(id => id.Text));
    }

    [Theory]
    [InlineData(DebtOrder.HighestRate)]
    [InlineData(DebtOrder.SmallestBalance)]
    public void Project_RunawayDebts_NeverOverflow(DebtOrder order)
    {
        DebtState huge = new(new DebtId("huge"), "huge", Cents(long.MaxValue), 10, new MinimumRule.Fixed(Usd(1)));
        DebtProjection projection = Project(
            20, order, huge, Debt("fast", 1, 10, 0), Percent("part", 100, 10, 0.5m, 5), Debt("ends", 100, 0, 10));

        Assert.Contains("huge", projection.Never.Select(id => id.Text));
        Assert.NotNull(projection.Debts[3].PaidOff);
    }

    [Fact]
    public void Project_LargestBalanceWithoutInterest_CanBePaid()
    {
        Money all = Cents(long.MaxValue);

        Assert.Equal(1, DebtProjection.Project(
            January, [new(new DebtId("all"), "all", all, 0, new MinimumRule.Fixed(all))], Usd(0), Usd(0), DebtOrder.HighestRate).Months);
    }

    [Fact]
    public void EndsAtItsMinimum_FixedAmount_IsWhetherItIsAboveTheInterest() =>
        Gen.Select(Gen.Int[1, 500_000], Gen.Int[0, 3_000], Gen.Int[500, 50_000]).Sample((cents, points, minimum) =>
        {
            DebtState debt = new(new DebtId("a"), "a", Cents(cents), points / 1_000m, new MinimumRule.Fixed(Cents(minimum)));
            bool falls = debt.Balance.MonthOfInterest(debt.YearlyRate) < Cents(minimum);
            return DebtProjection.EndsAtItsMinimum(debt) == falls;
        });
}
