using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Invocation;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday help</c>: what <c>--help</c> says of a command, for those who ask in this order.</summary>
internal static class HelpCommand
{
    /// <summary>Builds it for a program.</summary>
    /// <param name="shell">The shell.</param>
    /// <param name="root">The program whose commands it knows; also those that it gets after this one.</param>
    public static Command Build(CommandShell shell, RootCommand root)
    {
        var words = new Argument<string[]>("COMMAND")
        {
            HelpName = "COMMAND",
            Description = "The command. Default: Payday as a whole.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        words.CompletionSources.Add(_ => root.Subcommands.Select(one => new CompletionItem(one.Name)));
        var command = new PaydayCommand("help", "Explain a command: what it does, its arguments and options, an example.", "payday help run") { words };
        command.SetAction(parsed =>
        {
            Command about = root;
            foreach (string word in parsed.GetValue(words) ?? [])
            {
                if (about.Subcommands.FirstOrDefault(one => one.Name == word) is not { } inner)
                {
                    return CommandLine.Tell(shell, parsed, json: false, codeAnswers: false, () => new Answer.WrongUse(
                        $"There is no command '{word}'{(about is RootCommand ? "" : " of " + about.Name)}.{Misspelling.Offer(word, about.Subcommands.Select(one => one.Name))}"));
                }

                about = inner;
            }

            return root.Parse([.. Path(about), "--help"]).Invoke(new InvocationConfiguration { Output = shell.Out, Error = shell.Error, EnableDefaultExceptionHandler = false });
        });
        return command;
    }

    private static IEnumerable<string> Path(Command command) => command is RootCommand ? [] : [.. command.Parents.OfType<Command>().SelectMany(Path), command.Name];
}
