using NodaTime;
using Payday.Commands;
using Payday.Store.Folders;

namespace Payday.Faults.Households;

/// <summary>Runs commands in this process on a folder and a day of its own, and minds that each ends well and soon.</summary>
internal sealed class CommandPlayer(StoreFolder folder)
{
    // Far beyond what any command takes on a busy machine; only a hang comes to it.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly List<string> journal = [];

    public DateOnly Today { get; set; }

    /// <summary>All that was run, a line each, to play again by hand.</summary>
    public IReadOnlyList<string> Journal => journal;

    /// <summary>Runs one that may be refused.</summary>
    /// <exception cref="CommandFailure">It hung, met a fault of its own, or was refused without a sentence.</exception>
    public Said Run(params string[] args) => On("", args);

    /// <summary>Runs one that must be done, and has its answer as JSON.</summary>
    /// <exception cref="CommandFailure">It was not done.</exception>
    public Said Fine(params string[] args)
    {
        Said said = Run([.. args, "--json"]);
        return said.Exit == 0 ? said : throw Fail("REFUSED", $"{string.Join(' ', args)}: {said.Error}");
    }

    /// <summary>The same with a text on its standard input.</summary>
    public Said On(string input, params string[] args)
    {
        journal.Add($"{Today:yyyy-MM-dd} payday {string.Join(' ', args.Select(Quoted))}");
        Task<Said> run = Task.Run(() => Answer(input, args));
        if (!run.Wait(Patience))
        {
            throw Fail("HANG", "no answer after a minute");
        }

        Said said = run.Result;
        if (said.Exit is < 0 or > 2 || said.Error.Contains("fault of its own", StringComparison.Ordinal) || said.Error.Contains("   at ", StringComparison.Ordinal))
        {
            throw Fail("CRASH", said.Error);
        }

        return said.Out.Length == 0 && said.Error.Length == 0 ? throw Fail("SILENT", $"exit code {said.Exit} without a word") : said;
    }

    /// <summary>A failure with the last commands that led to it.</summary>
    public CommandFailure Fail(string kind, string detail) => new(kind, $"{detail}\n    {string.Join("\n    ", journal.TakeLast(4))}");

    private Said Answer(string input, string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        using var reader = new StringReader(input);
        DateOnly today = Today;
        try
        {
            int exit = CommandLine.Run(args, new CommandShell(output, error, reader, () => LocalDate.FromDateOnly(today), () => folder));
            return new Said(exit, output.ToString(), error.ToString());
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            return new Said(-1, output.ToString(), fault.ToString());
        }
    }

    private static string Quoted(string word) => word.All(letter => char.IsAsciiLetterOrDigit(letter) || "-.=/".Contains(letter)) ? word : $"'{word.Replace("'", @"'\''", StringComparison.Ordinal)}'";
}
