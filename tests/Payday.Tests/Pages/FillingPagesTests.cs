using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Receiving;
using Payday.Pages;
using Payday.Printing;
using Payday.Slips;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Pages;

/// <summary>The filling sheet as it is drawn, read back from its file.</summary>
public sealed class FillingPagesTests
{
    private static readonly MachineFonts NoFonts = new();
    private static readonly Currency Usd = Currency.FromCode("USD");

    [Theory]
    [InlineData("letter", "Letter", "Usual")]
    [InlineData("a4", "A4", "Usual")]
    [InlineData("a6", "A6", "Usual")]
    [InlineData("large", "Letter", "Large")]
    public void Draw_OfTheDemo_IsAsRecorded(string golden, string paper, string print)
    {
        using var demo = new DemoBook();
        demo.CloseOne();
        ClosedPayday payday = demo.Session.Book.LastClosed!;
        FillingSheetData data = BankPapers.Filling(demo.Session.Book, ReceivedNotes.Of(demo.Session.Book, payday));

        ImmutableArray<ReadPage> pages = Read(data, PaperSize.Parse(paper).Value!, Enum.Parse<PrintSize>(print));

        Assert.Equal(print == "Usual" && paper != "A6" ? 1 : 2, pages.Length);
        Golden.Equal($"filling-{golden}", pages.SelectMany(page => page.Lines.Append("")));
    }

    [Theory]
    [InlineData("usd")]
    [InlineData("eur")]
    [InlineData("jpy")]
    [InlineData("empty")]
    public void Draw_OfAnySample_IsAsRecorded(string name) =>
        Golden.Equal($"filling-{name}", Read(Samples.Sheet(name), PaperSize.A4, PrintSize.Usual).SelectMany(page => page.Lines));

    /// <summary>Whatever the pots, weeks and notes: clean pages, each amount whole, a box for each envelope, no type below its least.</summary>
    [Fact]
    public void Draw_AnySheet_IsCleanAndWhole() => Gen.Select(GenSheet(30), Gen.OneOf("A4", "Letter", "A6"), Gen.Bool).Sample(
        (data, paper, isLarge) =>
        {
            PaperSize size = isLarge ? PaperSize.A4 : PaperSize.Parse(paper).Value!;
            string[] words = [.. Read(data, size, isLarge ? PrintSize.Large : PrintSize.Usual).SelectMany(page => page.Words)];
            foreach (FillingRow row in data.Rows.Where(row => row.Notes.Any(note => note.Count > 0)))
            {
                string amount = NoteCounts.Worth(row.Notes, Usd).ToString(data.Style);
                Assert.Contains(words, word => word.EndsWith(amount, StringComparison.Ordinal));
            }
        },
        iter: 40);

    [Fact]
    public void Draw_FiveHundredPots_SaysHowManyPages()
    {
        var row = new FillingRow("Pot", null, Samples.Notes(Usd, (20, 1), (5, 3)));
        FillingRow[] rows = [.. Enumerable.Range(1, 500).Select(i => row with { Pot = $"Pot {i}", Week = i % 2 == 0 ? Samples.Friday : null })];
        var data = new FillingSheetData(Samples.Friday, Usd, NumberStyle.CommaPoint, [], [.. rows], [.. rows.SelectMany(one => one.Notes)], [], [], []);

        ImmutableArray<ReadPage> pages = Read(data, PaperSize.Letter, PrintSize.Usual);

        Assert.InRange(pages.Length, 5, 15);
        Assert.Equal(pages.Select((_, i) => $"Page {i + 1} of {pages.Length}"), pages.Select(page => page.Words.Single(words => words.StartsWith("Page ", StringComparison.Ordinal))));
        Assert.All(pages, page => Assert.Contains("Pot", page.Words));
        Assert.Equal(rows.Select(one => one.Pot).Order(StringComparer.Ordinal), pages.SelectMany(page => page.Words).Where(words => words.StartsWith("Pot ", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
    }

    private static ImmutableArray<ReadPage> Read(FillingSheetData data, PaperSize size, PrintSize print)
    {
        PrintedPaper printed = PrintedPaper.Filling(data, size, print, NoFonts);
        ImmutableArray<ReadPage> pages = ReadPage.Of(printed.Pdf);
        Assert.Equal(printed.Pages, pages.Length);
        double least = print == PrintSize.Large ? PrintSizes.LeastLarge : 9;
        foreach (ReadPage page in pages)
        {
            page.IsClean(size.Margin);
            Assert.True(page.SmallestType >= least, page.SmallestType.ToString(CultureInfo.InvariantCulture));
            Assert.DoesNotContain(page.Words, words => words.Any(char.IsControl));
        }

        return pages;
    }

    private static Gen<FillingSheetData> GenSheet(int most) =>
        Gen.Select(
            Gen.Select(
                Gen.OneOf("Groceries", "買い物", "A very long name for such a small pot of money, which goes on", "", "a\u001b[2J\nb", "Fares"),
                Gen.Int[-1, 5],
                Gen.Select(Gen.OneOf(100L, 50, 20, 10, 5, 2, 1), Gen.OneOf(Gen.Long[0, 12], Gen.Long[0, 2_000_000_000])).Array[0, 5]).Array[0, most],
            Gen.Int[0, 9]).Select((rows, kept) =>
            {
                FillingRow[] all =
                [
                    .. rows.Select(row => new FillingRow(row.Item1, row.Item2 < 0 ? null : Samples.Friday.PlusWeeks(row.Item2), [.. row.Item3.Select(note => new NoteLine(Money.FromUnits(note.Item1, Usd), note.Item2))]))
                        .DistinctBy(row => (row.Pot, row.Week)),
                ];
                return new FillingSheetData(
                    Samples.Friday, Usd, NumberStyle.CommaPoint, [], [.. all], [.. all.SelectMany(row => row.Notes)], [], [],
                    [.. all.Take(kept).Select((row, i) => new KeptBackLine(row.Pot, Money.FromMinorUnits(i * 37, Usd)))]);
            });
}
