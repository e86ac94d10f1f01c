using Payday.Core.Amounts;
using Payday.Core.Counts;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Counts;

public class TypedDifferenceTests
{
    [Theory]
    [InlineData("3", "3.00", "")]
    [InlineData("Aunt=3", "3.00", "Aunt")]
    [InlineData("a=b=1+2", "3.00", "a=b")]
    [InlineData(" Aunt ", "", "Aunt")]
    [InlineData("=3", "3.00", "")]
    [InlineData("Coat of 2019", "", "Coat of 2019")]
    public void Read_AmountNameOrBoth_IsWhatWasWritten(string text, string amount, string name)
    {
        TypedDifference typed = TypedDifference.Read(text, Dollars, NumberStyle.Plain).Value!;
        Assert.Equal((amount, name), (typed.Amount?.ToString(NumberStyle.Plain) ?? "", typed.Name));
    }

    [Theory]
    [InlineData("Aunt=")]
    [InlineData("Aunt=x")]
    [InlineData("Aunt=1.234")]
    public void Read_WhatIsNoAmountBehindAName_IsRefused(string text) => Assert.False(TypedDifference.Read(text, Dollars, NumberStyle.Plain).Ok);

    [Theory]
    [InlineData("", "3.00")]
    [InlineData("unknown", "3.00")]
    [InlineData("Aunt", "Aunt=3.00")]
    public void Write_ThenRead_IsTheSame(string name, string written)
    {
        Assert.Equal(written, TypedDifference.Write(Usd(3), name, NumberStyle.Plain));
        Assert.Equal(Usd(3), TypedDifference.Read(written, Dollars, NumberStyle.Plain).Value!.Amount);
    }

    [Theory]
    [InlineData("Aunt=3", "Uncle", "Aunt")]
    [InlineData("3", "Uncle", "Uncle")]
    [InlineData("3", "", "unknown")]
    public void NameOr_NameBefore_StaysWhereNoneIsSaid(string text, string before, string name) =>
        Assert.Equal(name, TypedDifference.Read(text, Dollars, NumberStyle.Plain).Value!.NameOr(before));
}
