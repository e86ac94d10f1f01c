using System.Runtime.InteropServices;
using System.Text;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;

namespace Payday.Screens.Terminals;

/// <summary>The library's output, with each frame sent as one piece and as few bytes (<see cref="LeanFrames"/>).</summary>
internal sealed class LeanOutput : AnsiOutput, IOutput
{
    private readonly LeanFrames frames = new();
    private bool isCursorHidden;

    /// <inheritdoc/>
    public override void Write(IOutputBuffer buffer)
    {
        string sent = buffer.Contents is { } held && buffer.DirtyLines.Contains(true) ? Frame(held, buffer.DirtyLines) : "";

        // The library finds nothing left to send, and keeps the buffer as the last one.
        base.Write(buffer);
        if (sent.Length > 0)
        {
            Send(sent);
        }
    }

    /// <summary>Puts the cursor somewhere, or hides it where it isn't hidden yet.</summary>
    void IOutput.SetCursor(Cursor cursor)
    {
        if (cursor.IsVisible || !isCursorHidden)
        {
            isCursorHidden = !cursor.IsVisible;
            SetCursor(cursor);
        }
    }

    /// <inheritdoc/>
    /// <remarks>Where a hidden cursor is nobody sees, and each frame moves it for itself.</remarks>
    protected override bool SetCursorPositionImpl(int col, int row) => isCursorHidden || base.SetCursorPositionImpl(col, row);

    /// <summary>To the background; what was before doesn't hold afterwards.</summary>
    void IOutput.Suspend()
    {
        Suspend();
        isCursorHidden = false;
        frames.Forget();
    }

    // Where every cell is marked the library has thrown away what it knew: the terminal has another size, or comes back from
    // the background.
    private string Frame(Cell[,] held, bool[] lines)
    {
        bool isAll = true;
        foreach (ref Cell cell in MemoryMarshal.CreateSpan(ref held[0, 0], held.Length))
        {
            isAll &= cell.IsDirty;
            cell.IsDirty = false;
        }

        Array.Clear(lines);
        if (isAll)
        {
            frames.Forget();
        }

        return frames.Next(ShownCell.Of(held));
    }

    private void Send(string sent)
    {
        try
        {
            Write(new StringBuilder(sent));
        }
        catch (IOException)
        {
            frames.Forget();
            throw;
        }
    }
}
