using Payday.Core.Amounts;
using Payday.Printing;
using Payday.Slips;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Payday.Tests.Printing;

public sealed class MachineFontsTests
{
    [Fact]
    public void Lacks_SignsThatNoFontHas_NamesThem() => Assert.Equal(
        "No font of this machine has 買い物 in a way a PDF can take: ? stands there. Print it without a PDF, or write such names in Latin letters.",
        PdfPaper.Lacks(Laid("買い物 10.00?"), null));

    [Fact]
    public void Lacks_LettersOfCourierAndPlainOnes_IsNull() => Assert.Null(PdfPaper.Lacks(Laid("Żywność Café 5€…", "─ x"), null));

    [Fact]
    public void Render_SignsOfAFontOfTheMachine_StandInTheirColumns()
    {
        var fonts = MachineFonts.OfSystem();
        Assert.SkipWhen(fonts.For(['Е', 'д', 'а']) is not { Count: 3 }, "No font of this machine has Cyrillic letters.");
        Paper paper = Laid("Еда и дом  12.00", "Ωμέγα     800.00");

        Assert.Null(PdfPaper.Lacks(paper, fonts));
        using PdfDocument pdf = PdfDocument.Open(PdfPaper.Render(paper, PaperSize.A6, "Filling sheet", fonts));
        Page page = pdf.GetPage(1);
        Assert.DoesNotContain(page.Letters, letter => letter.Value == "?");
        Assert.Equal(["12.00", "800.00"], page.Letters.Where(letter => letter.Value.Trim().Length > 0)
            .GroupBy(letter => letter.StartBaseLine.Y).OrderByDescending(line => line.Key).Select(line => string.Concat(line.Select(letter => letter.Value))));

        // Each sign stands within its column, first line first.
        PdfMeasure measure = PdfMeasure.For(PaperSize.A6, 16);
        PdfRectangle[] signs = [.. page.Paths.Select(path => path.GetBoundingRectangle()!.Value)];
        int[] columns = [.. paper.Lines.SelectMany(line => line.Index().Where(sign => char.IsLetter(sign.Item)).Select(sign => sign.Index))];
        Assert.Equal(columns, signs.Select(sign => (int)Math.Floor((sign.Centroid.X - measure.Margin) / PdfMeasure.WidthOf(measure.FontSize))));
        Assert.All(signs, sign => Assert.InRange(sign.Height, measure.FontSize * 0.3, measure.FontSize));
    }

    // Right to left and joined: one by one they would be wrong.
    [Fact]
    public void For_LettersThatArePutTogether_IsNull() => Assert.Null(MachineFonts.OfSystem().For(['ا', 'ب', 'א', 'क']));

    [Fact]
    public void For_FilesThatAreNoFonts_PassesThemOver()
    {
        using var scratch = new ScratchFolder();
        File.WriteAllText(scratch.In("broken.ttf"), "no font");
        File.WriteAllBytes(scratch.In("empty.TTF"), []);

        Assert.Null(new MachineFonts(scratch.Path, scratch.In("missing"), "relative").For(['Е']));
    }

    [Theory]
    [InlineData("USD", "Letter")]
    [InlineData("CAD", "Letter")]
    [InlineData("MXN", "Letter")]
    [InlineData("EUR", "A4")]
    [InlineData("GBP", "A4")]
    [InlineData("JPY", "A4")]
    public void SheetFor_Currency_IsThePaperInUseThere(string code, string size) =>
        Assert.Equal(size, PaperSize.SheetFor(Currency.FromCode(code)).Name);

    private static Paper Laid(params string[] lines) => new([], [[.. lines]]);
}
