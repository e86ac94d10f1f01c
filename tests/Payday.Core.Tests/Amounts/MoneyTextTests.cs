using CsCheck;
using Payday.Core.Amounts;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Amounts;

public class MoneyTextTests
{
    private static readonly Gen<NumberStyle> AnyStyle = Gen.OneOf(NumberStyle.All.ToArray());
    private static readonly Gen<Currency> AnyCurrency = Gen.OneOf(Currency.KnownCodes.Select(Currency.FromCode).ToArray());

    [Theory]
    [InlineData(0, "0.00")]
    [InlineData(5, "0.05")]
    [InlineData(-5, "-0.05")]
    [InlineData(123456, "1234.56")]
    [InlineData(long.MinValue, "-92233720368547758.08")]
    public void ToPlain_Dollars_HasAllDecimals(long cents, string text) => Assert.Equal(text, Cents(cents).ToPlain());

    [Theory]
    [InlineData("JPY", "1234567", "1,234,567")]
    [InlineData("USD", "123456.78", "123,456.78")]
    [InlineData("USD", "-123.45", "-123.45")]
    [InlineData("USD", "-1234.50", "-1,234.50")]
    [InlineData("KWD", "1000.005", "1,000.005")]
    [InlineData("CLF", "0.0001", "0.0001")]
    public void ToString_CommaPoint_GroupsInThrees(string code, string plain, string text)
    {
        Money amount = Money.ParsePlain(plain, Currency.FromCode(code)).Value;

        Assert.Equal(text, amount.ToString(NumberStyle.CommaPoint));
        Assert.Equal($"{plain} {code}", amount.ToString());
    }

    [Fact]
    public void ToString_EveryStyle_LooksLikeItsSample()
    {
        foreach (NumberStyle style in NumberStyle.All)
        {
            Assert.Equal(style.Sample, Usd(1234.56m).ToString(style));
        }
    }

    [Fact]
    public void Plain_IsTheDefaultStyle()
    {
        Assert.Equal(default, NumberStyle.Plain);
        Assert.Equal("1234.56", NumberStyle.Plain.Sample);
    }

    [Fact]
    public void Parse_OfToString_GivesTheAmountBack() =>
        Gen.Select(Gen.Long, AnyCurrency, AnyStyle).Sample((minor, currency, style) =>
        {
            Money amount = Money.FromMinorUnits(minor, currency);
            return Money.Parse(amount.ToString(style), currency, style).Value == amount
                && Money.ParseSum(amount.ToString(style), currency, style).Value == amount
                && Money.ParsePlain(amount.ToPlain(), currency).Value == amount;
        });

    [Theory]
    [InlineData(long.MaxValue)]
    [InlineData(long.MinValue)]
    public void Parse_EndsOfTheRange_GivesTheAmountBack(long cents) =>
        Assert.Equal(Cents(cents), Money.ParsePlain(Cents(cents).ToPlain(), Dollars).Value);
}
