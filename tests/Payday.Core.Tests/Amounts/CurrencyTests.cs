using Payday.Core.Amounts;

namespace Payday.Core.Tests.Amounts;

public class CurrencyTests
{
    // ISO 4217, list published 2024-06-25.
    [Theory]
    [InlineData(0, "JPY KRW CLP VND ISK XAF")]
    [InlineData(2, "USD EUR GBP CAD AUD NZD CHF SEK NOK DKK INR MXN BRL ZAR HUF CZK PLN")]
    [InlineData(3, "BHD KWD TND JOD")]
    [InlineData(4, "CLF")]
    public void Decimals_OfPublishedList_Match(int decimals, string codes)
    {
        foreach (string code in codes.Split(' '))
        {
            Assert.Equal(decimals, Currency.FromCode(code).Decimals);
        }
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("usd")]
    [InlineData("ABC")]
    [InlineData("USD ")]
    public void TryFromCode_UnknownCode_IsFalse(string? code) => Assert.False(Currency.TryFromCode(code, out _));

    [Fact]
    public void FromCode_UnknownCode_NamesIt() =>
        Assert.Contains("'ABC'", Assert.Throws<ArgumentException>(() => Currency.FromCode("ABC")).Message, StringComparison.Ordinal);

    [Fact]
    public void Default_IsNoCurrency()
    {
        Assert.Equal("XXX", default(Currency).Code);
        Assert.False(Currency.TryFromCode("XXX", out _));
        Assert.Equal(1, default(Currency).MinorPerUnit);
        Assert.DoesNotContain("XXX", Currency.KnownCodes);
    }
}
