using CsCheck;
using Payday.Core.Amounts;
using static Payday.Core.Tests.Amounts.Amount;
using Payday.Core.Faults;

namespace Payday.Core.Tests.Amounts;

public class AmountReaderTests
{
    [Theory]
    [InlineData("12", "12.00")]
    [InlineData("12.5", "12.50")]
    [InlineData(".5", "0.50")]
    [InlineData("  7.25 ", "7.25")]
    [InlineData("+3", "3.00")]
    [InlineData("-3", "-3.00")]
    [InlineData("-0", "0.00")]
    [InlineData("1,234", "1234.00")]
    [InlineData("1234567.89", "1234567.89")]
    [InlineData("1,234,567.89", "1234567.89")]
    [InlineData("007", "7.00")]
    [InlineData("\u22124.10", "-4.10")] // a typographic minus, as statements have it
    public void Parse_WhatPeopleType_IsRead(string text, string plain) =>
        Assert.Equal(plain, Money.Parse(text, Dollars, NumberStyle.CommaPoint).Value.ToPlain());

    [Theory]
    [InlineData("1\u00A0234,5")]
    [InlineData("1\u202F234,5")]
    [InlineData("1 234,5")]
    public void Parse_BlankBetweenGroups_MayBeOfAnyWidth(string text) =>
        Assert.Equal(Usd(1234.5m), Money.Parse(text, Dollars, NumberStyle.SpaceComma).Value);

    [Theory]
    [InlineData(null, "An amount is missing.")]
    [InlineData("", "An amount is missing.")]
    [InlineData("   ", "An amount is missing.")]
    [InlineData("12a", "'12a' is not an amount; write it like 12.55.")]
    [InlineData("-", "There is no amount after the sign.")]
    [InlineData(".", "'.' is not an amount; write it like 12.55.")]
    [InlineData("5.", "'5.' is not an amount; write it like 12.55.")]
    [InlineData("1.2.3", "'1.2.3' is not an amount; write it like 12.55.")]
    [InlineData("--5", "'-5' is not an amount; write it like 12.55.")]
    [InlineData("1 2", "'1 2' is not an amount; write it like 12.55.")]
    [InlineData("1,23", "'1,23' is not an amount; write it like 12.55.")]
    [InlineData("1234,567", "'1234,567' is not an amount; write it like 12.55.")]
    [InlineData("1,,234", "'1,,234' is not an amount; write it like 12.55.")]
    [InlineData(",123", "',123' is not an amount; write it like 12.55.")]
    [InlineData("1,234,", "'1,234,' is not an amount; write it like 12.55.")]
    [InlineData("1.2,345", "'1.2,345' is not an amount; write it like 12.55.")]
    [InlineData("\u0661\u0662", "'\u0661\u0662' is not an amount; write it like 12.55.")] // digits of another script
    [InlineData("12.345", "USD has at most 2 decimals; write it like 12.55.")]
    [InlineData("123456789012345678901234567890", "The amount is too large; look at its digits.")]
    [InlineData("92233720368547758.08", "The amount is too large; look at its digits.")]
    [InlineData("-92233720368547758.09", "The amount is too large; look at its digits.")]
    [InlineData("1\n2", "An amount can't hold control characters such as a line break.")]
    [InlineData("1\u001B[2J", "An amount can't hold control characters such as a line break.")]
    [InlineData("1\u202E2", "An amount can't hold control characters such as a line break.")]
    [InlineData("twelve and a half, or maybe thirteen", "'twelve and a half, or ma...' is not an amount; write it like 12.55.")]
    public void Parse_WhatIsNoAmount_IsRefusedWithTheMend(string? text, string fault)
    {
        Result<Money> read = Money.Parse(text, Dollars, NumberStyle.CommaPoint);

        Assert.False(read.Ok);
        Assert.Equal(fault, read.Fault);
    }

    [Fact]
    public void Parse_VeryLongText_IsRefusedUnread() =>
        Assert.Equal("That is too long for an amount.", Money.ParsePlain(new string('0', 201), Dollars).Fault);

    [Theory]
    [InlineData("1.5", "JPY has no decimals; write it like 1234.")]
    [InlineData("x", "'x' is not an amount; write it like 1234.")]
    public void Parse_Yen_KnowsItHasNoDecimals(string text, string fault) =>
        Assert.Equal(fault, Money.ParsePlain(text, Currency.FromCode("JPY")).Fault);

    [Theory]
    [InlineData("12.50+3-1", "14.50")]
    [InlineData(" 12.50 + 3 - 1 ", "14.50")]
    [InlineData("-5+2", "-3.00")]
    [InlineData("+5", "5.00")]
    [InlineData("1,000-0.01", "999.99")]
    [InlineData("92233720368547758.07+1-1", "92233720368547758.07")] // only the sum has to fit
    public void ParseSum_OfAmounts_Adds(string text, string plain) =>
        Assert.Equal(plain, Money.ParseSum(text, Dollars, NumberStyle.CommaPoint).Value.ToPlain());

    [Theory]
    [InlineData("", "An amount is missing.")]
    [InlineData("5+", "The sum has a + or - without an amount beside it.")]
    [InlineData("5+-3", "The sum has a + or - without an amount beside it.")]
    [InlineData("-", "The sum has a + or - without an amount beside it.")]
    [InlineData("5+x", "'x' is not an amount; write it like 12.55.")]
    [InlineData("5*3", "'5*3' is not an amount; write it like 12.55.")]
    [InlineData("5+1.234", "USD has at most 2 decimals; write it like 12.55.")]
    [InlineData("92233720368547758.07+0.01", "The sum is too large; look at its digits.")]
    [InlineData("5+\t3", "An amount can't hold control characters such as a line break.")]
    public void ParseSum_WhatIsNoSum_IsRefusedWithTheMend(string text, string fault) =>
        Assert.Equal(fault, Money.ParseSum(text, Dollars, NumberStyle.CommaPoint).Fault);

    [Fact]
    public void Parse_AnyText_IsReadOrRefusedButNeverThrows() =>
        Gen.Select(Gen.OneOf(Gen.String, Gen.String["0123456789.,'+- "]), Gen.OneOf(NumberStyle.All.ToArray())).Sample((text, style) =>
        {
            Result<Money> amount = Money.Parse(text, Dollars, style);
            Result<Money> sum = Money.ParseSum(text, Dollars, style);
            return !amount.Ok || sum.Ok;
        });
}
