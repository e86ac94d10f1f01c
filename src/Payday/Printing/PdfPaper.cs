using System.Collections.Immutable;
using Payday.Slips;
using Payday.Text;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Fonts.Standard14Fonts;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.TextShowing;
using UglyToad.PdfPig.Writer;

namespace Payday.Printing;

/// <summary>Puts laid-out text on PDF pages: in Courier, and what that lacks in a font of the machine, each sign in its own column.</summary>
internal static class PdfPaper
{
    private const int MostSigns = 12;

    /// <summary>The pages as a PDF file.</summary>
    /// <param name="paper">Clean lines.</param>
    /// <param name="size">The paper to print on.</param>
    /// <param name="title">The document's title, as a viewer shows it.</param>
    /// <param name="fonts">The fonts of the machine, or null for Courier alone.</param>
    /// <returns>The file. What no font has a letter for stands as plain letters or <c>?</c>, in the same columns (<see cref="Lacks"/>).</returns>
    public static byte[] Render(Paper paper, PaperSize size, string title, MachineFonts? fonts = null)
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
            MachineFont? other = fonts?.For(Foreign(pages.SelectMany(page => page), encoding));
            var foreign = other is null ? null : new ForeignSigns(other, encoding);
            foreach (ImmutableArray<string> lines in pages)
            {
                AddPage(builder.AddPage(size.Width, size.Height), lines, measure, encoding, font, size, foreign);
            }
        }

        return file.ToArray();
    }

    /// <summary>Which signs of a paper a PDF can't have here; null where it has all.</summary>
    /// <param name="paper">Clean lines.</param>
    /// <param name="fonts">The fonts of the machine, or null for Courier alone.</param>
    public static string? Lacks(Paper paper, MachineFonts? fonts)
    {
        ArgumentNullException.ThrowIfNull(paper);
        var encoding = new CourierEncoding(paper.Lines);
        MachineFont? other = fonts?.For(Foreign(paper.Lines, encoding));
        string[] signs =
        [
            .. paper.Lines.SelectMany(TextColumns.Clusters).Distinct()
                .Where(sign => !(sign.Length == 1 && other?.Has(sign[0]) == true) && TextFold.To(sign, encoding.Has).Contains('?', StringComparison.Ordinal) && sign != "?"),
        ];
        return signs.Length == 0 ? null
            : $"No font of this machine has {string.Concat(signs.Take(MostSigns))}{(signs.Length > MostSigns ? "..." : "")} in a way a PDF can take: ? stands there. Print it without a PDF, or write such names in Latin letters.";
    }

    // What Courier has no sign for, though plain letters may do in its place.
    private static ImmutableArray<char> Foreign(IEnumerable<string> lines, CourierEncoding encoding) =>
        [.. lines.SelectMany(TextColumns.Clusters).Where(sign => sign.Length == 1 && !encoding.Has(sign[0])).Select(sign => sign[0]).Distinct()];

    private static void AddPage(
        PdfPageBuilder page,
        ImmutableArray<string> lines,
        PdfMeasure measure,
        CourierEncoding encoding,
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
                AddLine(page, encoding.Encode(foreign?.Without(line) ?? line), measure.FontSize, start, font);
                foreign?.Add(page, line, measure.FontSize, start);
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
