namespace Payday.Screens.Shell;

/// <summary>Changing a cell: what is typed over the line is taken by the screen on top, refused by it, or kept half typed.</summary>
/// <param name="field">Where it is typed.</param>
/// <param name="top">The screen on top.</param>
/// <param name="guarded">Does something of a screen, and says on it where that fails.</param>
/// <param name="ended">Called once nothing is typed any more.</param>
internal sealed class CellTyping(CellField field, Func<Screen> top, Func<Func<Way>, Way> guarded, Action ended)
{
    private readonly HalfTyped halfTyped = new();

    /// <summary>Begins to change a cell, with what was half typed of it before.</summary>
    public void Begin(CellEdit cell)
    {
        string? before = halfTyped.Of(top(), cell);
        field.Begin(cell, before ?? cell.Text, replaces: before is null && !cell.GoesOn);
    }

    /// <summary>A character may do something at once, such as pick a pot, or begin to change a cell.</summary>
    public void Type(string text)
    {
        CellEdit? cell = null;
        guarded(() =>
        {
            cell = top().Typing(text);
            return Way.Stay;
        });
        if (cell is not null)
        {
            field.Begin(cell, text: cell.Text, replaces: false);
        }
    }

    /// <summary>Ends what is typed, unless the screen refuses it; a cell that leads on to another begins that.</summary>
    /// <param name="leaves">Whether nothing is taken; it is not lost, and there again the next time.</param>
    public void Finish(bool leaves)
    {
        CellEdit cell = field.Cell!;
        if (leaves)
        {
            top().Message = halfTyped.Keep(top(), cell, field.Text) ? "Nothing was changed; what you typed is there again when you change this." : "";
        }
        else
        {
            Screen screen = top();
            string title = screen.Title;
            if (Refused(cell, field.Text) is { } fault)
            {
                screen.Message = fault;
                field.Again();
                return;
            }

            halfTyped.Forget(screen, title, cell);
        }

        field.End();
        ended();
        if (!leaves && cell.Next?.Invoke() is { } next)
        {
            field.Begin(next, next.Text, replaces: false);
        }
    }

    private string? Refused(CellEdit cell, string text)
    {
        // What taking it says, such as what it made stale, stays to be read; what a failing store says is the fault.
        Screen screen = top();
        screen.Message = "";
        string? fault = null;
        bool ran = false;
        guarded(() =>
        {
            fault = cell.Accept(text);
            ran = true;
            return Way.Stay;
        });
        return ran ? fault : screen.Message;
    }
}
