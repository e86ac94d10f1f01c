using System.Collections.Immutable;

namespace Payday.Drawing;

/// <summary>Something on a page, in points from its upper left corner. One of the nested cases.</summary>
/// <remarks>A shade is from 0, black, to 1, the paper.</remarks>
internal abstract record Mark
{
    private Mark()
    {
    }

    /// <summary>Words on one line.</summary>
    /// <param name="X">Where they begin.</param>
    /// <param name="Y">Their base line.</param>
    /// <param name="Words">Clean text.</param>
    /// <param name="Size">In points.</param>
    /// <param name="IsBold">Whether in bold type.</param>
    /// <param name="Shade">How dark.</param>
    public sealed record Text(double X, double Y, string Words, double Size, bool IsBold, double Shade) : Mark;

    /// <summary>A filled rectangle.</summary>
    public sealed record Area(double X, double Y, double Width, double Height, double Shade) : Mark;

    /// <summary>The outline of a rectangle.</summary>
    public sealed record Outline(double X, double Y, double Width, double Height, double Thickness, double Shade) : Mark;

    /// <summary>A line through points.</summary>
    public sealed record Stroke(ImmutableArray<(double X, double Y)> Points, double Thickness, double Shade) : Mark;

    /// <summary>The filled shape between points.</summary>
    public sealed record Shape(ImmutableArray<(double X, double Y)> Points, double Shade) : Mark;
}
