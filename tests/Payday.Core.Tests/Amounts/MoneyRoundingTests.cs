using CsCheck;
using Payday.Core.Amounts;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Amounts;

public class MoneyRoundingTests
{
    // Canada: Budget 2012, to five cents.
    [Theory]
    [InlineData("CAD", "0.05", "1.01", "1.00")]
    [InlineData("CAD", "0.05", "1.02", "1.00")]
    [InlineData("CAD", "0.05", "1.03", "1.05")]
    [InlineData("CAD", "0.05", "1.04", "1.05")]
    [InlineData("CAD", "0.05", "1.06", "1.05")]
    [InlineData("CAD", "0.05", "1.07", "1.05")]
    [InlineData("CAD", "0.05", "1.08", "1.10")]
    [InlineData("CAD", "0.05", "1.09", "1.10")]
    [InlineData("CAD", "0.05", "4.92", "4.90")]
    // Australia, to five cents.
    [InlineData("AUD", "0.05", "1.98", "2.00")]
    [InlineData("AUD", "0.05", "1.97", "1.95")]
    // Sweden: Lag 1970:1029, section 2, to one krona.
    [InlineData("SEK", "1.00", "10.49", "10.00")]
    [InlineData("SEK", "1.00", "10.50", "11.00")]
    public void RoundTo_PublishedValues_Match(string code, string unit, string amount, string rounded)
    {
        Currency currency = Currency.FromCode(code);
        Money total = Money.ParsePlain(amount, currency).Value;
        Money piece = Money.ParsePlain(unit, currency).Value;

        Assert.Equal(rounded, total.RoundTo(piece).ToPlain());
        Assert.Equal("-" + rounded, (-total).RoundTo(piece).ToPlain());
    }

    [Theory]
    [InlineData(85, 20, 80, 100)]
    [InlineData(80, 20, 80, 80)]
    [InlineData(0, 20, 0, 0)]
    [InlineData(-85, 20, -100, -80)]
    [InlineData(-80, 20, -80, -80)]
    public void FloorToAndCeilingTo_OnBothSidesOfZero_GoDownAndUp(long amount, long unit, long floor, long ceiling)
    {
        Assert.Equal(Cents(floor), Cents(amount).FloorTo(Cents(unit)));
        Assert.Equal(Cents(ceiling), Cents(amount).CeilingTo(Cents(unit)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    public void Rounding_UnitNotAboveZero_Throws(long unit)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Usd(1).FloorTo(Cents(unit)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Usd(1).CeilingTo(Cents(unit)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Usd(1).RoundTo(Cents(unit)));
    }

    [Fact]
    public void Rounding_AnyAmount_IsAWholeMultipleWithinReach() =>
        Gen.Select(Gen.Long[-10_000_000, 10_000_000], Gen.Long[1, 10_000]).Sample((amount, unit) =>
        {
            Money floor = Cents(amount).FloorTo(Cents(unit));
            Money ceiling = Cents(amount).CeilingTo(Cents(unit));
            Money nearest = Cents(amount).RoundTo(Cents(unit));
            return floor.MinorUnits % unit == 0 && ceiling.MinorUnits % unit == 0
                && floor <= Cents(amount) && Cents(amount) <= ceiling && (ceiling - floor).MinorUnits <= unit
                && (nearest == floor || nearest == ceiling)
                && Math.Abs((nearest - Cents(amount)).MinorUnits) * 2 <= unit;
        });

    [Theory]
    [InlineData("100.00", "0.12", "1.00")]
    [InlineData("0.06", "1.00", "0.00")] // half a cent: to the even 0
    [InlineData("0.18", "1.00", "0.02")] // one and a half: to the even 2
    [InlineData("0.30", "1.00", "0.02")] // two and a half: to the even 2
    [InlineData("2500.00", "0.0824", "17.17")]
    [InlineData("1000.00", "0", "0.00")]
    [InlineData("1000.00", "3", "250.00")]
    [InlineData("-100.00", "0.12", "-1.00")]
    public void MonthOfInterest_OfBalance_RoundsHalfToEven(string balance, string rate, string interest) =>
        Assert.Equal(
            interest,
            Money.ParsePlain(balance, Dollars).Value
                .MonthOfInterest(decimal.Parse(rate, System.Globalization.CultureInfo.InvariantCulture)).ToPlain());

    [Fact]
    public void MonthOfInterest_NegativeRate_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Usd(1).MonthOfInterest(-0.01m));

    [Theory]
    [InlineData(25, 0)]
    [InlineData(75, 2)]
    [InlineData(125, 2)]
    [InlineData(126, 3)]
    public void Times_TwoPercent_RoundsHalfToEven(long cents, long expected) =>
        Assert.Equal(Cents(expected), Cents(cents).Times(0.02m));
}
