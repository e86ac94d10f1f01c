using Payday.Statements.Texts;

namespace Payday.Statements.Tests.Texts;

public sealed class AmountTextTests
{
    [Theory]
    [InlineData("1234.56", '.', 2, 123456)]
    [InlineData("1,234.56", '.', 2, 123456)]
    [InlineData("1.234,56", ',', 2, 123456)]
    [InlineData("1 234,56", ',', 2, 123456)]
    [InlineData("1\u00A0234,56", ',', 2, 123456)]
    [InlineData("1\u202F234,56", ',', 2, 123456)]
    [InlineData("1'234.56", '.', 2, 123456)]
    [InlineData("1\u2019234.56", '.', 2, 123456)]
    [InlineData("1,00,000.00", '.', 2, 10000000)]
    [InlineData("-12.50", '.', 2, -1250)]
    [InlineData("\u221212.50", '.', 2, -1250)]
    [InlineData("12.50-", '.', 2, -1250)]
    [InlineData("(12.50)", '.', 2, -1250)]
    [InlineData("12.50 DR", '.', 2, -1250)]
    [InlineData("12.50CR", '.', 2, 1250)]
    [InlineData("+12.5", '.', 2, 1250)]
    [InlineData("\u20AC 12,50", ',', 2, 1250)]
    [InlineData("-$12.50", '.', 2, -1250)]
    [InlineData("$-12.50", '.', 2, -1250)]
    [InlineData("12,50 EUR", ',', 2, 1250)]
    [InlineData("12,50-\u20AC", ',', 2, -1250)]
    [InlineData("12,50 kr", ',', 2, 1250)]
    [InlineData("US$ 12.50", '.', 2, 1250)]
    [InlineData("500,", ',', 2, 50000)]
    [InlineData(".5", '.', 2, 50)]
    [InlineData("18.1500", '.', 2, 1815)]
    [InlineData("1234", '.', 0, 1234)]
    [InlineData("1.234", '.', 3, 1234)]
    public void Read_AsBanksWriteIt_IsExact(string text, char mark, int decimals, long minor) =>
        Assert.Equal(AmountReading.Of(minor), AmountText.Read(text, mark, decimals));

    [Theory]
    [InlineData("", nameof(AmountState.Missing))]
    [InlineData("  ", nameof(AmountState.Missing))]
    [InlineData("18.155", nameof(AmountState.TooManyDecimals))]
    [InlineData("1,23", nameof(AmountState.NotAnAmount))]
    [InlineData("12,34.5", nameof(AmountState.NotAnAmount))]
    [InlineData("1.2.3", nameof(AmountState.NotAnAmount))]
    [InlineData("--1", nameof(AmountState.NotAnAmount))]
    [InlineData("-1-", nameof(AmountState.NotAnAmount))]
    [InlineData("(1", nameof(AmountState.NotAnAmount))]
    [InlineData(".", nameof(AmountState.NotAnAmount))]
    [InlineData("1e5", nameof(AmountState.NotAnAmount))]
    [InlineData("12.5x", nameof(AmountState.NotAnAmount))]
    [InlineData("12 pcs", nameof(AmountState.NotAnAmount))]
    [InlineData("Order 12", nameof(AmountState.NotAnAmount))]
    [InlineData("99999999999999", nameof(AmountState.NotAnAmount))]
    public void Read_NoAmount_SaysWhy(string text, string state) => Assert.Equal(state, AmountText.Read(text, '.', 2).State.ToString());
}
