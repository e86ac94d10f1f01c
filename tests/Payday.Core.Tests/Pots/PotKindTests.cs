using Payday.Core.Calendar;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Pots;

public class PotKindTests
{
    [Theory]
    [InlineData(FillPer.Week, false, true)]
    [InlineData(FillPer.Week, true, true)]
    [InlineData(FillPer.Payday, false, false)]
    [InlineData(FillPer.Payday, true, true)]
    [InlineData(FillPer.Month, false, false)]
    [InlineData(FillPer.MonthSpread, true, true)]
    public void GoesWeekByWeek_AnAmountAWeekAlways_AnotherWhereItIsSplit(FillPer per, bool split, bool goes) =>
        Assert.Equal(goes, new PotKind.Spending(Usd(10), per) { SplitsOverWeeks = split }.GoesWeekByWeek);

    [Theory]
    [InlineData(LadderOrder.Rising, 260)]
    [InlineData(LadderOrder.Falling, 260)]
    [InlineData(LadderOrder.Even, 5)]
    public void LargestFill_OfALadder_IsItsHighestStep(LadderOrder order, decimal largest) =>
        Assert.Equal(Usd(largest), new PotKind.Ladder(Usd(5), 52, order).LargestFill);

    [Theory]
    [InlineData(60, 75)]
    [InlineData(75, 60)]
    public void LargestFill_WhereTheAmountChanges_IsTheLargestEver(decimal first, decimal later)
    {
        LaterAmounts changes = LaterAmounts.Of(new LaterAmount(new(2026, 7, 1), Usd(later)));

        Assert.Equal(Usd(75), new PotKind.Spending(Usd(first), FillPer.Week) { Later = changes }.LargestFill);
        Assert.Equal(Usd(75), new PotKind.Sinking(Usd(first), new(2026, 12, 1)) { Later = changes }.LargestFill);
    }
}
