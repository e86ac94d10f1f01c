using System.CommandLine;
using System.CommandLine.Invocation;
using Payday.Store.Files;
using Payday.Text;
using Payday.Texts;

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

    /// <summary>What was asked can't be answered, from a command whose answer is its exit code.</summary>
    public const int CantTell = 3;

    // "@file" is a word like any other: what a purchase was may begin with it.
    private static readonly ParserConfiguration AsTyped = new() { ResponseFileTokenReplacer = null };

    /// <summary>Runs one command line.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args, CommandShell shell)
    {
        try
        {
            ParseResult parsed = CommandTree.Build(shell).Parse(args, AsTyped);
            return parsed.Errors.Count > 0 && parsed.Action is ParseErrorAction
                ? NotCalledRight(shell, parsed, Invocation.WantsJson(parsed), FaultKind.Usage, [.. parsed.Errors.Select(error => error.Message + Offer(parsed, error.Message)).Distinct()])
                : parsed.Invoke(new InvocationConfiguration { Output = shell.Out, Error = shell.Error, EnableDefaultExceptionHandler = false });
        }
        catch (Exception fault) when (IsOfStream(fault))
        {
            // What a command does is told by Tell; what is left is help, which does nothing.
            return Refuse(shell, null, Refused, [Lost(fault)]);
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            return Refuse(shell, null, Refused, [OwnFault.Sentence(fault)]);
        }
    }

    /// <summary>Does a command's work and tells the shell.</summary>
    /// <param name="shell">The shell.</param>
    /// <param name="parsed">The command line.</param>
    /// <param name="json">Whether the answer is for a script.</param>
    /// <param name="codeAnswers">Whether the exit code is the answer: 0 or 1, and <see cref="CantTell"/> for a refusal.</param>
    /// <param name="work">The work.</param>
    /// <returns>
    /// The exit code. It is that of what was done and found, not of what became of the output; only where nothing was changed
    /// and the code is not the answer, an answer that can't be written counts as refused.
    /// </returns>
    public static int Tell(CommandShell shell, ParseResult parsed, bool json, bool codeAnswers, Func<Answer> work)
    {
        Answer answer = Answered(work);
        switch (answer)
        {
            case Answer.WrongUse wrong:
                return NotCalledRight(shell, parsed, json, wrong.Kind, [wrong.Reason]);
            case Answer.Refused refused:
                return Refuse(shell, json ? refused.Kind : null, codeAnswers ? CantTell : Refused, refused.Reasons);
            default:
                (int exit, IReadOnlyList<string> lines, string document) = answer switch
                {
                    Answer.Done done => (Fine, done.Lines, done.Json),
                    Answer.Waiting waiting => (Refused, waiting.Lines, waiting.Json),
                    _ => throw new InvalidOperationException("An answer is one of its cases."),
                };
                return Say(shell.Out, "", json ? [AnswerJson.Of(document)] : [.. lines.Select(shell.Drawn)]) is not { } fault ? exit
                    : answer.HasChanged ? Refuse(shell, null, exit, ["It is done. " + Lost(fault)])
                    : Refuse(shell, null, codeAnswers ? exit : Refused, [Lost(fault)]);
        }
    }

    /// <summary>A fault as a sentence for the person.</summary>
    public static string Sentence(Exception fault) => fault switch
    {
        StoreException store => StoreTexts.Of(store.Fault),
        OverflowException => "The amounts are too large: a sum of them passes what 64 bits can hold. Use smaller ones.",
        IOException or UnauthorizedAccessException => $"The system refused: {TroubleTexts.Of(fault)}",
        _ => OwnFault.Sentence(fault),
    };

    private static Answer Answered(Func<Answer> work)
    {
        try
        {
            return work();
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            return new Answer.Refused([Sentence(fault)], FaultKind.Of(fault));
        }
    }

    // For a script the answer is one document here too; the sentences go where people look for them.
    private static int Refuse(CommandShell shell, string? kind, int exit, IReadOnlyList<string> reasons)
    {
        if (kind is not null)
        {
            _ = Say(shell.Out, "", [AnswerJson.Refusal(exit, kind, reasons)]);
        }

        _ = Say(shell.Error, "payday: ", reasons);
        return exit;
    }

    private static int NotCalledRight(CommandShell shell, ParseResult parsed, bool json, string kind, string[] faults)
    {
        string command = parsed.CommandResult.Command is RootCommand ? "" : parsed.CommandResult.Command.Name + " ";
        faults[^1] += $" See payday {command}--help.";
        return Refuse(shell, json ? kind : null, WrongUse, faults);
    }

    // Of a word that was not understood what may have been meant: an option, or a command where one could stand.
    private static string Offer(ParseResult parsed, string fault) =>
        parsed.UnmatchedTokens.FirstOrDefault(token => fault.Contains($"'{token}'", StringComparison.Ordinal)) is not { } word ? ""
            : Misspelling.Offer(word, word.StartsWith('-') ? Options(parsed.CommandResult.Command) : parsed.CommandResult.Command.Subcommands.Select(command => command.Name));

    private static IEnumerable<string> Options(Command command) => command.Options
        .Concat(command.Parents.OfType<Command>().SelectMany(above => above.Options.Where(option => option.Recursive)))
        .Where(option => !option.Hidden)
        .Select(option => option.Name);

    private static string Lost(Exception fault) => $"The answer can't be written to standard output: {TroubleTexts.Of(fault)}";

    private static bool IsOfStream(Exception fault) => fault is IOException or UnauthorizedAccessException or ObjectDisposedException;

    // Answers hold names from files; whatever they are, no control character reaches the terminal.
    private static Exception? Say(TextWriter writer, string prefix, IReadOnlyList<string> lines)
    {
        try
        {
            foreach (string line in lines)
            {
                writer.WriteLine(prefix + CleanText.OneLine(line));
            }

            writer.Flush();
            return null;
        }
        catch (Exception fault) when (IsOfStream(fault))
        {
            return fault;
        }
    }
}
