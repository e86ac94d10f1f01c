using Payday.Tests.Sentences;
using System.Collections.Immutable;
using Payday.Printing;
using Payday.Slips;
using Payday.Tests.Slips;
using Payday.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Payday.Tests.Printing;

public class PdfPaperTests
{
    public static TheoryData<string> Sizes => ["A6", "A4", "Letter"];

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Render_Slip_HoldsItsLinesInsideThePage(string name)
    {
        PaperSize size = PaperSize.Parse(name).Value!;
        Paper slip = SlipLayout.Lay(Samples.Slip("usd"), size.Columns);
        using PdfDocument pdf = PdfDocument.Open(PdfPaper.Render(slip, size, "Withdrawal"));
        Page page = Assert.Single(pdf.GetPages());
        Assert.Equal((size.Width, size.Height), ((int)page.Width, (int)page.Height));
        Assert.Equal(slip.Lines.Where(line => line.Length > 0), Lines(page));
        Assert.All(page.Letters, letter => Assert.InRange(letter.BoundingBox.Right, 0, size.Width * 14.01 / 15));
    }

    // Polish, Czech, Turkish, German and French letters, the euro, and a letter that is typed with a mark of its own.
    [Fact]
    public void Render_LatinLetters_StandAsTheyAre() =>
        Assert.Equal(["Żywność ěščřž ğışİ Größe Ærø Café €5…", "Cafe"], Rendered("Żywność ěščřž ğışİ Größe Ærø Café €5…", "Cafe\u0301"));

    [Fact]
    public void Render_LettersCourierLacks_AreQuestionMarksInTheSameColumns() =>
        Assert.Equal(["??????  1 \\ (2) ?? -"], Rendered("買い物  1 \\ (2) 👩‍👩‍👧 ─"));

    [Fact]
    public void Render_MoreLettersThanCodes_DoesNotThrow()
    {
        string many = string.Concat(Enumerable.Range(0xA1, 0x17F - 0xA1).Select(i => (char)i));
        Assert.Equal(TextColumns.Width(many), Assert.Single(Rendered(many)).Length);
    }

    [Fact]
    public void Render_LongSheet_NumbersItsPagesAndRepeatsTheHead()
    {
        FillingSheetData sheet = Samples.Sheet("jpy");
        sheet = sheet with
        {
            Rows = [.. Enumerable.Repeat(sheet.Rows, 30).SelectMany(rows => rows)],
            Withdrawn = [.. Enumerable.Repeat(sheet.Withdrawn, 30).SelectMany(notes => notes)],
        };
        Paper paper = FillingSheetLayout.Lay(sheet, 42);
        using PdfDocument pdf = PdfDocument.Open(PdfPaper.Render(paper, PaperSize.A6, "Filling sheet"));
        int height = PdfMeasure.For(PaperSize.A6, 42).LinesPerPage;
        Assert.Equal(
            paper.Pages(height).SelectMany(page => page).Where(line => line.Length > 0).Select(TextFold.ToAscii),
            pdf.GetPages().SelectMany(page => Lines(page)));
        Assert.True(pdf.NumberOfPages > 1);
        Assert.All(pdf.GetPages(), page => Assert.StartsWith("Filling sheet", Lines(page)[0], StringComparison.Ordinal));
        Assert.Equal($"Page 2 of {pdf.NumberOfPages}", Lines(pdf.GetPage(2))[^1]);
    }

    [Fact]
    public void Render_NoLines_IsOneEmptyPage()
    {
        using PdfDocument pdf = PdfDocument.Open(PdfPaper.Render(new Paper([], []), PaperSize.A6, ""));
        Assert.Empty(Assert.Single(pdf.GetPages()).Letters);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void For_ColumnsOfThePaper_AreReadableAndFillAPage(string name)
    {
        PaperSize size = PaperSize.Parse(name).Value!;
        PdfMeasure measure = PdfMeasure.For(size, size.Columns);
        Assert.InRange(measure.FontSize, 9, 12);
        Assert.InRange((measure.LinesPerPage * measure.LineHeight) + (2 * measure.Margin), size.Height - measure.LineHeight, size.Height);
    }

    [Fact]
    public void Parse_UnknownSize_NamesTheChoices()
    {
        Assert.Same(PaperSize.Letter, PaperSize.Parse(" letter ").Value);
        Assert.Equal("There is no such paper size here; choose one of A6, A4, Letter.", PaperSize.Parse("A0").Fault.Said());
        Assert.False(PaperSize.Parse(null).Ok);
    }

    private static ImmutableArray<string> Rendered(params ImmutableArray<string> lines)
    {
        using PdfDocument pdf = PdfDocument.Open(PdfPaper.Render(new Paper([], [lines]), PaperSize.Letter, "Test"));
        return Lines(pdf.GetPage(1));
    }

    // Letters of one baseline, from left to right, as the PDF's own codes and encoding say.
    private static ImmutableArray<string> Lines(Page page) =>
    [
        .. page.Letters.GroupBy(letter => Math.Round(letter.StartBaseLine.Y, 2))
            .OrderByDescending(line => line.Key)
            .Select(line => string.Concat(line.OrderBy(letter => letter.StartBaseLine.X).Select(letter => letter.Value))),
    ];
}
