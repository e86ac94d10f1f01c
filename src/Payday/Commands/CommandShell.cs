using System.Text;
using NodaTime;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Commands;

/// <summary>What a command touches outside itself.</summary>
/// <param name="Out">Where answers go.</param>
/// <param name="Error">Where refusals go.</param>
/// <param name="In">Where input named <c>-</c> comes from; it throws <see cref="DecoderFallbackException"/> for what is no text.</param>
/// <param name="Today">The date.</param>
/// <param name="DefaultFolder">The data folder where none is named; it throws <see cref="StoreException"/> where there is no place for one.</param>
/// <param name="HasTerminal">Whether screens can be shown.</param>
internal sealed record CommandShell(TextWriter Out, TextWriter Error, TextReader In, Func<LocalDate> Today, Func<StoreFolder> DefaultFolder, bool HasTerminal = false)
{
    /// <summary>Whether a person sits at a terminal that says of itself that it can't move its cursor: questions are asked line by line there.</summary>
    public bool HasPlainTerminal { get; init; }

    /// <summary>Bars and charts of an answer's line, as where they go can show them; a person's own words stay as they are.</summary>
    public Func<string, string> Drawn { get; init; } = static line => line;

    /// <summary>The shell that started this process.</summary>
    public static CommandShell OfProcess()
    {
        StandardStreams.Take();
        return new CommandShell(
            StandardStreams.Output,
            StandardStreams.Errors,
            StandardStreams.Input,
            () => LocalDate.FromDateTime(DateTime.Now),
            StoreFolder.Default,
            StandardStreams.Output is not ClosedWriter && Screens.Shell.FullScreen.HasTerminal)
        {
            HasPlainTerminal = StandardStreams.Output is not ClosedWriter && Screens.Shell.FullScreen.HasPlainTerminal,
            Drawn = Screens.Shell.Look.For(Environment.GetEnvironmentVariable).FoldDrawn,
        };
    }
}
