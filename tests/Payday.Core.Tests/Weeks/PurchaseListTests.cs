using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Weeks;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Weeks.WeekHomes;

namespace Payday.Core.Tests.Weeks;

public class PurchaseListTests
{
    private static readonly LocalDate Saturday7 = new(2026, 3, 7);

    [Theory]
    [InlineData("2026-03-07, 12.50, Corner shop")]
    [InlineData("2026-03-07\t-12.50\tCorner shop\r")]
    [InlineData("2026-03-07;12.50;\"Corner shop\"")]
    [InlineData("2026-03-07 12.50 Corner shop")]
    [InlineData("7 Mar 2026; 12.50; Corner shop")]
    [InlineData("7 Mar; 12.50; Corner shop")]
    [InlineData("2026-03-07, Corner shop, 12.50")]
    [InlineData("2026-03-07;\"Corner shop\";-12.50")]
    public void Read_EachSeparator_IsUnderstood(string text) =>
        Assert.Equal(new PurchaseEntry(Saturday7, null, Usd(12.50m), "Corner shop"), Read(Closed, text).Lines.Single().Entry);

    [Theory]
    [InlineData("\r")]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Read_LineEndsOfAnyKind_EndALine(string end) => Assert.Equal(
        2, Read(WeekHomes.Closed, $"2026-03-07,8.40,Bakery{end}2026-03-08,23.10,Corner shop{end}").Lines.Length);

    [Fact]
    public void Read_DecimalComma_NeedsAnotherSeparator()
    {
        Book book = Closed with { Household = House with { Settings = House.Settings with { Numbers = NumberStyle.PointComma } } };
        Assert.Equal(Usd(1012.50m), Read(book, "2026-03-07;1.012,50;Bakery").Lines.Single().Entry.Amount);
    }

    [Fact]
    public void Read_BadLines_AreAllNamed()
    {
        PurchaseList list = Read(Closed, "2026-03-07, 12.50\n\n7.3.2026, 5, Bus\n2026-03-07, five, Bus\n2026-03-07, 0, Bus\n2026-03-08, 4, Bus");

        Assert.Equal(
            [
                "Line 1: write date, amount and text, such as 2026-03-07, 12.50, Corner shop.",
                "Line 3: '7.3.2026': It can be 7 March or 3 July; write it like 2026-03-12 or 12 Mar 2026.",
                "Line 4: 'five' is not an amount; write it like 12.55.",
                "Line 5: the amount is zero; leave the line out.",
            ],
            list.Faults.Select(fault => fault.ToString()));
        Assert.Equal(6, list.Lines.Single().Number);
    }

    [Theory]
    [InlineData("2026-03-07, -8, Bakery\n2026-03-07, 900, Wage\n2026-03-08, -4, Bus", 2)]
    [InlineData("2026-03-07, 8, Bakery\n2026-03-07, -3, Bottles back\n2026-03-08, 4, Bus", 2)]
    [InlineData("2026-03-07, -8, Bakery\n2026-03-07, 900, Wage", 2)]
    public void Read_BothSigns_MoneyThatCameInIsNoPurchase(string text, int line)
    {
        PurchaseList list = Read(Closed, text);

        Assert.Equal(
            $"Line {line}: its amount has another sign than most: money that came in is no purchase, so leave the line out.",
            list.Faults.Single().ToString());
        Assert.Equal(["Bakery", .. list.Lines.Skip(1).Select(_ => "Bus")], list.Lines.Select(read => read.Entry.What));
    }

    [Fact]
    public void Read_ADayStillToCome_IsRefused()
    {
        PurchaseList list = Read(Closed, "2026-03-13, 4, Bus\n2026-03-14, 4, Bus");

        Assert.Equal("Line 2: '2026-03-14': that day is still to come.", list.Faults.Single().ToString());
        Assert.Single(list.Lines);
    }

    [Fact]
    public void Read_DecimalComma_ShowsAnExampleThatCanBeRead()
    {
        Book book = Closed with { Household = House with { Settings = House.Settings with { Numbers = NumberStyle.PointComma } } };

        Assert.Equal("Line 1: write date, amount and text, such as 2026-03-07; 12,50; Corner shop.", Read(book, "2026-03-07").Faults.Single().ToString());
        Assert.Equal(Usd(12.50m), Read(book, PurchaseList.Example(NumberStyle.PointComma)).Lines.Single().Entry.Amount);
    }

    [Fact]
    public void Guess_LikeEarlierOnes_TakesTheNearestWords()
    {
        Book book = Closed.Spend("food", 5, Saturday7, "CORNER SHOP 0441").Spend("fares", 5, Saturday7, "City bus").Spend(null, 5, Saturday7, "Shop of hats");

        Assert.Equal("food", PotGuess.For(book, "Corner shop 0517")!.PotId);
        Assert.Equal("fares", PotGuess.For(book, "city bus 12")!.PotId);
        Assert.Null(PotGuess.For(book, "hats shop")!.PotId);
        Assert.Null(PotGuess.For(book, "Chemist 0441"));
        Assert.Null(PotGuess.For(CardPurchases.Undo(book, 2, Saturday7).Value!, "bus"));
    }

    [Fact]
    public void Enter_AllOrNone_NamesTheLine()
    {
        PurchaseLine[] lines = [.. Read(Closed, "2026-03-08, 50, a\n2026-03-07, 40, b\n2026-03-09, 45, c").Lines.Select(line => line.For("food"))];

        Assert.Equal(
            "Line 3: Food has 30.00, less than 45.00; enter what it has, and the rest on another pot or the buffer.",
            PurchaseList.Enter(Closed, lines).Fault);
        Book book = PurchaseList.Enter(Closed, lines[..2]).Value!;
        Assert.Equal(["b", "a"], book.Weeks.Purchases.Select(purchase => purchase.What));
    }

    private static PurchaseList Read(Book book, string text) => PurchaseList.Read(book, text, Friday13March);
}
