using System.Collections.Concurrent;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;

namespace Payday.Screens.Terminals;

/// <summary>The library's parts for a terminal, with the reading of the keyboard ours.</summary>
/// <param name="keyboard">The reader.</param>
internal sealed class KeyFactory(KeyboardInput keyboard) : AnsiComponentFactory(keyboard)
{
    /// <inheritdoc/>
    public override IInputProcessor CreateInputProcessor(ConcurrentQueue<char> inputBuffer, ITimeProvider? timeProvider = null) =>
        new KeyProcessor(inputBuffer, timeProvider, keyboard);
}
