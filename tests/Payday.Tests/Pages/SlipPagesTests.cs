using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Pages;
using Payday.Printing;
using Payday.Slips;
using Payday.Tests.Slips;

namespace Payday.Tests.Pages;

/// <summary>The slip as it is drawn, read back from its file.</summary>
public sealed class SlipPagesTests
{
    private static readonly MachineFonts NoFonts = new();
    private static readonly Currency Usd = Currency.FromCode("USD");

    [Theory]
    [InlineData("usd", "Usual")]
    [InlineData("usd", "Large")]
    [InlineData("eur", "Usual")]
    [InlineData("jpy", "Large")]
    [InlineData("big", "Usual")]
    [InlineData("big", "Large")]
    [InlineData("empty", "Usual")]
    [InlineData("deposit", "Large")]
    [InlineData("machine", "Usual")]
    public void Draw_OfAnySample_IsAsRecorded(string name, string print) => Golden.Equal(
        $"slip-{name}-{print.ToUpperInvariant()[0]}",
        Read(Samples.Slip(name), Enum.Parse<PrintSize>(print)).SelectMany(page => page.Lines));

    [Fact]
    public void Draw_SeveralTrips_HasABoxForEach()
    {
        SlipData data = Samples.Slip("machine") with
        {
            Limit = Money.FromUnits(150, Usd),
            Trips = [new(Samples.Friday, Samples.Notes(Usd, (50, 1), (20, 5))), new(Samples.Friday.PlusDays(1), Samples.Notes(Usd, (20, 7)))],
            NoSmallMoney = ["Food", "Fares"],
        };

        string text = string.Join(' ', Read(data, PrintSize.Large).SelectMany(page => page.Words));

        Assert.Contains("Fri 6 Mar: press 150.00 (1 x 50, 5 x 20)", text, StringComparison.Ordinal);
        Assert.Contains("Sat 7 Mar: press 140.00 (7 x 20)", text, StringComparison.Ordinal);
        Assert.Contains("It gives too few small notes for Food, Fares;", text, StringComparison.Ordinal);
    }

    /// <summary>Whatever the notes: clean pages, the total whole, large print never below its least.</summary>
    [Fact]
    public void Draw_AnySlip_IsCleanAndWhole() =>
        Gen.Select(Gen.Select(Gen.OneOf(100L, 50, 20, 10, 5, 2, 1), Gen.OneOf(Gen.Long[0, 60], Gen.Long[0, 90_000_000_000])).Array[0, 9], Gen.Int[0, 6], Gen.Bool).Sample(
            (notes, head, isLarge) =>
            {
                ImmutableArray<NoteLine> lines = [.. notes.Select(note => new NoteLine(Money.FromUnits(note.Item1, Usd), note.Item2))];
                var data = new SlipData(new LocalDate(2026, 9, 30), Usd, NumberStyle.CommaPoint, [.. Enumerable.Repeat("A line of the person's own that is as long as some are, and\u0007 more", head)], lines);
                string[] words = [.. Read(data, isLarge ? PrintSize.Large : PrintSize.Usual).SelectMany(page => page.Words)];
                string total = NoteCounts.Worth(lines, Usd).ToString(data.Style);
                Assert.Contains(words, word => word.EndsWith(lines.All(line => line.Count == 0) ? "Nothing to withdraw." : total, StringComparison.Ordinal));
            },
            iter: 60);

    private static ImmutableArray<ReadPage> Read(SlipData data, PrintSize print)
    {
        PaperSize size = PrintedPaper.SizeOfSlip(data.Currency, print);
        PrintedPaper printed = PrintedPaper.Slip(data, size, print, NoFonts);
        ImmutableArray<ReadPage> pages = ReadPage.Of(printed.Pdf);
        Assert.Equal(printed.Pages, pages.Length);
        foreach (ReadPage page in pages)
        {
            page.IsClean(size.Margin);
            Assert.True(page.SmallestType >= (print == PrintSize.Large ? PrintSizes.LeastLarge : 9));
            Assert.DoesNotContain(page.Words, words => words.Any(char.IsControl));
        }

        return pages;
    }
}
