using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Tests.Lives;

namespace Payday.Core.Tests.Cash;

public class CashDefaultsTests
{
    // Bank of Finland (EUR), Reserve Bank of Australia (AUD), Reserve Bank of India (INR): read; GBP, CAD, JPY, CHF,
    // SEK, MXN: secondary pages; USD: from memory, without the rare 2.
    [Theory]
    [InlineData("USD", "100 50 20 10 5 1")]
    [InlineData("EUR", "200 100 50 20 10 5")]
    [InlineData("GBP", "50 20 10 5")]
    [InlineData("CAD", "100 50 20 10 5")]
    [InlineData("AUD", "100 50 20 10 5")]
    [InlineData("NZD", "100 50 20 10 5")]
    [InlineData("JPY", "10000 5000 2000 1000")]
    [InlineData("CHF", "1000 200 100 50 20 10")]
    [InlineData("SEK", "1000 500 200 100 50 20")]
    [InlineData("INR", "500 200 100 50 20 10")]
    [InlineData("MXN", "1000 500 200 100 50 20")]
    public void For_Currency_HasThePublishedNotes(string code, string notes)
    {
        Currency currency = Currency.FromCode(code);

        Assert.Equal(notes.Split(' ').Select(note => Money.FromUnits(long.Parse(note), currency)), CashDefaults.For(currency).Notes);
    }

    // Canada and the Royal Australian Mint; New Zealand: Reserve Bank of New Zealand, 2006.
    [Theory]
    [InlineData("CAD", "2.00 1.00 0.25 0.10 0.05")]
    [InlineData("AUD", "2.00 1.00 0.50 0.20 0.10 0.05")]
    [InlineData("NZD", "2.00 1.00 0.50 0.20 0.10")]
    [InlineData("JPY", "500 100 50 10 5 1")] // from memory
    public void For_Currency_HasThePublishedCoins(string code, string coins) =>
        Assert.Equal(coins.Split(' '), CashDefaults.For(Currency.FromCode(code)).Coins.Select(coin => coin.ToPlain()));

    [Theory]
    [InlineData("USD EUR GBP CAD AUD NZD CHF SEK NOK DKK JPY INR MXN ZAR PLN BRL")]
    public void Codes_OfTheDesign_AreAllThere(string codes) =>
        Assert.Empty(codes.Split(' ').Except(CashDefaults.Codes));

    [Fact]
    public void For_EveryCode_IsOrderedAndInItsCurrency()
    {
        foreach (string code in CashDefaults.Codes)
        {
            Currency currency = Currency.FromCode(code);
            CashPieces pieces = CashDefaults.For(currency);
            foreach (Money[] values in new Money[][] { [.. pieces.Notes], [.. pieces.Coins] })
            {
                Assert.NotEmpty(values);
                Assert.Equal(values.OrderDescending(), values);
                Assert.Equal(values.Length, values.Distinct().Count());
                Assert.All(values, value => Assert.True(value.IsPositive && value.Currency == currency));
            }
        }
    }

    [Fact]
    public void For_CurrencyWithoutDefaults_Throws() =>
        Assert.Throws<ArgumentException>(() => CashDefaults.For(Currency.FromCode("CLF")));
}
