using System.Collections.Immutable;
using Payday.Text;

namespace Payday.Drawing;

/// <summary>A page that is being drawn.</summary>
/// <param name="width">In whole points.</param>
/// <param name="height">In whole points.</param>
/// <param name="margin">What is left blank on all sides, in points.</param>
internal sealed class Sketch(int width, int height, double margin)
{
    /// <summary>Lines and words.</summary>
    public const double Black = 0;

    /// <summary>Words of less weight: 7 : 1 on white (WCAG 2.2, 1.4.6).</summary>
    public const double Quiet = 0.33;

    /// <summary>Lines that lead the eye.</summary>
    public const double Hairline = 0.7;

    private readonly ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();

    /// <summary>The left end of what may be drawn.</summary>
    public double Left => margin;

    /// <summary>The right end of it.</summary>
    public double Right => width - margin;

    /// <summary>Its upper end.</summary>
    public double Top => margin;

    /// <summary>Its lower end.</summary>
    public double Bottom => height - margin;

    /// <summary>The page as drawn.</summary>
    public DrawnPage Page => new(width, height, marks.ToImmutable());

    /// <summary>Words that begin somewhere; where they are too wide they are cut.</summary>
    /// <returns>Where they end.</returns>
    public double Words(double x, double y, string words, double size, bool bold = false, double shade = Black, double room = double.MaxValue)
    {
        string cut = TypeWidths.Cut(CleanText.OneLine(words), room, size, bold);
        if (cut.Length > 0)
        {
            marks.Add(new Mark.Text(x, y, cut, size, bold, shade));
        }

        return x + TypeWidths.Of(cut, size, bold);
    }

    /// <summary>Words that end somewhere, whole.</summary>
    public void Ending(double right, double y, string words, double size, bool bold = false, double shade = Black) =>
        Words(right - TypeWidths.Of(CleanText.OneLine(words), size, bold), y, words, size, bold, shade);

    /// <summary>Words around a middle, whole.</summary>
    public void Centred(double middle, double y, string words, double size, bool bold = false, double shade = Black) =>
        Words(middle - (TypeWidths.Of(CleanText.OneLine(words), size, bold) / 2), y, words, size, bold, shade);

    /// <summary>A level line.</summary>
    public void Rule(double from, double to, double y, double thickness = 0.5, double shade = Hairline) =>
        Stroke(thickness, shade, (from, y), (to, y));

    /// <summary>An upright line.</summary>
    public void Post(double x, double from, double to, double thickness = 0.5, double shade = Hairline) =>
        Stroke(thickness, shade, (x, from), (x, to));

    /// <summary>A line through points.</summary>
    public void Stroke(double thickness, double shade, params ImmutableArray<(double X, double Y)> points) => marks.Add(new Mark.Stroke(points, thickness, shade));

    /// <summary>A filled shape between points.</summary>
    public void Shape(double shade, params ImmutableArray<(double X, double Y)> points) => marks.Add(new Mark.Shape(points, shade));

    /// <summary>A filled rectangle.</summary>
    public void Area(double x, double y, double wide, double high, double shade) => marks.Add(new Mark.Area(x, y, wide, high, shade));

    /// <summary>A box to tick, on a base line.</summary>
    /// <param name="x">Its left side.</param>
    /// <param name="y">The base line.</param>
    /// <param name="size">Of the words beside it.</param>
    public void Box(double x, double y, double size)
    {
        double side = BoxOf(size);
        marks.Add(new Mark.Outline(x, y - side + (size * 0.06), side, side, Math.Max(0.7, size * 0.07), Black));
    }

    /// <summary>The outline of a rectangle.</summary>
    public void Outline(double x, double y, double wide, double high, double thickness) => marks.Add(new Mark.Outline(x, y, wide, high, thickness, Black));

    /// <summary>The side of a box to tick.</summary>
    public static double BoxOf(double size) => size * 0.8;
}
