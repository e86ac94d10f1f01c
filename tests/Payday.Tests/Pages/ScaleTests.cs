using CsCheck;
using Payday.Core.Amounts;
using Payday.Pages;

namespace Payday.Tests.Pages;

/// <summary>Round amounts beside a chart.</summary>
public sealed class ScaleTests
{
    private static readonly Currency Usd = Currency.FromCode("USD");

    [Theory]
    [InlineData(0, 826_119, "0 2000 4000 6000 8000 10000")]
    [InlineData(0, 100_000, "0 200 400 600 800 1000")]
    [InlineData(-30_000, 90_000, "-500 0 500 1000")]
    [InlineData(0, 0, "0 0.01")]
    [InlineData(-5, 0, "-0.05 -0.04 -0.03 -0.02 -0.01 0 0.01")]
    public void Of_Amounts_HasRoundLines(long least, long most, string lines) => Assert.Equal(
        lines,
        string.Join(' ', Scale.Of([Money(least), Money(most)]).Lines.Select(amount => amount.ToPlain().Replace(".00", "", StringComparison.Ordinal))));

    /// <summary>Whatever the amounts: zero and all of them lie within, and the lines are few.</summary>
    [Fact]
    public void Of_AnyAmounts_HoldsThem() => Gen.Long[long.MinValue / 4, long.MaxValue / 4].Array[1, 20].Sample(amounts =>
    {
        var scale = Scale.Of([.. amounts.Select(Money)]);
        Assert.InRange(scale.Lines.Length, 2, 7);
        Assert.Contains(Money(0), scale.Lines);
        Assert.True(amounts.All(amount => Money(amount) >= scale.Lowest && Money(amount) <= scale.Highest));
        Assert.Equal((0d, 1d), (scale.Share(scale.Lowest), scale.Share(scale.Highest)));
    });

    private static Money Money(long minor) => Payday.Core.Amounts.Money.FromMinorUnits(minor, Usd);
}
