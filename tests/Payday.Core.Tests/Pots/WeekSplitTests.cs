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

    [Theory]
    [InlineData(220, "50 50 60 60", 10, "50 50 60 60", 0)]
    [InlineData(225, "50 50 60 60", 10, "50 50 60 60", 5)]
    [InlineData(110, "50 50 60 60", 10, "30 20 30 30", 0)] // cut by half: 2.5, 2.5, 3 and 3 tens
    [InlineData(60, "0 60", 20, "0 60", 0)]
    [InlineData(70, "50 50 50 50", 10, "20 20 20 10", 0)]
    [InlineData(70, "0 0 0 0", 10, "20 20 20 10", 0)]
    public void Split_WeeksOfTheirOwn_GoByWhatEachIsMeantToHave(decimal fill, string weeks, decimal unit, string shares, decimal keptBack)
    {
        WeekShares split = WeekSplit.Split(Usd(fill), [.. weeks.Split(' ').Select(week => Usd(decimal.Parse(week)))], Usd(unit));

        Assert.Equal(shares.Split(' ').Select(share => Usd(decimal.Parse(share))), split.Shares);
        Assert.Equal(Usd(keptBack), split.KeptBack);
    }

    [Fact]
    public void Split_WeeksOfTheirOwn_LoseNothingAndKeepToTheirQuota() =>
        Gen.Select(Gen.Long[0, 1_000_000], Gen.Long[0, 50_000].Array[1, 8], Gen.Long[1, 20_000]).Sample((fill, weeks, unit) =>
        {
            WeekShares split = WeekSplit.Split(Cents(fill), [.. weeks.Select(Cents)], Cents(unit));
            long units = fill / unit;
            return split.Shares.All(share => share.MinorUnits % unit == 0 && !share.IsNegative)
                && Money.Sum(split.Shares, Dollars) + split.KeptBack == Cents(fill)
                && (weeks.Sum() == 0 || split.Shares.Zip(weeks).All(week =>
                    (Int128)(week.First.MinorUnits / unit) * weeks.Sum() - (Int128)units * week.Second is var off && Int128.Abs(off) < weeks.Sum()));
        });

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
