using System.Collections.Immutable;
using System.Drawing;
using Payday.Screens.Frames;
using Payday.Store;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace Payday.Screens.Shell;

/// <summary>
/// The one view on the terminal: shows the screen on top, gives it the keys, and lays a text field over the
/// line where something is typed.
/// </summary>
/// <remarks>
/// A screen is text, so only the cells that differ from what is shown are drawn: over a slow line a key costs few bytes.
/// </remarks>
internal sealed class ShellView : Runnable
{
    private readonly Stack<Screen> screens = new();
    private readonly FrameCanvas canvas;
    private readonly TextField field = new() { Visible = false, Height = 1 };
    private CellEdit? edit;

    public ShellView(Screen first, Look look)
    {
        canvas = new FrameCanvas(this, look);
        screens.Push(first);
        field.KeyDown += OnFieldKey;
        Add(field);
    }

    /// <summary>The screen on top.</summary>
    public Screen Top => screens.Peek();

    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        canvas.Show(Drawn());
        return true;
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        if (edit is not null)
        {
            return false;
        }

        Top.Message = "";
        Binding? binding = Top.Bindings.FirstOrDefault(known => known.Key == key)
            ?? (key == ShellKeys.Leave.Key ? ShellKeys.Leave : null);
        if (binding is not null)
        {
            Follow(Guarded(binding.Do));
        }
        else if (Typed(key) is { } text && Top.Typing(text) is { } cell)
        {
            Begin(cell);
        }

        SetNeedsDraw();
        return true;
    }

    // Everything the field doesn't use itself ends here while a cell is edited.
    private void OnFieldKey(object? sender, Key key)
    {
        if (key == Key.Enter || key == Key.Esc || key == Key.CursorUp || key == Key.CursorDown || key == Key.Tab)
        {
            key.Handled = true;
            Finish(leaves: key == Key.Esc);
            SetNeedsDraw();
        }
    }

    private void Begin(CellEdit cell)
    {
        edit = cell;
        field.Text = cell.Text;
        field.X = cell.Prompt.Length + 4;
        field.Y = Pos.AnchorEnd(1);
        field.Width = Dim.Fill();
        field.Visible = true;
        field.MoveEnd();
        field.SetFocus();
        canvas.Forget();
    }

    // Esc takes what was typed if it is right, and otherwise leaves what was there before: nothing right is lost.
    private void Finish(bool leaves)
    {
        CellEdit cell = edit!;
        string? fault = field.Text == cell.Text && leaves ? null : Refused(cell, field.Text);
        if (fault is not null && !leaves)
        {
            Top.Message = fault;
            return;
        }

        Top.Message = fault is null ? "" : fault + " It was left as it was.";
        edit = null;
        field.Visible = false;
        SetFocus();
        canvas.Forget();
    }

    private static string? Refused(CellEdit cell, string text)
    {
        try
        {
            return cell.Accept(text);
        }
        catch (StoreException fault)
        {
            return fault.Message;
        }
    }

    private void Follow(Way move)
    {
        switch (move)
        {
            case Way.To to:
                screens.Push(to.Screen);
                break;
            case Way.Instead instead:
                screens.Pop();
                screens.Push(instead.Screen);
                break;
            case Way.Afresh afresh:
                screens.Clear();
                screens.Push(afresh.Screen);
                break;
            case Way.Goes when screens.Count > 1:
                screens.Pop();
                break;
            case Way.Goes or Way.Quits:
                App?.RequestStop();
                break;
            case Way.Home home:
                while (screens.Count > 1)
                {
                    screens.Pop();
                }

                Top.Message = home.Message;
                break;
            case Way.Edit start:
                Begin(start.Cell);
                break;
        }
    }

    private Way Guarded(Func<Way> act)
    {
        try
        {
            return act();
        }
        catch (StoreException fault)
        {
            Top.Message = fault.Message;
            return Way.Stay;
        }
        catch (OverflowException)
        {
            Top.Message = "The amounts are too large together; nothing was changed.";
            return Way.Stay;
        }
    }

    private TextFrame Drawn()
    {
        Size size = Viewport.Size;
        TextFrame frame = size.Width < TextFrame.Smallest.Width || size.Height < TextFrame.Smallest.Height
            ? TooSmall.Draw(size)
            : Top.Draw(size);
        return edit is null ? frame : WithPrompt(frame, size);
    }

    // What is typed stands on the last line, and what is wrong with it on the line above.
    private TextFrame WithPrompt(TextFrame frame, Size size)
    {
        ImmutableArray<FrameLine> lines = frame.Lines.SetItem(size.Height - 1, FrameLine.Of($" {edit!.Prompt}: ", Ink.Strong).Fit(size.Width));
        return frame with
        {
            Lines = Top.Message.Length == 0
                ? lines
                : lines.SetItem(size.Height - 2, FrameLine.Of(" " + Top.Message, Ink.Hand).Fit(size.Width)),
        };
    }

    private static string? Typed(Key key)
    {
        string text = key.AsRune.Value >= ' ' && !key.IsCtrl && !key.IsAlt ? key.AsRune.ToString() : "";
        return text.Length == 0 ? null : text;
    }
}
