using System.Collections.Concurrent;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Time;

namespace Payday.Screens.Terminals;

/// <summary>Makes keys and pastes of what <see cref="KeyboardInput"/> read; the library's own parser gets whole sequences only.</summary>
internal sealed class KeyProcessor : AnsiInputProcessor
{
    private readonly KeyboardInput keyboard;

    public KeyProcessor(ConcurrentQueue<char> queue, ITimeProvider? time, KeyboardInput keyboard)
        : base(queue, time)
    {
        this.keyboard = keyboard;
        keyboard.Waiting = () => queue.Count;
    }

    /// <inheritdoc/>
    protected override void Process(char input)
    {
        if (input != KeyboardInput.Piece)
        {
            base.Process(input);
            return;
        }

        switch (keyboard.Next())
        {
            case InputPiece.Escape:
                RaiseKeyDownEvent(Key.Esc);
                break;
            case InputPiece.Paste paste:
                RaisePasteEvent(paste.Text);
                break;
            case InputPiece.Sequence sequence:
                foreach (char one in sequence.Text)
                {
                    base.Process(one);
                }

                break;
        }
    }
}
