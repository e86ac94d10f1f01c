using System.Drawing;
using Payday.Core.Households;
using Payday.Screens.Frames;
using Payday.Screens.Terminals;
using Payday.Store.Files;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;
using Payday.Texts;

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
    private readonly CellTyping typing;
    private readonly TerminalLook look;

    /// <param name="first">The screen at the bottom.</param>
    /// <param name="lead">Says which screen a goal is.</param>
    /// <param name="look">How it shows.</param>
    /// <param name="standing">A sentence that stands on every screen; null or empty for none.</param>
    public ShellView(Screen first, Func<Goal, Way> lead, Look look, Func<string>? standing = null)
    {
        frame = new ShellFrame(standing ?? (() => ""));
        canvas = new FrameCanvas(this, look);
        field = new CellField(look, cell => frame.PlaceOf(cell, Top, Viewport.Size));
        this.look = new TerminalLook(look, field, () => SetNeedsDraw());
        screens = new ScreenStack(first, goal => Guarded(() => lead(goal)));
        typing = new CellTyping(field, () => Top, Guarded, () => SetFocus());
        field.KeyDown += OnFieldKey;
        field.Pasting += OnFieldPaste;
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
            field.ComeBack();
        }
    }

    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        look.Take(App?.Driver, screens.First.Look);
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
        else if (ShellKeys.Typed(key) is { } text)
        {
            typing.Type(text);
        }

        SetNeedsDraw();
        return true;
    }

    /// <inheritdoc/>
    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (App is { } app)
        {
            // Of the application: this view itself, while nothing is typed, is not what the library gives a paste to.
            app.Paste -= OnPaste;
            if (newIsRunning)
            {
                app.Paste += OnPaste;
            }
        }
    }

    private void OnPaste(object? sender, PasteEventArgs paste)
    {
        if (field.Cell is not null && HasRoom)
        {
            // The field takes it, or says why not.
            return;
        }

        paste.Handled = true;
        if (HasRoom)
        {
            Top.Message = "";
            Follow(Guarded(() => TakePaste(paste.Text)));
            SetNeedsDraw();
        }
    }

    private Way TakePaste(string text)
    {
        if (text.Length > InputReader.MostPasted)
        {
            Top.Message = "What was pasted is too long; nothing of it was taken.";
            return Way.Stay;
        }

        return Top.TakesPaste(PastedText.Clean(text));
    }

    private void OnFieldPaste(object? sender, PastingEventArgs pasting)
    {
        Top.Message = field.Fault;
        SetNeedsDraw();
    }

    // Everything the field doesn't use itself ends here while a cell is edited.
    private void OnFieldKey(object? sender, Key key)
    {
        string fault = field.Fault;
        bool isTaken = field.Before(key);
        if (fault != field.Fault)
        {
            Top.Message = field.Fault;
            SetNeedsDraw();
        }

        if (!isTaken)
        {
            key.Handled = true;
        }
        else if (key == ToBackground)
        {
            key.Handled = true;
            Suspend();
        }
        else if (CellField.IsLast(key))
        {
            key.Handled = true;
            bool leave = key == Leave.Key;
            typing.Finish(leaves: leave || key == Key.Esc);
            if (leave && Top is not LeaveScreen)
            {
                Follow(Leave.Do());
            }

            SetNeedsDraw();
        }
    }

    private void Follow(Way move)
    {
        if (move is Way.Edit start)
        {
            typing.Begin(start.Cell);
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
            Top.Message = StoreTexts.Of(fault.Fault);
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
}
