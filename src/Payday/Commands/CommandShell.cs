using System.Text;
using NodaTime;
using Payday.Store;

namespace Payday.Commands;

/// <summary>What a command touches outside itself.</summary>
/// <param name="Out">Where answers go.</param>
/// <param name="Error">Where refusals go.</param>
/// <param name="In">Where input named <c>-</c> comes from; it throws <see cref="DecoderFallbackException"/> for what is no text.</param>
/// <param name="Today">The date.</param>
/// <param name="DefaultFolder">The data folder where none is named.</param>
/// <param name="HasTerminal">Whether screens can be shown.</param>
internal sealed record CommandShell(TextWriter Out, TextWriter Error, TextReader In, Func<LocalDate> Today, StoreFolder DefaultFolder, bool HasTerminal = false)
{
    /// <summary>The shell that started this process.</summary>
    public static CommandShell OfProcess() => new(
        Console.Out,
        Console.Error,
        new StreamReader(Console.OpenStandardInput(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true)),
        () => LocalDate.FromDateTime(DateTime.Now),
        StoreFolder.Default(),
        Screens.Shell.FullScreen.HasTerminal);
}
