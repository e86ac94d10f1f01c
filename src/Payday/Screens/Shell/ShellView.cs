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
    private static readonly Key ToBackground = Key.Z.WithCtrl;

    private readonly ScreenStack screens;
    private readonly FrameCanvas canvas;
    private readonly ShellFrame frame;
    private readonly CellField field;

    /// <param name="first">The screen at the bottom.</param>
    /// <param name="look">How it shows.</param>
    /// <param name="standing">A sentence that stands on every screen; null or empty for none.</param>
    public ShellView(Screen first, Look look, Func<string>? standing = null)
    {
        frame = new ShellFrame(standing ?? (() => ""));
        canvas = new FrameCanvas(this, look);
        field = new CellField(look);
        screens = new ScreenStack(first);
        field.KeyDown += OnFieldKey;
        Add(field);
    }

    /// <summary>The screen on top.</summary>
    public Screen Top => screens.Top;

    private Binding Leave => ShellKeys.Leaves(() => screens.First.Leaving);

    private bool HasRoom => Viewport.Width >= TextFrame.Smallest.Width && Viewport.Height >= TextFrame.Smallest.Height;

    /// <inheritdoc/>
    protected override void OnFrameChanged(in Rectangle frame)
    {
        base.OnFrameChanged(in frame);
        field.Visible = field.Cell is not null && HasRoom;
        if (field.Visible)
        {
            field.GoOn();
        }
    }

    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        canvas.Show(HasRoom ? frame.Draw(Top, field, Viewport.Size) : TooSmall.Draw(Viewport.Size));
        return true;
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        if (key == ToBackground)
        {
            Suspend();
            return true;
        }

        if (!HasRoom)
        {
            // What a key does should be seen; all that works in the dark is to leave.
            if (key == Leave.Key)
            {
                App?.RequestStop();
            }

            return true;
        }

        if (field.Cell is not null)
        {
            return false;
        }

        Top.Message = "";
        Binding? binding = Top.Bindings.FirstOrDefault(known => known.Key == key)
            ?? (key == Leave.Key ? Leave : null);
        if (binding is not null)
        {
            Follow(Guarded(binding.Do));
        }
        else if (Typed(key) is { } text && Top.Typing(text) is { } cell)
        {
            field.Begin(cell, replaces: false);
        }

        SetNeedsDraw();
        return true;
    }

    /// <inheritdoc/>
    protected override bool OnPaste(string text)
    {
        if (field.Cell is not null || !HasRoom)
        {
            return false;
        }

        Top.Message = "";
        bool taken = false;
        Follow(Guarded(() =>
        {
            taken = Top.Pasted(text);
            return Way.Stay;
        }));
        SetNeedsDraw();
        return taken;
    }

    // Everything the field doesn't use itself ends here while a cell is edited.
    private void OnFieldKey(object? sender, Key key)
    {
        field.Before(key);
        if (key == ToBackground)
        {
            key.Handled = true;
            Suspend();
        }
        else if (CellField.IsLast(key))
        {
            key.Handled = true;
            bool leave = key == Leave.Key;
            Finish(leaves: leave || key == Key.Esc);
            if (leave && Top is not LeaveScreen)
            {
                Follow(Leave.Do());
            }

            SetNeedsDraw();
        }
    }

    // Esc takes what was typed if it is right, and otherwise leaves what was there before: nothing right is lost.
    private void Finish(bool leaves)
    {
        CellEdit cell = field.Cell!;
        string? fault = leaves && (cell.Acts || field.Text == cell.Text) ? null : Refused(cell, field.Text);
        if (fault is not null)
        {
            Top.Message = leaves ? fault + " It was left as it was." : fault;
            if (!leaves)
            {
                field.Again();
                return;
            }
        }

        field.End();
        SetFocus();
    }

    private string? Refused(CellEdit cell, string text)
    {
        // What taking it says, such as what it made stale, stays to be read; what a failing store says is the fault.
        Screen screen = Top;
        screen.Message = "";
        string? fault = null;
        bool ran = false;
        Guarded(() =>
        {
            fault = cell.Accept(text);
            ran = true;
            return Way.Stay;
        });
        return ran ? fault : screen.Message;
    }

    private void Follow(Way move)
    {
        if (move is Way.Edit start)
        {
            field.Begin(start.Cell, replaces: true);
        }
        else if (!screens.Follow(move))
        {
            App?.RequestStop();
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

    // The library comes back from the background with the mouse reported, and with nothing drawn.
    private void Suspend()
    {
        if (App?.Driver is { } driver)
        {
            driver.Suspend();
            TerminalModes.LeaveTheMouseAlone(driver);
            App.ClearScreenNextIteration = true;
            SetNeedsDraw();
        }
    }

    private static string? Typed(Key key)
    {
        string text = key.AsRune.Value >= ' ' && !key.IsCtrl && !key.IsAlt ? key.AsRune.ToString() : "";
        return text.Length == 0 ? null : text;
    }
}
