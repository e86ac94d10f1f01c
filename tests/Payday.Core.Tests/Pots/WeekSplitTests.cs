using CsCheck;
using Payday.Core.Amounts;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Pots;

public class WeekSplitTests
{
    [Theory]
    [InlineData(70, 4, 10, "20 20 20 10", 0)] // common practice, no source
    [InlineData(260, 2, 10, "130 130", 0)]
    [InlineData(85, 2, 10, "40 40", 5)]
    [InlineData(45, 1, 5, "45", 0)]
    [InlineData(3.50, 2, 5, "0 0", 3.50)]
    [InlineData(0, 3, 5, "0 0 0", 0)]
    [InlineData(20, 3, 20, "20 0 0", 0)]
    public void Split_Fill_GivesWholeUnitsTheSpareOnesFirst(decimal fill, int weeks, decimal unit, string shares, decimal keptBack)
    {
        WeekShares split = WeekSplit.Split(Usd(fill), weeks, Usd(unit));

        Assert.Equal(shares.Split(' ').Select(share => Usd(decimal.Parse(share))), split.Shares);
        Assert.Equal(Usd(keptBack), split.KeptBack);
    }

    [Fact]
    public void Split_OutOfRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => WeekSplit.Split(Usd(-1), 1, Usd(5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeekSplit.Split(Usd(10), 0, Usd(5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeekSplit.Split(Usd(10), 1, Usd(0)));
        Assert.Throws<InvalidOperationException>(() => WeekSplit.Split(Usd(10), 1, Of(5, "EUR")));
    }

    [Fact]
    public void Split_AnyFill_LosesNothing() =>
        Gen.Select(Gen.Long[0, 10_000_000], Gen.Int[1, 60], Gen.Long[1, 20_000]).Sample((fill, weeks, unit) =>
        {
            WeekShares split = WeekSplit.Split(Cents(fill), weeks, Cents(unit));
            return split.Shares.Length == weeks
                && split.Shares.All(share => share.MinorUnits % unit == 0 && !share.IsNegative)
                && split.Shares.SequenceEqual(split.Shares.OrderDescending())
                && split.Shares[0] - split.Shares[^1] <= Cents(unit)
                && !split.KeptBack.IsNegative && split.KeptBack < Cents(unit)
                && Money.Sum(split.Shares, Dollars) + split.KeptBack == Cents(fill);
        });
}
