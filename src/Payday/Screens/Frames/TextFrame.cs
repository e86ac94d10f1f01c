using System.Collections.Immutable;
using System.Drawing;

namespace Payday.Screens.Frames;

/// <summary>A whole screen as text: what a terminal of some size shows.</summary>
/// <param name="Lines">One for each row of the terminal, each as wide as it.</param>
internal sealed record TextFrame(ImmutableArray<FrameLine> Lines)
{
    /// <summary>The smallest terminal in which every screen is complete.</summary>
    public static Size Complete { get; } = new(80, 24);

    /// <summary>The smallest terminal in which anything is shown.</summary>
    public static Size Smallest { get; } = new(60, 20);

    /// <summary>The widest frame: beyond it figures that belong together would stand too far apart to be read in one look.</summary>
    public static int Widest => 132;

    /// <summary>The frame with blanks on its right side, as wide as a terminal.</summary>
    public TextFrame Fill(int width) => new([.. Lines.Select(line => line.Fit(width))]);

    /// <summary>
    /// Lays parts out from top to bottom: the head, the body filled up with empty lines, and the foot at the bottom.
    /// </summary>
    public static TextFrame Of(Size size, IEnumerable<FrameLine> head, IEnumerable<FrameLine> body, IEnumerable<FrameLine> foot)
    {
        FrameLine[] top = [.. head];
        FrameLine[] bottom = [.. foot];
        int room = Math.Max(0, size.Height - top.Length - bottom.Length);
        FrameLine[] middle = [.. body.Take(room)];
        IEnumerable<FrameLine> all = top
            .Concat(middle)
            .Concat(Enumerable.Repeat(FrameLine.Empty, room - middle.Length))
            .Concat(bottom)
            .Take(size.Height);
        return new TextFrame([.. all.Select(line => line.Fit(size.Width))]);
    }
}
