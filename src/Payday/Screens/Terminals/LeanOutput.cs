using System.Globalization;
using System.Text;
using Terminal.Gui.Drivers;

namespace Payday.Screens.Terminals;

/// <summary>
/// The library's output, with each frame sent as one piece and as few bytes: what moves the cursor twice moves it once,
/// and blanks are erased rather than sent (<see cref="LeanText"/>).
/// </summary>
/// <remarks>Over a slow line a new screen is mostly blanks that end what stood there before.</remarks>
internal sealed class LeanOutput : AnsiOutput
{
    private readonly LeanText lean = new();
    private StringBuilder? frame;
    private (int Column, int Row)? move;

    /// <inheritdoc/>
    public override void Write(IOutputBuffer buffer)
    {
        frame = new StringBuilder();
        lean.Begin();
        base.Write(buffer);
        StringBuilder whole = frame;
        frame = null;
        move = null;
        if (whole.Length > 0)
        {
            base.Write(whole);
        }
    }

    /// <inheritdoc/>
    protected override bool SetCursorPositionImpl(int col, int row)
    {
        if (frame is null)
        {
            return base.SetCursorPositionImpl(col, row);
        }

        move = (col, row);
        return true;
    }

    /// <inheritdoc/>
    /// <remarks>Within a frame the library moves the cursor before each piece, so where a piece leaves it doesn't matter.</remarks>
    protected override void Write(StringBuilder output)
    {
        if (frame is null)
        {
            base.Write(output);
            return;
        }

        if (move is { } to)
        {
            frame.Append(CultureInfo.InvariantCulture, $"\e[{to.Row + 1};{to.Column + 1}H");
            move = null;
        }

        lean.Append(frame, output.ToString());
    }
}
