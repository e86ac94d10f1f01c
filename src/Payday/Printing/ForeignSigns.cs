using System.Text;
using Payday.Text;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.PathConstruction;
using UglyToad.PdfPig.Graphics.Operations.PathPainting;
using UglyToad.PdfPig.Writer;

namespace Payday.Printing;

/// <summary>Draws the signs of a line that Courier lacks, each at its column, from the outlines of a font of the machine.</summary>
/// <remarks>Outlines, not the font itself: the library fails at parts of some fonts, and a slip is for paper, not for searching.</remarks>
/// <param name="font">The font.</param>
/// <param name="encoding">What Courier has.</param>
internal sealed class ForeignSigns(MachineFont font, DocumentEncoding encoding)
{
    // Outlines of TrueType have curves with one control point, those of a PDF two, each two thirds of the way to it.
    private const double TowardsControl = 2.0 / 3.0;

    /// <summary>Whether a sign is one of such.</summary>
    public bool IsForeign(string sign) => sign.Length == 1 && !encoding.Has(sign[0]) && font.Has(sign[0]);

    /// <summary>The line with blanks in the place of such signs.</summary>
    public string Without(string line)
    {
        var kept = new StringBuilder(line.Length);
        foreach (string sign in TextColumns.Clusters(line))
        {
            kept.Append(IsForeign(sign) ? new string(' ', TextColumns.ClusterWidth(sign)) : sign);
        }

        return kept.ToString();
    }

    /// <summary>Adds the signs of a line.</summary>
    /// <param name="page">The page.</param>
    /// <param name="line">The line, with the signs.</param>
    /// <param name="fontSize">In points.</param>
    /// <param name="start">Where the line begins.</param>
    public void Add(PdfPageBuilder page, string line, double fontSize, PdfPoint start)
    {
        int column = 0;
        foreach (string sign in TextColumns.Clusters(line))
        {
            int width = TextColumns.ClusterWidth(sign);
            if (IsForeign(sign))
            {
                AddSign(page, sign[0], fontSize, width * PdfMeasure.WidthOf(fontSize), new PdfPoint(start.X + (column * PdfMeasure.WidthOf(fontSize)), start.Y));
            }

            column += width;
        }
    }

    /// <summary>Adds one of such signs.</summary>
    /// <param name="page">The page.</param>
    /// <param name="sign">The sign.</param>
    /// <param name="fontSize">In points.</param>
    /// <param name="room">In how much room; it is made narrower where that is less than its own.</param>
    /// <param name="start">Where the room begins.</param>
    public void AddSign(PdfPageBuilder page, char sign, double fontSize, double room, PdfPoint start)
    {
        double across = Math.Min(fontSize, room / font.Advance(sign));
        Draw(page.CurrentStream.Operations, font.Outline(sign), point => new PdfPoint(
            start.X + ((room - (across * font.Advance(sign))) / 2) + (across * font.Em(point.X)),
            start.Y + (fontSize * font.Em(point.Y))));
    }

    private static void Draw(List<IGraphicsStateOperation> to, IReadOnlyList<PdfSubpath> outline, Func<PdfPoint, PdfPoint> placed)
    {
        foreach (PdfSubpath.IPathCommand command in outline.SelectMany(path => path.Commands))
        {
            to.AddRange(command switch
            {
                PdfSubpath.Move move => [Begin(placed(move.Location))],
                PdfSubpath.Line line => [Line(placed(line.To))],
                PdfSubpath.QuadraticBezierCurve curve => [Curve(
                    placed(Between(curve.StartPoint, curve.ControlPoint)), placed(Between(curve.EndPoint, curve.ControlPoint)), placed(curve.EndPoint))],
                PdfSubpath.CubicBezierCurve curve => [Curve(placed(curve.FirstControlPoint), placed(curve.SecondControlPoint), placed(curve.EndPoint))],
                _ => (IGraphicsStateOperation[])[CloseSubpath.Value],
            });
        }

        to.Add(FillPathNonZeroWinding.Value);
    }

    private static BeginNewSubpath Begin(PdfPoint point) => new(point.X, point.Y);

    private static AppendStraightLineSegment Line(PdfPoint to) => new(to.X, to.Y);

    private static AppendDualControlPointBezierCurve Curve(PdfPoint first, PdfPoint second, PdfPoint end) =>
        new(first.X, first.Y, second.X, second.Y, end.X, end.Y);

    private static PdfPoint Between(PdfPoint end, PdfPoint control) =>
        new(end.X + (TowardsControl * (control.X - end.X)), end.Y + (TowardsControl * (control.Y - end.Y)));
}
