using System.CommandLine;
using System.CommandLine.Invocation;
using Payday.Store;
using Payday.Text;

namespace Payday.Commands;

/// <summary>The commands of the program, and how their answers reach the shell.</summary>
internal static class CommandLine
{
    /// <summary>Done.</summary>
    public const int Fine = 0;

    /// <summary>Refused, with a reason on the error stream: a file, the household or the system stands in the way.</summary>
    public const int Refused = 1;

    /// <summary>Not called right: the mistake is in the command line itself.</summary>
    public const int WrongUse = 2;

    /// <summary>Runs one command line.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args, CommandShell shell)
    {
        ParseResult parsed = CommandTree.Build(shell).Parse(args);
        if (parsed.Errors.Count > 0 && parsed.Action is ParseErrorAction)
        {
            return NotCalledRight(shell, parsed, [.. parsed.Errors.Select(error => error.Message).Distinct()]);
        }

        return parsed.Invoke(new InvocationConfiguration
        {
            Output = shell.Out,
            Error = shell.Error,
            EnableDefaultExceptionHandler = false,
        });
    }

    /// <summary>Does a command's work and tells the shell.</summary>
    /// <param name="shell">The shell.</param>
    /// <param name="parsed">The command line.</param>
    /// <param name="json">Whether the answer is for a script.</param>
    /// <param name="work">The work.</param>
    /// <returns>The exit code.</returns>
    public static int Tell(CommandShell shell, ParseResult parsed, bool json, Func<Answer> work)
    {
        try
        {
            return work() switch
            {
                Answer.Done done => Say(shell.Out, "", Fine, json ? [done.Json] : done.Lines),
                Answer.Waiting waiting => Say(shell.Out, "", Refused, json ? [waiting.Json] : waiting.Lines),
                Answer.WrongUse wrong => NotCalledRight(shell, parsed, [wrong.Reason]),
                Answer.Refused refused => Refuse(shell, refused.Reasons),
                _ => throw new InvalidOperationException("An answer is one of its cases."),
            };
        }
        catch (StoreException fault)
        {
            return Refuse(shell, [fault.Message]);
        }
        catch (OverflowException)
        {
            return Refuse(shell, ["The amounts are too large: a sum of them passes what 64 bits can hold. Use smaller ones."]);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return Refuse(shell, [$"The system refused: {fault.Message.Split('\n')[0]}"]);
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            return Refuse(shell, [OwnFault.Sentence(fault)]);
        }
    }

    private static int Refuse(CommandShell shell, IReadOnlyList<string> reasons) => Say(shell.Error, "payday: ", Refused, reasons);

    private static int NotCalledRight(CommandShell shell, ParseResult parsed, string[] faults)
    {
        string command = parsed.CommandResult.Command is RootCommand ? "" : parsed.CommandResult.Command.Name + " ";
        faults[^1] += $" See payday {command}--help.";
        return Say(shell.Error, "payday: ", WrongUse, faults);
    }

    // Answers hold names from files; whatever they are, no control character reaches the terminal.
    private static int Say(TextWriter writer, string prefix, int exit, IReadOnlyList<string> lines)
    {
        foreach (string line in lines)
        {
            writer.WriteLine(prefix + CleanText.OneLine(line));
        }

        return exit;
    }
}
