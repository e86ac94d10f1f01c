using NodaTime;

namespace Payday.Tests.Commands;

public sealed class UndoCommandTests
{
    [Fact]
    public void Payday_Reopened_IsToBeClosedAgain()
    {
        using TestShell shell = Closed();
        Assert.Equal(["The closed payday, Fri 6 Mar.", "Taken back."], shell.Run("undo", "--payday").Fine().Lines);
        Assert.Equal(new Ran(1, "", "payday: No payday has been closed yet, so there is none to reopen.\n"), shell.Run("undo", "--payday"));
        shell.Run("run", "--accept").Fine();
    }

    [Fact]
    public void Payday_WithSomethingSince_NamesTheCommand()
    {
        using TestShell shell = Closed();
        shell.Today = new LocalDate(2026, 3, 8);
        shell.Run("spend", "Food", "12.34").Fine();
        Assert.EndsWith("payday spend --undo 1\n", shell.Run("undo", "--payday").Error, StringComparison.Ordinal);
    }

    // A week that was counted by mistake, its difference cleared up and a return made: all of it is taken back, each by the command that the refusal before it named.
    [Fact]
    public void CountedByMistake_IsNoDeadEnd()
    {
        using TestShell shell = Closed();
        shell.Run("fill", "--on", "2026-03-06", "--done").Fine();
        shell.Today = new LocalDate(2026, 3, 8);
        shell.Run("spend", "Food", "12.34").Fine();
        shell.Today = new LocalDate(2026, 3, 12);
        shell.Run("count", "Food=21.50", "--move", "Food=buffer").Fine();
        shell.Run("return", "--confirm").Fine();
        string here = System.Text.Json.JsonDocument.Parse(shell.Run("reconcile", "--json").Fine().Out).RootElement.GetProperty("here").GetString()!;
        string[] at = [.. System.Text.Json.JsonDocument.Parse(shell.Run("reconcile", "--json").Out).RootElement.GetProperty("lines").EnumerateArray().SelectMany(line => new[] { "--at", line.GetProperty("number").GetRawText() })];
        shell.Run(["reconcile", "--balance", here, .. at, "--accept"]).Fine();

        string[] wanted = ["undo", "--payday"];
        for (int steps = 0; ; steps++)
        {
            Assert.InRange(steps, 0, 40);
            Ran ran = shell.Run(wanted);
            if (ran.Exit == 0 && wanted is ["undo", "--payday"])
            {
                break;
            }

            // What stands behind the last sentence of a refusal is the command; once it is done the first is tried again.
            wanted = ran.Exit == 0 ? ["undo", "--payday"] : Split(ran.Error[(ran.Error.LastIndexOf(" payday ", StringComparison.Ordinal) + 8)..]);
        }

        Assert.Contains("payday Fri 6 Mar", shell.Run("status").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Movement_WithoutAReason_OrAPart_IsRefused()
    {
        using TestShell shell = Closed();
        Assert.Equal(2, shell.Run("undo", "--movement", "30").Exit);
        Assert.Equal(2, shell.Run("undo").Exit);
        Assert.Equal(1, shell.Run("undo", "--movement", "9999", "--why", "odd").Exit);
        Assert.Equal(["The ledger line 30, Fri 6 Mar.", "Taken back."], shell.Run("undo", "--movement", "30", "--why", "typed twice").Fine().Lines);
        Assert.Equal(new Ran(1, "", "payday: No difference was cleared up yet.\n"), shell.Run("undo", "--difference"));
    }

    private static TestShell Closed()
    {
        TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        return shell;
    }

    private static string[] Split(string line) => [.. System.CommandLine.Parsing.CommandLineParser.SplitCommandLine(line.Trim())];
}
