using System.Collections.Concurrent;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;

namespace Payday.Screens.Terminals;

/// <summary>The library's parts for a terminal, with the reading of the keyboard and what is sent ours.</summary>
/// <param name="keyboard">The reader.</param>
internal sealed class TerminalFactory(KeyboardInput keyboard) : AnsiComponentFactory(keyboard)
{
    /// <inheritdoc/>
    public override IInputProcessor CreateInputProcessor(ConcurrentQueue<char> inputBuffer, ITimeProvider? timeProvider = null) =>
        new KeyProcessor(inputBuffer, timeProvider, keyboard);

    /// <inheritdoc/>
    /// <remarks>Made here and not before: making it takes the terminal.</remarks>
    public override IOutput CreateOutput()
    {
        var output = new LeanOutput();

        // A monitor of sizes gives the output its way to ask for the terminal's, which the application wants before its own monitor.
        _ = CreateSizeMonitor(output, output.GetLastBuffer()!);
        return output;
    }
}
