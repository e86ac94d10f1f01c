using System.CommandLine;
using Payday.Store;
using Payday.Text;

namespace Payday.Commands;

/// <summary>The commands of the program, and how their answers reach the shell.</summary>
internal static class CommandLine
{
    /// <summary>Done.</summary>
    public const int Fine = 0;

    /// <summary>Refused, with a reason on the error stream.</summary>
    public const int Refused = 1;

    /// <summary>Not called right.</summary>
    public const int WrongUse = 2;

    /// <summary>Runs one command line.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args, CommandShell shell)
    {
        ParseResult parsed = CommandTree.Build(shell).Parse(args);
        if (parsed.Errors.Count > 0 && parsed.Action is System.CommandLine.Invocation.ParseErrorAction)
        {
            return Say(shell, WrongUse, [.. parsed.Errors.Select(error => error.Message), "See payday --help."]);
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
    /// <param name="json">Whether the answer is for a script.</param>
    /// <param name="work">The work.</param>
    /// <returns>The exit code.</returns>
    public static int Tell(CommandShell shell, bool json, Func<Answer> work)
    {
        try
        {
            switch (work())
            {
                case Answer.Done done:
                    // Answers hold names from files; whatever they are, no control character reaches the terminal.
                    foreach (string line in json ? [done.Json] : done.Lines)
                    {
                        shell.Out.WriteLine(CleanText.OneLine(line));
                    }

                    return Fine;
                case Answer.WrongUse wrong:
                    return Say(shell, WrongUse, [wrong.Reason]);
                case Answer.Refused refused:
                    return Say(shell, Refused, refused.Reasons);
                default:
                    throw new InvalidOperationException("An answer is one of its cases.");
            }
        }
        catch (StoreException fault)
        {
            return Say(shell, Refused, [fault.Message]);
        }
        catch (OverflowException)
        {
            return Say(shell, Refused, ["The amounts are too large: a sum of them passes what 64 bits can hold. Use smaller ones."]);
        }
    }

    private static int Say(CommandShell shell, int exit, IReadOnlyList<string> lines)
    {
        foreach (string line in lines)
        {
            shell.Error.WriteLine("payday: " + CleanText.OneLine(line));
        }

        return exit;
    }
}
