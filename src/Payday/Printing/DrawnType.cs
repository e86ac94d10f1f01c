using System.Text;
using Payday.Drawing;
using Payday.Text;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Writer;

namespace Payday.Printing;

/// <summary>Puts words on a drawn page, sign by sign where another font must help out.</summary>
internal sealed class DrawnType(PdfDocumentBuilder.AddedFont regular, PdfDocumentBuilder.AddedFont bold, DocumentEncoding encoding, ForeignSigns? foreign)
{
    /// <summary>Adds words.</summary>
    /// <param name="page">The page.</param>
    /// <param name="text">The words.</param>
    /// <param name="start">Where they begin, on their base line.</param>
    public void Add(PdfPageBuilder page, Mark.Text text, PdfPoint start)
    {
        double x = start.X;
        var run = new StringBuilder();
        foreach (string sign in TextColumns.Clusters(text.Words))
        {
            if (foreign?.IsForeign(sign) != true)
            {
                run.Append(sign);
                continue;
            }

            x = AddRun(page, run, text, new PdfPoint(x, start.Y));
            double room = TypeWidths.OfSign(sign, text.IsBold) * text.Size;
            foreign.AddSign(page, sign[0], text.Size, room, new PdfPoint(x, start.Y));
            x += room;
        }

        AddRun(page, run, text, new PdfPoint(x, start.Y));
    }

    private double AddRun(PdfPageBuilder page, StringBuilder run, Mark.Text text, PdfPoint start)
    {
        if (run.Length == 0)
        {
            return start.X;
        }

        string words = run.ToString();
        run.Clear();
        CodedText.Add(page, encoding.Encode(words), text.Size, start, text.IsBold ? bold : regular);
        return start.X + TypeWidths.Of(words, text.Size, text.IsBold);
    }
}
