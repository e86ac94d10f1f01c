using Payday.Core.ItemLines;

namespace Payday.Core.Tests.ItemLines;

/// <summary>A pasted text, parted into the lines of a household's lists.</summary>
public sealed class ItemSectionsTests
{
    [Theory]
    [InlineData("Rent 1450 1\nPhone 42 20", "Bills Rent 1450 1|Bills Phone 42 20")]
    [InlineData("Income:\r\nWage 1840 25\r\nBILLS\r\nRent 1450 1", "Sources Wage 1840 25|Bills Rent 1450 1")]
    [InlineData("- Rent 1450 1\n* Phone 42 20\n• Bus 72 28\n-\n\n  \n", "Bills Rent 1450 1|Bills Phone 42 20|Bills Bus 72 28")]
    [InlineData("# Pots\nFood 100\n# Debts #\nCard 500", "Pots Food 100|Pots Debts #|Pots Card 500")]
    [InlineData("Pay\rWage 1840 25\rPots :\rFood 100", "Sources Wage 1840 25|Pots Food 100")]
    [InlineData("Bills 20 1st", "Bills Bills 20 1st")]
    [InlineData("", "")]
    public void Of_AText_AreItsLinesByList(string text, string expected) =>
        Assert.Equal(expected, string.Join('|', ItemSections.Of(text, ItemSection.Bills).Select(line => $"{line.Section} {line.Line}")));
}
