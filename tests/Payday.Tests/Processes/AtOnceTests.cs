using Payday.Commands;
using Payday.Core.Books;
using Payday.Store;
using Payday.Tests.Commands;

namespace Payday.Tests.Processes;

/// <summary>Two processes that want to write between paydays: one does, the other says that it couldn't, and nothing is half done.</summary>
public sealed class AtOnceTests : IDisposable
{
    private static readonly string[] Changes =
    [
        "entry out 1 --for buffer --what fee",
        "move Reserve buffer 1",
        "due Rent 1",
        "reconcile --balance 1 --accept",
    ];

    // A second time it has nothing new.
    private const string Statement = "statement bank.csv --take 1=fee --accept";

    private readonly TestShell shell = new();

    public AtOnceTests()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The shell is bash.");
        ImportCommand.Import(shell.Data, DemoCommand.Household());
        shell.File("bank.csv", "Date,Text,Amount,Balance\n2026-03-07,Account fee,-4.50,95.50\n2026-03-09,Corner shop,-1.25,94.25\n");
    }

    public static TheoryData<string> EachChange => [.. Changes, Statement];

    // The full screen is open elsewhere.
    [Theory]
    [MemberData(nameof(EachChange))]
    public void Command_WhileTheBookIsOpen_IsRefusedInOneSentence(string command)
    {
        using BookStore open = BookStore.Open(shell.Data);
        Book before = open.Load()!;

        Ended ended = BuiltProgram.Run($"payday --data data {command}", shell.In(""));

        Assert.Equal((1, ""), (ended.Exit, ended.Out));
        Assert.Contains("open", Assert.Single(ended.Sentences), StringComparison.Ordinal);
        Assert.Equal(before.Ledger.Movements.Count, open.Load()!.Ledger.Movements.Count);
    }

    [Fact]
    public void Commands_AtOnce_AreEachDoneOrRefused_AndTheBookIsWhole()
    {
        string[] all = [.. Changes, .. Changes];
        string line = string.Join('\n', all.Select((command, i) => $"{{ payday --data data {command} >out{i} 2>err{i}; echo $? >exit{i}; }} &")) + "\nwait\npayday --data data check";

        Ended ended = BuiltProgram.Run(line, shell.In(""));

        Assert.True(ended.Exit == 0, ended.Out + ended.Error);
        using BookStore open = BookStore.Open(shell.Data);
        WeekRecords weeks = open.Load()!.Weeks;
        int[] written = [weeks.Entries.Length, weeks.Moves.Length, weeks.Payments.Length, weeks.Reconciliations.Length];
        Assert.True(written.Sum() > 0);
        for (int i = 0; i < Changes.Length; i++)
        {
            int[] exits = [.. new[] { i, i + Changes.Length }.Select(run => int.Parse(File.ReadAllText(shell.In($"exit{run}")), System.Globalization.CultureInfo.InvariantCulture))];
            Assert.All(exits, exit => Assert.InRange(exit, 0, 1));
            Assert.Equal(exits.Count(exit => exit == 0), written[i]);
            Assert.All(
                new[] { i, i + Changes.Length }.Where(run => File.ReadAllText(shell.In($"exit{run}")).Trim() == "1"),
                run => Assert.StartsWith("payday: ", File.ReadAllText(shell.In($"err{run}")), StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Statement_TakenByTwoAtOnce_IsTakenOnce()
    {
        Ended ended = BuiltProgram.Run($"for i in 0 1; do {{ payday --data data {Statement} >out$i 2>err$i; echo $? >exit$i; }} & done; wait; payday --data data check", shell.In(""));

        Assert.True(ended.Exit == 0, ended.Out + ended.Error);
        using BookStore open = BookStore.Open(shell.Data);
        WeekRecords weeks = open.Load()!.Weeks;
        Assert.Equal((1, 1), (weeks.Entries.Length, weeks.Reconciliations.Length));
        Assert.Contains("0", Enumerable.Range(0, 2).Select(run => File.ReadAllText(shell.In($"exit{run}")).Trim()));
    }

    public void Dispose() => shell.Dispose();
}
