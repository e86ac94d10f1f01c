using System.Drawing;
using Payday.Screens.Frames;
using Payday.Text;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace Payday.Screens.Shell;

/// <summary>The text field in which a value is typed, behind what is asked for.</summary>
internal sealed class CellField : TextField
{
    private readonly Func<CellEdit, Point> place;
    private Point begins;
    private bool isWhole;

    /// <param name="look">How it shows.</param>
    /// <param name="place">Where the field of a value begins now, in columns and rows from the top left.</param>
    public CellField(Look look, Func<CellEdit, Point> place)
    {
        this.place = place;
        Visible = false;
        Height = 1;
        Width = Dim.Fill();

        // Never set again: the library sends the whole screen anew when a place is.
        X = Pos.Func(_ => begins.X);
        Y = Pos.Func(_ => begins.Y);
        Show(look);
        BindKeys();
        Pasting += OnPasting;
    }

    /// <summary>What is edited, or null.</summary>
    public CellEdit? Cell { get; private set; }

    /// <summary>What was wrong with the last paste or character, a sentence; empty for nothing.</summary>
    public string Fault { get; private set; } = "";

    /// <summary>The row in which it is typed, from the top.</summary>
    public int Row => begins.Y;

    private int Most => Math.Max(Cell?.Most ?? 0, Cell?.Text.Length ?? 0);

    /// <summary>Begins to edit.</summary>
    /// <param name="cell">What.</param>
    /// <param name="text">What stands there to begin with.</param>
    /// <param name="replaces">Whether the first character typed takes the place of what stands there.</param>
    public void Begin(CellEdit cell, string text, bool replaces)
    {
        Cell = cell;
        Fault = "";
        Text = text;
        Place();
        Visible = true;
        MoveEnd();
        if (replaces)
        {
            SelectAll();
        }

        isWhole = replaces;
        SetFocus();
    }

    /// <summary>Shows as a look has it from now on.</summary>
    public void Show(Look look)
    {
        Terminal.Gui.Drawing.Attribute plain = look.Of(Ink.Plain);
        SetScheme(new Scheme(plain) { Editable = plain, Focus = plain, Active = look.Of(Ink.Here), ReadOnly = plain });
    }

    /// <summary>Goes on with what was typed, after the field was out of view or the terminal became another size.</summary>
    public void ComeBack()
    {
        Place();
        GoOn();
    }

    /// <summary>Goes on after a refusal: the first character typed takes the place of what was refused; an arrow or Backspace mends it.</summary>
    public void Again()
    {
        MoveEnd();
        SelectAll();
        isWhole = true;
    }

    /// <summary>Told of each key before the field has it: Backspace takes one character, also where a character typed would take the place of all.</summary>
    /// <returns>Whether the field may have it.</returns>
    public bool Before(Key key)
    {
        Fault = "";
        if (isWhole && key == Key.Backspace)
        {
            GoOn();
        }

        isWhole = false;
        if (SelectedLength > 0 || Text.Length < Most || ShellKeys.Typed(key) is null)
        {
            return true;
        }

        Fault = $"There is room for {Most} characters here.";
        return false;
    }

    /// <summary>Ends editing.</summary>
    public void End()
    {
        Cell = null;
        Visible = false;
    }

    /// <summary>Whether a key ends or leaves the editing, whatever the field would do with it.</summary>
    public static bool IsLast(Key key) =>
        key == Key.Enter || key == Key.Esc || key == Key.CursorUp || key == Key.CursorDown || key == Key.Tab || key == ShellKeys.Leave.Key;

    private void GoOn()
    {
        SetFocus();
        MoveEnd();
        ClearAllSelection();
    }

    private void Place()
    {
        begins = place(Cell!);
        SetNeedsLayout();
    }

    // The library has taken the first line and left control characters out. All of it or nothing: a name or an amount that was cut would be another one.
    private void OnPasting(object? sender, PastingEventArgs pasting)
    {
        int room = Most - (Text.Length - SelectedLength);
        Fault = pasting.Text.Length > room
            ? $"What was pasted has {pasting.Text.Length} characters, and there is room for {room} here; nothing of it was taken."
            : "";
        pasting.Handled = Fault.Length > 0;
        isWhole = false;
    }

    // Only keys of a line that is typed: the library's own others would run programs for a clipboard and open menus.
    private void BindKeys()
    {
        KeyBindings.Clear();
        KeyBindings.Add(Key.CursorLeft, Command.Left);
        KeyBindings.Add(Key.CursorRight, Command.Right);
        KeyBindings.Add(Key.Home, Command.LeftStart);
        KeyBindings.Add(Key.End, Command.RightEnd);
        KeyBindings.Add(Key.CursorLeft.WithCtrl, Command.WordLeft);
        KeyBindings.Add(Key.CursorRight.WithCtrl, Command.WordRight);
        KeyBindings.Add(Key.Backspace, Command.DeleteCharLeft);
        KeyBindings.Add(Key.Delete, Command.DeleteCharRight);
    }
}
