using System.Collections.Immutable;
using Payday.Slips;
using Payday.Text;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Fonts.Standard14Fonts;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.TextShowing;
using UglyToad.PdfPig.Writer;

namespace Payday.Printing;

/// <summary>Puts laid-out text on PDF pages, in Courier.</summary>
public static class PdfPaper
{
    /// <summary>The pages as a PDF file.</summary>
    /// <param name="paper">Clean lines.</param>
    /// <param name="size">The paper to print on.</param>
    /// <param name="title">The document's title, as a viewer shows it.</param>
    /// <returns>The file. What Courier has no letter for stands as plain letters or <c>?</c>, in the same columns.</returns>
    public static byte[] Render(Paper paper, PaperSize size, string title)
    {
        ArgumentNullException.ThrowIfNull(paper);
        ArgumentNullException.ThrowIfNull(size);
        PdfMeasure measure = PdfMeasure.For(size, Math.Max(1, paper.Lines.Select(TextColumns.Width).DefaultIfEmpty().Max()));
        ImmutableArray<ImmutableArray<string>> pages = paper.Pages(measure.LinesPerPage);
        var encoding = new CourierEncoding(pages.SelectMany(page => page));

        using var file = new MemoryStream();
        using (var builder = new PdfDocumentBuilder(file, disposeStream: false, tokenWriter: new CourierTokenWriter(encoding)))
        {
            builder.DocumentInformation.Title = TextFold.ToAscii(CleanText.OneLine(title));
            builder.DocumentInformation.Producer = "Payday";
            PdfDocumentBuilder.AddedFont font = builder.AddStandard14Font(Standard14Font.Courier);
            foreach (ImmutableArray<string> lines in pages)
            {
                AddPage(builder.AddPage(size.Width, size.Height), lines, measure, encoding, font, size);
            }
        }

        return file.ToArray();
    }

    private static void AddPage(
        PdfPageBuilder page,
        ImmutableArray<string> lines,
        PdfMeasure measure,
        CourierEncoding encoding,
        PdfDocumentBuilder.AddedFont font,
        PaperSize size)
    {
        double y = size.Height - measure.Margin - measure.FontSize;
        foreach (string line in lines)
        {
            if (line.Length > 0)
            {
                AddLine(page, encoding.Encode(line), measure.FontSize, new PdfPoint(measure.Margin, y), font);
            }

            y -= measure.LineHeight;
        }
    }

    // The library maps letters to codes of its own. So it sets up a line of one letter, and then that letter is
    // replaced by the codes of our encoding.
    private static void AddLine(PdfPageBuilder page, byte[] codes, double fontSize, PdfPoint start, PdfDocumentBuilder.AddedFont font)
    {
        page.AddText("x", fontSize, start, font);
        List<IGraphicsStateOperation> operations = page.CurrentStream.Operations;
        operations[operations.FindLastIndex(operation => operation is ShowText)] = new ShowText(codes);
    }
}
