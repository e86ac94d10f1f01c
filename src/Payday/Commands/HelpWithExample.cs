using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Payday.Reports;

namespace Payday.Commands;

/// <summary>A command's help, and an example under it.</summary>
internal sealed class HelpWithExample : SynchronousCommandLineAction
{
    private readonly HelpAction help = new() { MaxWidth = Report.Width };

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        // The library pads its lines; here they end where their text does.
        using var text = new StringWriter();
        TextWriter output = parseResult.InvocationConfiguration.Output;
        parseResult.InvocationConfiguration.Output = text;
        int exit = help.Invoke(parseResult);
        parseResult.InvocationConfiguration.Output = output;
        foreach (string line in text.ToString().TrimEnd().Split(text.NewLine))
        {
            output.WriteLine(line.TrimEnd());
        }

        if (parseResult.CommandResult.Command is IExample { Example: { } example })
        {
            output.WriteLine();
            output.WriteLine("Example:");
            output.WriteLine("  " + example);
        }

        return exit;
    }
}
