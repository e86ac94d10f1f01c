using CsCheck;
using Payday.Charts;
using Payday.Core.Amounts;
using Payday.Text;

namespace Payday.Tests.Charts;

public class BarsTests
{
    private static readonly Currency Usd = Currency.FromCode("USD");

    [Theory]
    [InlineData(0, 100, "········")]
    [InlineData(-5, 100, "········")]
    [InlineData(1, 100_000, "▏·······")] // not nothing
    [InlineData(25, 100, "██······")]
    [InlineData(50, 100, "████····")]
    [InlineData(53, 100, "████▏···")]
    [InlineData(99_999, 100_000, "███████▉")] // not all of it
    [InlineData(100, 100, "████████")]
    [InlineData(300, 100, "████████")]
    [InlineData(0, 0, "········")]
    [InlineData(7, 0, "████████")]
    public void Of_PartOfAWhole_IsInEighths(long part, long whole, string bar) => Assert.Equal(bar, Bars.Of(Cents(part), Cents(whole), 8));

    [Fact]
    public void Of_AnyPart_IsAsWideAsAskedAndGrowsWithIt() => Gen.Select(Gen.Long[0, long.MaxValue], Gen.Long[1, long.MaxValue], Gen.Int[1, 60]).Sample((part, whole, width) =>
    {
        string bar = Bars.Of(Cents(part), Cents(whole), width);

        Assert.Equal(width, TextColumns.Width(bar));
        Assert.Equal(part >= whole, bar == Bars.Of(Cents(whole), Cents(whole), width));
        Assert.Equal(part == 0, bar == Bars.Of(Cents(0), Cents(whole), width));
        Assert.Equal(width, TextColumns.Width(TextFold.ToAscii(bar)));
        Assert.DoesNotContain('?', TextFold.ToAscii(bar));
    });

    [Fact]
    public void InHalves_EighthsOfABar_AreHalvesOrNothing() => Assert.Equal("█▌▌▌▌···· a", Bars.InHalves("█▉▊▋▌▍▎▏· a"));

    private static Money Cents(long amount) => Money.FromMinorUnits(amount, Usd);
}
