using System.Drawing;
using Payday.Screens.Frames;
using Payday.Text;

namespace Payday.Screens.Shell;

/// <summary>What the terminal shows: what stands on every screen, the screen on top, and what is typed on its last line.</summary>
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
        int width = Math.Min(size.Width, TextFrame.Widest);
        FrameLine[] head = [.. TextWrap.Lines(standing(), width - 2).Select(line => FrameLine.Of(" " + line, Ink.Alert))];
        string message = top.Message;

        // While something is typed, what is wrong with it is said above it, and not by the screen as well.
        if (field.Cell is not null)
        {
            top.Message = "";
        }

        TextFrame screen = top.Draw(new Size(width, size.Height - head.Length));
        if (field.Cell is not null)
        {
            top.Message = message;
        }

        TextFrame frame = new TextFrame([.. head, .. screen.Lines]).Fill(size.Width);
        return field.Cell is null ? frame : WithPrompt(frame, message, field, size);
    }

    // What is typed stands on the last line, and what is wrong with it on the lines above. The field draws its own cells.
    private static TextFrame WithPrompt(TextFrame frame, string message, CellField field, Size size)
    {
        string[] fault = [.. TextWrap.Lines(message, size.Width - 2).Take(MostFaultLines)];
        IEnumerable<FrameLine> lines = frame.Lines
            .Take(size.Height - 1 - fault.Length)
            .Concat(fault.Select(line => FrameLine.Of(" " + line, Ink.Alert).Fit(size.Width)))
            .Append(FrameLine.Of(field.Prompt(), Ink.Strong));
        return new TextFrame([.. lines]);
    }
}
