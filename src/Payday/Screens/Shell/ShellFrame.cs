using System.Drawing;
using Payday.Screens.Frames;
using Payday.Text;

namespace Payday.Screens.Shell;

/// <summary>What the terminal shows: what stands on every screen, the screen on top, and what is typed on it.</summary>
/// <param name="standing">A sentence that stands on every screen; empty for none.</param>
internal sealed class ShellFrame(Func<string> standing)
{
    // So many lines of what is wrong are shown over the line where it is typed.
    private const int MostFaultLines = 3;

    /// <summary>Draws it.</summary>
    /// <param name="top">The screen on top.</param>
    /// <param name="field">Where something may be typed.</param>
    /// <param name="size">The terminal's size; there is room for a screen.</param>
    public TextFrame Draw(Screen top, CellField field, Size size)
    {
        string message = top.Message;

        // While something is typed, what is wrong with it is said beside it, and not by the screen as well.
        if (field.Cell is null)
        {
            return Screen(top, size);
        }

        top.Message = "";
        TextFrame frame = Screen(top, size);
        top.Message = message;
        return WithPrompt(frame, message, field.Cell, field.Row, size);
    }

    /// <summary>Where the field of a value begins.</summary>
    /// <param name="cell">What is typed.</param>
    /// <param name="top">The screen on top.</param>
    /// <param name="size">The terminal's size; there is room for a screen.</param>
    public Point PlaceOf(CellEdit cell, Screen top, Size size)
    {
        string message = top.Message;
        top.Message = "";
        int row = TypedLine.Row(Screen(top, size), top.Standing(Math.Min(size.Width, TextFrame.Widest)));
        top.Message = message;
        return TypedLine.Begins(cell, row, size.Width);
    }

    private TextFrame Screen(Screen top, Size size)
    {
        int width = Math.Min(size.Width, TextFrame.Widest);
        FrameLine[] head = [.. TextWrap.Lines(standing(), width - 2).Select(line => FrameLine.Of(" " + line, Ink.Alert))];
        TextFrame screen = top.Draw(new Size(width, size.Height - head.Length));
        return new TextFrame([.. head, .. screen.Lines]).Fill(size.Width);
    }

    // The keys stay on the last line. What is wrong stands under what is typed where that is free, else above it. The field
    // draws its own cells.
    private static TextFrame WithPrompt(TextFrame frame, string message, CellEdit cell, int row, Size size)
    {
        FrameLine[] fault = [.. TextWrap.Lines(message, size.Width - 2).Take(MostFaultLines).Select(line => FrameLine.Of(" " + line, Ink.Alert).Fit(size.Width))];
        bool isFree = frame.Lines.Skip(row + 1).Take(fault.Length).All(line => string.IsNullOrWhiteSpace(line.Text));
        FrameLine[] lines = [.. frame.Lines];
        fault.CopyTo(lines, isFree ? row + 1 : row - fault.Length);
        lines[row - 1] = fault.Length == 0 ? TypedLine.Above(frame, row, size.Width) : lines[row - 1];
        lines[row] = FrameLine.Of(TypedLine.Asked(cell, size.Width), Ink.Strong).Fit(size.Width);
        lines[^1] = FrameLine.Of(TypedLine.Keys, Ink.Quiet).Fit(size.Width);
        return new TextFrame([.. lines]);
    }
}
