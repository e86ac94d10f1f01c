using System.Collections.Immutable;
using Payday.Drawing;
using Payday.Text;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Fonts.Standard14Fonts;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.General;
using UglyToad.PdfPig.Graphics.Operations.PathConstruction;
using UglyToad.PdfPig.Graphics.Operations.PathPainting;
using UglyToad.PdfPig.Writer;

namespace Payday.Printing;

/// <summary>Drawn pages as a PDF file: vectors in shades of grey, and words in Helvetica; what that lacks comes from a font of the machine.</summary>
internal static class DrawnPdf
{
    /// <summary>The pages as a PDF file.</summary>
    /// <param name="pages">One or more.</param>
    /// <param name="title">The document's title, as a viewer shows it.</param>
    /// <param name="fonts">The fonts of the machine, or null for Helvetica alone.</param>
    /// <returns>The file. What no font has a letter for stands as plain letters or <c>?</c> (<see cref="Lacks"/>).</returns>
    public static byte[] Render(ImmutableArray<DrawnPage> pages, string title, MachineFonts? fonts = null)
    {
        ImmutableArray<string> words = Words(pages);
        var encoding = new DocumentEncoding(words);
        MachineFont? other = fonts?.For(MissingSigns.Foreign(words, encoding));
        ForeignSigns? foreign = other is null ? null : new ForeignSigns(other, encoding);
        using var file = new MemoryStream();
        using (var builder = new PdfDocumentBuilder(file, disposeStream: false, tokenWriter: new DocumentTokenWriter(encoding)))
        {
            builder.DocumentInformation.Title = TextFold.ToAscii(CleanText.OneLine(title));
            builder.DocumentInformation.Producer = "Payday";
            var type = new DrawnType(builder.AddStandard14Font(Standard14Font.Helvetica), builder.AddStandard14Font(Standard14Font.HelveticaBold), encoding, foreign);
            foreach (DrawnPage page in pages)
            {
                PdfPageBuilder onto = builder.AddPage(page.Width, page.Height);
                foreach (Mark mark in page.Marks)
                {
                    Add(onto, page.Height, mark, type);
                }
            }
        }

        return file.ToArray();
    }

    /// <summary>Which signs of some pages a PDF can't have here; null where it has all.</summary>
    /// <inheritdoc cref="MissingSigns.Said"/>
    public static string? Lacks(ImmutableArray<DrawnPage> pages, MachineFonts? fonts) => MissingSigns.Said(Words(pages), fonts);

    private static ImmutableArray<string> Words(ImmutableArray<DrawnPage> pages) => [.. pages.SelectMany(page => page.Marks).OfType<Mark.Text>().Select(text => text.Words)];

    private static void Add(PdfPageBuilder page, double height, Mark mark, DrawnType type)
    {
        List<IGraphicsStateOperation> to = page.CurrentStream.Operations;
        switch (mark)
        {
            case Mark.Text text:
                to.Add(new SetNonStrokeColorDeviceGray(text.Shade));
                type.Add(page, text, new PdfPoint(text.X, height - text.Y));
                break;
            case Mark.Area area:
                to.AddRange([new SetNonStrokeColorDeviceGray(area.Shade), new AppendRectangle(area.X, height - area.Y - area.Height, area.Width, area.Height), FillPathNonZeroWinding.Value]);
                break;
            case Mark.Outline box:
                to.AddRange([new SetStrokeColorDeviceGray(box.Shade), new SetLineWidth(box.Thickness), new AppendRectangle(box.X, height - box.Y - box.Height, box.Width, box.Height), StrokePath.Value]);
                break;
            case Mark.Stroke line:
                to.AddRange([new SetStrokeColorDeviceGray(line.Shade), new SetLineWidth(line.Thickness), .. Through(line.Points, height), StrokePath.Value]);
                break;
            case Mark.Shape shape:
                to.AddRange([new SetNonStrokeColorDeviceGray(shape.Shade), .. Through(shape.Points, height), FillPathNonZeroWinding.Value]);
                break;
        }
    }

    private static IEnumerable<IGraphicsStateOperation> Through(ImmutableArray<(double X, double Y)> points, double height) => points.Select((point, i) =>
        i == 0 ? (IGraphicsStateOperation)new BeginNewSubpath(point.X, height - point.Y) : new AppendStraightLineSegment(point.X, height - point.Y));
}
