using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.CardPurchases;

public class PurchaseListTests
{
    private static readonly LocalDate Saturday7 = new(2026, 3, 7);

    [Theory]
    [InlineData("2026-03-07, 12.50, Corner shop")]
    [InlineData("2026-03-07\t-12.50\tCorner shop\r")]
    [InlineData("2026-03-07 12.50 Corner shop")]
    [InlineData("7 Mar 2026; 12.50; Corner shop")]
    [InlineData("7 Mar; 12.50; Corner shop")]
    [InlineData("2026-03-07, Corner shop, 12.50")]
    [InlineData("Corner shop; 2026-03-07; -12.50")]
    [InlineData("2026-03-07; 12.50; Corner; shop", "Corner, shop")]
    public void Read_OneDateOneAmountAndAText_IsUnderstoodInAnyOrder(string text, string what = "Corner shop") =>
        Assert.Equal(new PurchaseEntry(Saturday7, null, Usd(12.50m), what), Read(Closed, text).Lines.Single().Entry);

    // The forms that amounts have in banks' lists: common practice, no source.
    [Theory]
    [InlineData("12.50-")]
    [InlineData("- 12.50")]
    [InlineData("\u221212.50")]
    [InlineData("(12.50)")]
    [InlineData("-12.50 USD")]
    [InlineData("USD -12.50")]
    [InlineData("$-12.50")]
    [InlineData("-$12.50")]
    [InlineData("\u00A0-12.50\u202F")]
    public void Read_AmountsAsBanksWriteThem_AreUnderstood(string amount)
    {
        PurchaseList list = Read(Closed, $"2026-03-07; {amount}; Corner shop\n2026-03-07; 4; Bus");

        Assert.Equal((Usd(12.50m), false, true), (list.Lines[0].Entry.Amount, list.Lines[0].IsRefund, list.Lines[1].IsRefund));
    }

    [Theory]
    [InlineData("12,50", "1.234,00", 12.50, 1234)]
    [InlineData("12,50", "1.234", 12.50, 1234)]
    [InlineData("12,50", "1 234,00", 12.50, 1234)]
    [InlineData("12.50", "1,234", 12.50, 1234)]
    [InlineData("12.50", "1'234.00", 12.50, 1234)]
    [InlineData("12", "1,234", 12, 1234)]
    public void Read_AmountsWrittenInAnotherWay_AreReadSoInAllRows(string first, string second, decimal one, decimal other)
    {
        PurchaseList list = Read(Closed, $"2026-03-07; {first}; Bakery\n2026-03-08; {second}; Rent");

        Assert.Equal([Usd(one), Usd(other)], list.Lines.Select(line => line.Entry.Amount));
    }

    [Fact]
    public void Read_AmountsWrittenInTwoWays_AreReadAsTheHouseholdWritesThem()
    {
        PurchaseList list = Read(Closed, "2026-03-07; 12,50; Bakery\n2026-03-08; 3.20; Bus");

        Assert.Equal("Line 1: '12,50' is not an amount; write it like 12.55.", list.Faults.Single().Said());
        Assert.Equal(Usd(3.20m), list.Lines.Single().Entry.Amount);
    }

    [Theory]
    [InlineData("2026-03-07,1,250.00,Corner shop", "both '1' and '250.00'")]
    [InlineData("2026-03-07,1,250.00", "both '1' and '250.00'")]
    [InlineData("2026-03-07; 12.50; 42", "both '12.50' and '42'")]
    public void Read_TwoThatCanBeTheAmount_IsRefused(string text, string part) =>
        Assert.StartsWith($"Line 1: {part} can be its amount; ", Read(Closed, text).Faults.Single().Said(), StringComparison.Ordinal);

    [Theory]
    [InlineData("Date; Amount; Text")]
    [InlineData("Buchungstag; Betrag (EUR); Text")]
    public void Read_AFirstRowOfNames_IsPassedOver(string heading)
    {
        PurchaseList list = Read(Closed, heading + "\n2026-03-07; 12.50; Bakery");

        Assert.Empty(list.Faults);
        Assert.Equal(2, list.Lines.Single().Number);
    }

    [Fact]
    public void Read_DatesOfOneColumn_AreInOneOrder()
    {
        PurchaseList list = Read(Closed, "25.2.2026; 5; a\n7.3.2026; 5; b");
        Assert.Equal([new(2026, 2, 25), Saturday7], list.Lines.Select(line => line.Entry.Date));

        PurchaseList months = Read(Closed, "2/25/2026; 5; a\n3/7/2026; 5; b");
        Assert.Equal([new(2026, 2, 25), Saturday7], months.Lines.Select(line => line.Entry.Date));

        PurchaseList both = Read(Closed, "25/2/2026; 5; a\n2/25/2026; 5; b\n3/7/2026; 5; c");
        Assert.Equal("Line 3: '3/7/2026': It can be 3 July or 7 March; write it like 2026-03-12 or 12 Mar 2026.", both.Faults.Single().Said());
    }

    // Twelve is a month as well as a day: it decides nothing, and is decided by what stands beside it.
    [Theory]
    [InlineData("12/3/2026; 5; a")]
    [InlineData("3/12/2026; 5; a")]
    public void Read_ADateWithATwelve_IsNotSure(string text) => Assert.Single(Read(Closed, text).Faults);

    [Fact]
    public void Read_DatesWithATwelve_AreInTheOrderOfTheOthers()
    {
        Assert.Equal([new(2025, 12, 25), Saturday7], Read(Closed, "12/25/2025; 5; a\n3/7/2026; 5; b").Lines.Select(line => line.Entry.Date));
        Assert.Equal([new(2025, 12, 25), Saturday7], Read(Closed, "25/12/2025; 5; a\n7/3/2026; 5; b").Lines.Select(line => line.Entry.Date));
    }

    // Its pot is guessed from what was bought there before, and what came back still comes back.
    [Fact]
    public void Read_ARefundOfAShopThatIsKnown_StaysARefund()
    {
        Book known = Closed.Spend("food", 3, Saturday7, "Corner shop");
        PurchaseList list = Read(known, "2026-03-07; -12.50; Bakery\n2026-03-08; 4; Corner shop");
        PurchaseLine back = list.Lines.Single(line => line.Entry.What == "Corner shop");

        Assert.Equal((new PotId("food"), Usd(4), true), (back.Entry.PotId!.Value, back.Entry.Amount, back.IsRefund));
        Assert.False(list.Lines.Single(line => line.Entry.What == "Bakery").IsRefund);
    }

    [Fact]
    public void Without_ALineThatWasNotRead_LeavesTheOthers()
    {
        PurchaseList list = Read(Closed, "2026-03-07; x; a\n2026-03-07; 5; b\n2026-03-07; y; c");

        Assert.Equal([1, 3], list.Faults.OfType<ListFault.AtLine>().Select(fault => fault.Number));
        Assert.Equal([3], list.Without(1)!.Faults.OfType<ListFault.AtLine>().Select(fault => fault.Number));
        Assert.Empty(list.Without(2)!.Lines);
        Assert.Null(list.Without(4));
        Assert.Same(list, list.Choose(4, null));
    }

    [Fact]
    public void Read_DecimalComma_NeedsAnotherSeparator()
    {
        Book book = Closed with { Household = House with { Settings = House.Settings with { Numbers = NumberStyle.PointComma } } };
        Assert.Equal(Usd(1012.50m), Read(book, "2026-03-07;1.012,50;Bakery").Lines.Single().Entry.Amount);
    }

    // The day is the third cell of most lines, which one line doesn't have.
    [Fact]
    public void Read_ALineShorterThanTheColumnOfItsDay_IsNamed()
    {
        PurchaseList list = Read(Closed, "Corner shop, 12.50, 2026-03-07\nBakery, 4\nBus, 3, 2026-03-08");

        Assert.Equal(["Line 2: write date, amount and text, such as 2026-03-07, 12.50, Corner shop."], list.Faults.Select(fault => fault.Said()));
        Assert.Equal([1, 3], list.Lines.Select(line => line.Number));
    }

    // As many lines as may be are read, and one more is refused before anything of it is.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    public void Read_ManyLines_IsRefusedBeyondTheMost(int more, int faults)
    {
        PurchaseList list = Read(Closed, string.Concat(Enumerable.Repeat("2026-03-07, 1, Bus\n", PurchaseList.MostLines + more)));

        Assert.Equal((faults, faults == 0 ? PurchaseList.MostLines : 0), (list.Faults.Length, list.Lines.Length));
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
            list.Faults.Select(fault => fault.Said()));
        Assert.Equal(6, list.Lines.Single().Number);
    }

    [Theory]
    [InlineData("2026-03-07, -8, Bakery\n2026-03-07, 900, Wage\n2026-03-08, -4, Bus", 2)]
    [InlineData("2026-03-07, 8, Bakery\n2026-03-07, -3, Bottles back\n2026-03-08, 4, Bus", 2)]
    [InlineData("2026-03-07, -8, Bakery\n2026-03-07, 900, Wage", 2)]
    public void Read_BothSigns_MoneyThatCameInIsARefundWithoutAPot(string text, int line)
    {
        PurchaseList list = Read(Closed, text);

        Assert.Empty(list.Faults);
        Assert.Equal([line], list.Lines.Where(read => read.IsRefund).Select(read => read.Number));
        Assert.All(list.Lines, read => Assert.True(read.Entry.Amount.IsPositive));
    }

    [Fact]
    public void Read_NothingLikeItBefore_IsOpenAndNotTheBuffers()
    {
        Book book = Closed.Spend("food", 5, Saturday7, "CORNER SHOP 0441");
        PurchaseList list = Read(book, "2026-03-08, 4, Chemist\n2026-03-08, 6, Corner shop 0517");

        Assert.Equal([1], list.Open.Select(line => line.Number));
        Assert.Equal(("food", PotChoice.Guessed), (list.Lines[1].Entry.PotId?.Text, list.Lines[1].Choice));
        Assert.Equal("Line 1: no pot is known for it; pick one, or leave the line out.", PurchaseList.Enter(book, list.Lines).Fault.Said());
    }

    [Fact]
    public void Choose_ForOneLineOfAShop_FillsItsOthers()
    {
        PurchaseList list = Read(Closed, "2026-03-07, 4, Chemist 12\n2026-03-08, 6, CHEMIST 98\n2026-03-08, 7, Bus\n2026-03-09, 8, chemist")
            .Choose(4, new PotId("fares"))
            .Choose(1, new PotId("food"));

        Assert.Equal(["food", "food", null, "fares"], list.Lines.Select(line => line.Entry.PotId?.Text));
        Assert.Equal([PotChoice.Chosen, PotChoice.Alike, PotChoice.Open, PotChoice.Chosen], list.Lines.Select(line => line.Choice));
        Assert.Equal(list, list.Choose(99, new PotId("food")));
    }

    [Fact]
    public void Without_ALineOrAFault_LeavesItOut()
    {
        PurchaseList list = Read(Closed, "2026-03-07, 4, Bus\nnonsense\n2026-03-08, 6, Bus");

        Assert.Equal([3], list.Without(2)!.Without(1)!.Lines.Select(line => line.Number));
        Assert.Empty(list.Without(2)!.Faults);
        Assert.Null(list.Without(4));
    }

    [Fact]
    public void Read_SeveralReadings_TakesTheOneThatMostRowsMakeSenseBy()
    {
        ListRow[] wrong = [new(1, "", ["2026-03-07;12.50;Corner", "shop", "Main"]), new(2, "", ["2026-03-08", "1", "Bus"])];
        ListRow[] right = [new(1, "", ["2026-03-07", "12.50", "Corner, shop, Main"]), new(2, "", ["2026-03-08", "1", "Bus"])];

        Assert.Equal("Corner, shop, Main", PurchaseList.Read(Closed, [[.. wrong], [.. right]], row => row, Friday13March).Lines[0].Entry.What);
    }

    [Fact]
    public void Read_ADayStillToCome_IsRefused()
    {
        PurchaseList list = Read(Closed, "2026-03-13, 4, Bus\n2026-03-14, 4, Bus");

        Assert.Equal("Line 2: '2026-03-14': that day is still to come.", list.Faults.Single().Said());
        Assert.Single(list.Lines);
    }

    [Fact]
    public void Read_DecimalComma_ShowsAnExampleThatCanBeRead()
    {
        Book book = Closed with { Household = House with { Settings = House.Settings with { Numbers = NumberStyle.PointComma } } };

        Assert.Equal("Line 1: write date, amount and text, such as 2026-03-07; 12,50; Corner shop.", Read(book, "2026-03-07").Faults.Single().Said(NumberStyle.PointComma));
        Assert.Equal(Usd(12.50m), Read(book, Payday.Texts.PurchaseTexts.Example(NumberStyle.PointComma)).Lines.Single().Entry.Amount);
    }

    [Fact]
    public void Guess_LikeEarlierOnes_TakesTheNearestWords()
    {
        Book book = Closed.Spend("food", 5, Saturday7, "CORNER SHOP 0441").Spend("fares", 5, Saturday7, "City bus").Spend(null, 5, Saturday7, "Shop of hats");

        Assert.Equal("food", PotGuess.For(book, "Corner shop 0517")!.PotId?.Text);
        Assert.Equal("fares", PotGuess.For(book, "city bus 12")!.PotId?.Text);
        Assert.Null(PotGuess.For(book, "hats shop")!.PotId);
        Assert.Null(PotGuess.For(book, "Chemist 0441"));
        Assert.Null(PotGuess.For(Purchasing.Undo(book, 2, Saturday7).Value!, "bus"));
    }

    [Fact]
    public void Enter_AllOrNone_NamesTheLine()
    {
        PurchaseLine[] lines = [.. Read(Closed, "2026-03-08, 50, a\n2026-03-07, 40, b\n2026-03-09, 45, c").Lines.Select(line => line.For(new PotId("food")))];

        Assert.Equal(
            "Line 3: Food has 30.00, less than 45.00; enter what it has, and the rest on another pot or the buffer.",
            PurchaseList.Enter(Closed, lines).Fault.Said());
        Book book = PurchaseList.Enter(Closed, lines[..2]).Value!;
        Assert.Equal(["b", "a"], book.Weeks.Purchases.Select(purchase => purchase.What));
    }

    // Cells without quotes; the program splits them with a library.
    private static PurchaseList Read(Book book, string text)
    {
        ImmutableArray<ListRow> rows =
        [
            .. text.Split('\n').Select((row, i) => new ListRow(i + 1, row, Cells(row.Trim('\r')))).Where(row => row.Cells.Any(cell => cell.Length > 0)),
        ];
        return PurchaseList.Read(book, [rows], row => row, Friday13March);
    }

    private static ImmutableArray<string> Cells(string row)
    {
        char separator = Array.Find(['\t', ';', ','], row.Contains);
        return [.. (separator == default ? row.Split(' ', 3) : row.Split(separator)).Select(cell => cell.Trim(' '))];
    }
}
