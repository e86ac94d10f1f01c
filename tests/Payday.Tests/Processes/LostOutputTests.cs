using Payday.Commands;
using Payday.Store.HouseholdFiles;
using Payday.Tests.Commands;

namespace Payday.Tests.Processes;

/// <summary>
/// Standard output full, closed, or with nobody reading it. The exit code tells of what was done: a change that is stored is
/// never told as refused, for a script would do it twice.
/// </summary>
public sealed class LostOutputTests : IDisposable
{
    private const string Lost = "The answer can't be written to standard output: ";

    private readonly TestShell shell = new() { Today = new(2026, 3, 12) };

    public LostOutputTests() => Assert.SkipUnless(OperatingSystem.IsLinux(), "A full output is a device of Linux.");

    // What goes before, in this process; and the command, whose answer is lost.
    public static TheoryData<string, string, string> Changes()
    {
        var all = new TheoryData<string, string, string>();
        foreach (string output in new[] { ">/dev/full", ">&-" })
        {
            all.Add("", "import household.json", output);
            all.Add("import household.json", "run --accept", output);
            all.Add("import household.json|run --accept", "fill --done --on 2026-03-06", output);
            all.Add("import household.json|run --accept", "fill --skip Food --on 2026-03-06", output);
            all.Add("import household.json|run --accept", "count Food=21.50 --on 2026-03-12", output);
            all.Add("import household.json|run --accept", "spend Food 12.34 --on 2026-03-07", output);
            all.Add("import household.json|run --accept", "spend --list list --pot 1=Food --accept", output);
            all.Add("import household.json|run --accept|spend Food 12.34 --on 2026-03-07", "spend --undo 1", output);
            all.Add("import household.json|run --accept|spend Food 12.34 --on 2026-03-07", "return --confirm", output);
            all.Add("import household.json|run --accept", "undo --payday", output);
            all.Add("import household.json|run --accept", "reconcile --balance 1 --accept", output);
            all.Add("import household.json|run --accept", "due Phones --on 2026-03-06", output);
            all.Add("import household.json|run --accept", "due 'Dental plan' --extra yes", output);
            all.Add("import household.json|run --accept", "move Reserve buffer 5 --on 2026-03-06", output);
            all.Add("import household.json|run --accept", "entry out 4.50 --for buffer --what fee --on 2026-03-06", output);
            all.Add("import household.json", "pot Birthdays --by 2030-05-01", output);
            all.Add("import household.json|run --accept", "reopen", output);
            all.Add("import household.json|run --accept|count Food=21.50 --missing Food=1 --name Bus --on 2026-03-12", "difference Food --explained", output);
            all.Add("import household.json", "add bill 'Choir 18 1st'", output);
            all.Add("import household.json", "change bill Rent amount=1460", output);
            all.Add("import household.json", "end bill Rent 2027-01-31", output);
            all.Add("import household.json", "order bill Rent 2", output);
            all.Add("import household.json", "remove bill Rent", output);
            all.Add("import household.json", "set fill-day=Monday", output);
            all.Add("import household.json", "calendar --ics days.ics", output);
            all.Add("import household.json", "backup", output);
            all.Add("import household.json", "backup . --always", output);
            all.Add("import household.json|run --accept|backup .", "restore payday-*.gz --accept", output);
            all.Add("import household.json", "slip --pdf slip.pdf", output);
            all.Add("import household.json", "report --pdf report.pdf", output);
            all.Add("import household.json", "export --csv tables", output);
        }

        return all;
    }

    public static TheoryData<string> Looks() =>
    [
        "demo", "", "ask", "run", "run --one-off Cake=5", "slip", "slip --filling", "show", "show pots", "show ledger", "fill --on 2026-03-06", "count", "spend --list list --pot 1=Food", "return", "due", "reconcile", "ahead", "report", "export", "check", "restore", "calendar", "history Food", "difference", "set", "help", "help spend", "manual", "manual payday-household",
        "split 70 --weeks 4 --unit 10", "notes notes.json", "setaside setaside.json", "debts", "paydays --from 2026-01-01 --to 2026-12-31", "completion bash", "statement march.csv --read --currency USD", "learn year.csv --currency USD", "--help", "spend --help", "--version", "run --json",
    ];

    [Theory]
    [MemberData(nameof(Changes))]
    public void Change_WhoseAnswerIsLost_IsDoneAndToldSo(string before, string command, string output)
    {
        Prepare(before);
        string was = Everything();

        Ended ended = BuiltProgram.Run($"payday {command} --data data {output}", shell.In(""));

        Assert.StartsWith("payday: It is done. " + Lost, ended.Sentences.Single(), StringComparison.Ordinal);
        Assert.Equal(0, ended.Exit);
        Assert.NotEqual(was, Everything());
    }

    // A command that comes later belongs into one of the tables.
    [Fact]
    public void Tables_NameEveryCommand()
    {
        IEnumerable<string> tried = [.. Changes().Select(row => row.Data.Item2), .. Looks().Select(row => row.Data), "status"];
        IEnumerable<string> there = CommandTree.Build(new CommandShell(TextWriter.Null, TextWriter.Null, TextReader.Null, () => shell.Today, () => shell.Data)).Subcommands.Select(command => command.Name);

        Assert.Empty(there.Except(tried.Select(line => line.Split(' ')[0])));
    }

    [Fact]
    public void Change_ThatNobodyReads_IsDone()
    {
        Prepare("import household.json|run --accept");

        Ended ended = BuiltProgram.Run("payday spend Food 1.23 --on 2026-03-07 --data data | true; exit ${PIPESTATUS[0]}", shell.In(""));

        Assert.Equal(0, ended.Exit);
        _ = ended.Sentences;
        Assert.Contains("1.23", shell.Run("show", "ledger").Fine().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Change_WithNothingToTellItBy_IsDoneAllTheSame()
    {
        Prepare("import household.json");

        Assert.Equal(0, BuiltProgram.Run("payday run --accept --data data >/dev/full 2>/dev/full", shell.In("")).Exit);
        Assert.Equal(0, BuiltProgram.Run("payday run --accept --data data <&- >&- 2>&-", shell.In("")).Exit);
        Assert.Equal(1, BuiltProgram.Run("payday run --on 2026-03-06 --data data >&- 2>&-", shell.In("")).Exit);

        Assert.Equal("Nothing is wrong.", shell.Run("check").Fine().Lines[^1]);
        Assert.StartsWith("Payday of Wed 25 Mar 2026 ", shell.Run("run").Fine().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void CheckMend_WhoseAnswerIsLost_KeepsTheCodeOfWhatItFound()
    {
        Prepare("import household.json");

        Ended ended = BuiltProgram.Run("chmod 644 data/payday.journal; payday check --mend --data data >/dev/full", shell.In(""));

        Assert.Equal((0, "payday: It is done. "), (ended.Exit, ended.Sentences.Single()[..20]));
    }

    [Theory]
    [MemberData(nameof(Looks))]
    public void Look_WhoseAnswerIsLost_IsRefusedInOneSentence(string command)
    {
        Prepare("import household.json");
        string was = Everything();

        Ended ended = BuiltProgram.Run($"payday {command} {(command is "--version" ? "" : "--data data")} >/dev/full", shell.In(""));

        Assert.StartsWith("payday: " + Lost, ended.Sentences.Single(), StringComparison.Ordinal);
        Assert.Equal((1, was), (ended.Exit, Everything()));
    }

    // Its answer is its exit code.
    [Fact]
    public void Status_WhoseAnswerIsLost_StillAnswers()
    {
        Prepare("import household.json");

        Assert.Equal(1, BuiltProgram.Run("payday status --data data >&-", shell.In("")).Exit);
        Assert.Equal(3, BuiltProgram.Run("payday status --data nowhere >/dev/full", shell.In("")).Exit);
    }

    public void Dispose() => shell.Dispose();

    private void Prepare(string lines)
    {
        shell.File("household.json", HouseholdFile.Write(DemoCommand.Household()));
        shell.File("list", "2026-03-07,4.00,Bakery\n");
        shell.File("march.csv", "Date,Text,Amount,Balance\n2026-03-07,Corner shop,-4.00,96.00\n2026-03-28,Pay,50.00,146.00\n");
        shell.File("year.csv", "Date,Text,Amount\n" + string.Concat(Enumerable.Range(1, 12).Select(month => $"2025-{month:00}-10,Bay internet,-34.00\n2025-{month:00}-28,Pay,50.00\n")));
        shell.File("notes.json", """{"currency":"USD","notes":["50","20"],"pots":[{"name":"Sixty","amount":"60.00"}]}""");
        shell.File("setaside.json", """{"currency":"USD","held":"0.00","paydays":[{"date":"2026-01-02","income":"500.00"}],"dues":[{"bill":"Rent","date":"2026-01-20","amount":"60.00"}]}""");
        foreach (string line in lines.Split('|', StringSplitOptions.RemoveEmptyEntries))
        {
            shell.Run([.. line.Split(' ').Select(word => word is "." or "household.json" ? shell.In(word) : word)]).Fine();
        }
    }

    // The names and lengths of all files here, but those of the lock, which come and go.
    private string Everything() => string.Join('\n', new DirectoryInfo(shell.In(""))
        .EnumerateFiles("*", SearchOption.AllDirectories)
        .Where(file => file.Name is not ("payday.lock" or "payday.holder" or "payday.db" or "payday-log.db"))
        .Select(file => $"{file.FullName} {file.Length}")
        .Order(StringComparer.Ordinal));
}
