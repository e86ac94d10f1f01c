using System.Drawing;
using Payday.Screens.Frames;

namespace Payday.Screens.Shell;

/// <summary>What a terminal shows that has no room for a screen.</summary>
internal static class TooSmall
{
    public static TextFrame Draw(Size size) => TextFrame.Of(
        size,
        [],
        [
            FrameLine.Of($"Payday needs {TextFrame.Smallest.Width} columns"),
            FrameLine.Of($"and {TextFrame.Smallest.Height} rows; this is {size.Width} x {size.Height}."),
            FrameLine.Of("Nothing is lost: make it larger,"),
            FrameLine.Of("or leave with Ctrl+C."),
        ],
        []);
}
