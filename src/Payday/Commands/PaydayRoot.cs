using System.CommandLine;
using System.CommandLine.Help;

namespace Payday.Commands;

/// <summary>The program itself, whose help is as wide as a terminal and ends with an example.</summary>
internal sealed class PaydayRoot : RootCommand, IExample
{
    /// <summary>The program with no commands yet.</summary>
    /// <param name="what">What it does, a sentence or two.</param>
    /// <param name="example">A line to try.</param>
    public PaydayRoot(string what, string example)
        : base(what)
    {
        Example = example;
        Options.Remove(Options.Single(option => option is HelpOption));
        // No "/h" and "/?": here a slash begins a path.
        Options.Add(new HelpOption("--help", "-h", "-?") { Action = new HelpWithExample() });
    }

    /// <inheritdoc/>
    public string Example { get; }
}
