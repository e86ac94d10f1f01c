using System.Collections.Immutable;
using Payday.Slips;
using Payday.Text;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Fonts.Standard14Fonts;
using UglyToad.PdfPig.Writer;

namespace Payday.Printing;

/// <summary>Puts laid-out text on PDF pages: in Courier, and what that lacks in a font of the machine, each sign in its own column.</summary>
internal static class PdfPaper
{
    /// <summary>The pages as a PDF file.</summary>
    /// <param name="paper">Clean lines.</param>
    /// <param name="size">The paper to print on.</param>
    /// <param name="title">The document's title, as a viewer shows it.</param>
    /// <param name="fonts">The fonts of the machine, or null for Courier alone.</param>
    /// <param name="print">How large the print is; the paper's lines must fit it.</param>
    /// <returns>The file. What no font has a letter for stands as plain letters or <c>?</c>, in the same columns (<see cref="Lacks"/>).</returns>
    public static byte[] Render(Paper paper, PaperSize size, string title, MachineFonts? fonts = null, PrintSize print = PrintSize.Usual)
    {
        ArgumentNullException.ThrowIfNull(paper);
        ArgumentNullException.ThrowIfNull(size);
        PdfMeasure measure = Measure(paper, size, print);
        ImmutableArray<ImmutableArray<string>> pages = paper.Pages(measure.LinesPerPage);
        var encoding = new DocumentEncoding(pages.SelectMany(page => page));

        using var file = new MemoryStream();
        using (var builder = new PdfDocumentBuilder(file, disposeStream: false, tokenWriter: new DocumentTokenWriter(encoding)))
        {
            builder.DocumentInformation.Title = TextFold.ToAscii(CleanText.OneLine(title));
            builder.DocumentInformation.Producer = "Payday";
            PdfDocumentBuilder.AddedFont font = builder.AddStandard14Font(print == PrintSize.Large ? Standard14Font.CourierBold : Standard14Font.Courier);
            MachineFont? other = fonts?.For(MissingSigns.Foreign(pages.SelectMany(page => page), encoding));
            var foreign = other is null ? null : new ForeignSigns(other, encoding);
            foreach (ImmutableArray<string> lines in pages)
            {
                AddPage(builder.AddPage(size.Width, size.Height), lines, measure, encoding, font, size, foreign);
            }
        }

        return file.ToArray();
    }

    /// <summary>How many pages a paper takes.</summary>
    public static int PagesOf(Paper paper, PaperSize size, PrintSize print) => paper.Pages(Measure(paper, size, print).LinesPerPage).Length;

    /// <summary>Which signs of a paper a PDF can't have here; null where it has all.</summary>
    /// <param name="paper">Clean lines.</param>
    /// <param name="fonts">The fonts of the machine, or null for Courier alone.</param>
    public static string? Lacks(Paper paper, MachineFonts? fonts)
    {
        ArgumentNullException.ThrowIfNull(paper);
        return MissingSigns.Said(paper.Lines, fonts);
    }

    private static PdfMeasure Measure(Paper paper, PaperSize size, PrintSize print) =>
        PdfMeasure.For(size, Math.Max(1, paper.Lines.Select(TextColumns.Width).DefaultIfEmpty().Max()), print);

    private static void AddPage(
        PdfPageBuilder page,
        ImmutableArray<string> lines,
        PdfMeasure measure,
        DocumentEncoding encoding,
        PdfDocumentBuilder.AddedFont font,
        PaperSize size,
        ForeignSigns? foreign)
    {
        double y = size.Height - measure.Margin - measure.FontSize;
        foreach (string line in lines)
        {
            if (line.Length > 0)
            {
                var start = new PdfPoint(measure.Margin, y);
                CodedText.Add(page, encoding.Encode(foreign?.Without(line) ?? line), measure.FontSize, start, font);
                foreign?.Add(page, line, measure.FontSize, start);
            }

            y -= measure.LineHeight;
        }
    }
}
