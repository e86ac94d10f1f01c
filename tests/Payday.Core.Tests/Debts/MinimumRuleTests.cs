using Payday.Core.Debts;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Debts;

public class MinimumRuleTests
{
    [Theory]
    [InlineData(1000, 10, 50)]
    [InlineData(45, 1, 46)] // never more than balance and interest
    [InlineData(49, 1, 50)]
    [InlineData(0, 0, 0)]
    public void Due_Fixed_IsTheAmountOrWhatIsOwed(decimal balance, decimal interest, decimal due) =>
        Assert.Equal(Usd(due), new MinimumRule.Fixed(Usd(50)).Due(Usd(balance), Usd(interest)));

    [Theory]
    [InlineData(3000, 30, 60)] // 2 % of the balance before interest
    [InlineData(1000, 10, 25)] // the floor
    [InlineData(1250, 10, 25)] // both the same
    [InlineData(1250.25, 0, 25.00)] // 25.005: half to even
    [InlineData(1250.75, 0, 25.02)] // 25.015: half to even
    [InlineData(20, 0.40, 20.40)]
    [InlineData(0, 0, 0)]
    public void Due_PercentOrFloor_IsTheLargerOrWhatIsOwed(decimal balance, decimal interest, decimal due) =>
        Assert.Equal(Usd(due), new MinimumRule.PercentOrFloor(0.02m, Usd(25)).Due(Usd(balance), Usd(interest)));

    // A part of 1 % and the month's interest on top, as card lenders' terms ask it; the figures by hand, the rule from memory.
    [Theory]
    [InlineData(3000, 50, 80)]
    [InlineData(1000, 10, 25)] // together 20: the floor
    [InlineData(1000, 15, 25)] // together as much as the floor
    [InlineData(1250.50, 0, 25)]
    [InlineData(2550.50, 1.25, 26.75)] // 25.505 half to even, then the interest
    [InlineData(20, 0.40, 20.40)]
    public void Due_PercentPlusInterest_IsBothOrTheFloorOrWhatIsOwed(decimal balance, decimal interest, decimal due) =>
        Assert.Equal(Usd(due), new MinimumRule.PercentOrFloor(0.01m, Usd(25)) { PlusInterest = true }.Due(Usd(balance), Usd(interest)));
}
