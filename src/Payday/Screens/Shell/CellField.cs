using Payday.Screens.Frames;
using Payday.Text;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace Payday.Screens.Shell;

/// <summary>The text field that lies over the last line while a value is typed.</summary>
internal sealed class CellField : TextField
{
    private const int StartsAtPercent = 55;
    private bool isWhole;

    public CellField(Look look)
    {
        Visible = false;
        Height = 1;

        // A fixed place: the library redraws the whole screen for a field that moves.
        X = Pos.Percent(StartsAtPercent);
        Width = Dim.Fill();
        Y = Pos.AnchorEnd(1);
        var plain = look.Of(Ink.Plain);
        SetScheme(new Scheme(plain) { Editable = plain, Focus = plain, Active = look.Of(Ink.Here), ReadOnly = plain });
    }

    /// <summary>What is edited, or null.</summary>
    public CellEdit? Cell { get; private set; }

    /// <summary>Begins to edit.</summary>
    /// <param name="cell">What.</param>
    /// <param name="replaces">Whether the first character typed takes the place of what stands there.</param>
    public void Begin(CellEdit cell, bool replaces)
    {
        Cell = cell;
        Text = cell.Text;
        Visible = true;
        MoveEnd();
        if (replaces)
        {
            SelectAll();
        }

        isWhole = replaces;
        SetFocus();
    }

    /// <summary>Goes on with what was typed, after the field was out of view.</summary>
    public void GoOn()
    {
        SetFocus();
        MoveEnd();
        ClearAllSelection();
    }

    /// <summary>Goes on after a refusal: the first character typed takes the place of what was refused; an arrow or Backspace mends it.</summary>
    public void Again()
    {
        MoveEnd();
        SelectAll();
        isWhole = true;
    }

    /// <summary>Told of each key before the field has it: Backspace takes one character, also where a character typed would take the place of all.</summary>
    public void Before(Key key)
    {
        if (isWhole && key == Key.Backspace)
        {
            GoOn();
        }

        isWhole = false;
    }

    /// <summary>Ends editing.</summary>
    public void End()
    {
        Cell = null;
        Visible = false;
    }

    /// <summary>What stands before the field, up to where it begins.</summary>
    public string Prompt()
    {
        const string After = ": ";
        string prompt = TextColumns.Truncate(CleanText.OneLine(Cell!.Prompt), Math.Max(0, Frame.X - After.Length - 1));
        return TextColumns.PadLeft(prompt + After, Frame.X);
    }

    /// <summary>Whether a key ends or leaves the editing, whatever the field would do with it.</summary>
    public static bool IsLast(Key key) =>
        key == Key.Enter || key == Key.Esc || key == Key.CursorUp || key == Key.CursorDown || key == Key.Tab || key == ShellKeys.Leave.Key;
}
