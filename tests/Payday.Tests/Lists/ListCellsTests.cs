using Payday.Tests.Sentences;
using System.Collections.Immutable;
using NodaTime;
using Payday.Commands;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Lists;

namespace Payday.Tests.Lists;

public class ListCellsTests
{
    private static readonly LocalDate Friday13March = new(2026, 3, 13);
    private static readonly Book Book = Book.Begin(DemoCommand.Household());

    // RFC 4180, sections 2.5 to 2.7, and what is made of the rest of it.
    [Theory]
    [InlineData("2026-03-07,\"1,250.00\",Corner shop", "1250.00", "Corner shop")]
    [InlineData("2026-03-07,12.50,\"Corner, shop\"", "12.50", "Corner, shop")]
    [InlineData("2026-03-07,12.50,\"Corner \"\"shop\"\"\"", "12.50", "Corner \"shop\"")]
    [InlineData("2026-03-07,12.50,\"Corner\nshop\"", "12.50", "Corner shop")]
    [InlineData("2026-03-07,12.50,\"Corner\n2026-03-08,4,shop\"", "12.50", "Corner 2026-03-08,4,shop")]
    [InlineData("2026-03-07;12.50;\"Corner shop\"", "12.50", "Corner shop")]
    [InlineData("2026-03-07;\"Corner shop\";-12.50", "12.50", "Corner shop")]
    [InlineData("2026-03-07, 12.50, Corner 5\" pipe", "12.50", "Corner 5\" pipe")]
    [InlineData("2026-03-07\t12.50\tCorner, shop; Main", "12.50", "Corner, shop; Main")]
    [InlineData("2026-03-07|12.50|Corner, shop", "12.50", "Corner, shop")]
    [InlineData("2026-03-07;12,50;Corner, shop", "12.50", "Corner, shop")]
    [InlineData("\uFEFF2026-03-07;12.50;Corner shop\r\n", "12.50", "Corner shop")]
    [InlineData("sep=|\n2026-03-07|12.50|Corner, shop", "12.50", "Corner, shop")]
    [InlineData("2026-03-07 12.50 \"Corner shop\"", "12.50", "Corner shop")]
    [InlineData("\"2026-03-07\",\"12.50\",\"Corner shop\"", "12.50", "Corner shop")]
    public void Readings_OfOneLine_ComeToOnePurchase(string text, string amount, string what)
    {
        PurchaseList list = Read(text);

        Assert.Empty(list.Faults);
        PurchaseEntry entry = list.Lines.Single().Entry;
        Assert.Equal((new LocalDate(2026, 3, 7), amount, what), (entry.Date, entry.Amount.ToPlain(), entry.What));
    }

    [Theory]
    [InlineData("\r")]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Readings_LineEndsOfAnyKind_EndALine(string end)
    {
        PurchaseList list = Read($"2026-03-07,8.40,Bakery{end}{end}2026-03-08,23.10,Corner shop{end}");

        Assert.Equal([1, 3], list.Lines.Select(line => line.Number));
    }

    [Fact]
    public void Readings_AQuoteThatIsNeverClosed_TakesNoOtherLine()
    {
        PurchaseList list = Read("2026-03-07,8.40,\"Bakery\n2026-03-08,23.10,Corner shop\n2026-03-09,4,Bus");

        Assert.Equal([1, 2, 3], list.Lines.Select(line => line.Number));
    }

    [Fact]
    public void Readings_AnotherSeparatorInALine_SplitsThatLineByIt()
    {
        PurchaseList list = Read("2026-03-07, 8.40, Bakery\n2026-03-08; 23.10; Corner shop\n2026-03-09\t4\tBus");

        Assert.Equal(["Bakery", "Corner shop", "Bus"], list.Lines.Select(line => line.Entry.What));
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n \n")]
    [InlineData("sep=;")]
    public void Readings_OfNothing_AreEmpty(string text)
    {
        PurchaseList list = Read(text);

        Assert.Empty(list.Lines);
        Assert.Empty(list.Faults);
    }

    [Fact]
    public void Readings_TooManyLines_AreRefusedInOneSentence() => Assert.Equal(
        "The list has 10001 lines, more than 10000; enter it in parts.",
        Read(string.Concat(Enumerable.Repeat("2026-03-07,1,a\n", 10_001))).Faults.Single().Said());

    private static PurchaseList Read(string text) => ListCells.Purchases(Book, text, Friday13March);
}
