using System.Text.Json.Nodes;
using NodaTime;
using Payday.Store;

namespace Payday.Tests.Commands;

/// <summary>Looking back from the shell, and looking while another process has the book.</summary>
public sealed class LookCommandTests(DemoShell demo) : IClassFixture<DemoShell>
{
    [Fact]
    public void History_OfAPot_IsWhatTheScreenShows()
    {
        using TestShell shell = Counted();

        string shown = shell.Run("history", "food").Fine().Out;
        JsonNode history = JsonNode.Parse(shell.Run("history", "food", "--json").Fine().Out)!;

        Assert.StartsWith("History of Food", shown, StringComparison.Ordinal);
        Assert.Contains("counted, spent", shown, StringComparison.Ordinal);
        Assert.Equal(("Food", 1, "180.00"), ((string?)history["pot"], (int)history["weeksCounted"]!, (string?)history["spentAWeek"]));
        Assert.Contains(history["lines"]!.AsArray(), line => (string?)line!["kind"] == "counted" && (string?)line["amount"] == "180.00");
    }

    [Fact]
    public void Difference_ExplainedAndTakenBack_IsOpenAgain()
    {
        using TestShell shell = Counted();
        string open = shell.Run("difference").Fine().Out;
        Assert.Contains("the jar", open, StringComparison.Ordinal);

        Assert.Equal("It is cleared up.", shell.Run("difference", "food", "--explained").Fine().Lines[^1]);
        Assert.Equal("No count has an open difference.\n", shell.Run("difference").Fine().Out);
        Assert.Equal("Food has no open difference.", Refused(shell.Run("difference", "Food", "--turned-up"), 1));
        shell.Run("difference", "--undo").Fine();

        Assert.Equal(open, shell.Run("difference").Fine().Out);
        shell.Run("difference", "Food", "--turned-up", "--since", "2026-03-12").Fine();
        Assert.Equal("[]", JsonNode.Parse(shell.Run("difference", "--json").Fine().Out)!["open"]!.ToJsonString());
    }

    [Theory]
    [InlineData("difference Food", "Give a pot with --explained or --turned-up, or --undo alone.")]
    [InlineData("difference Food --explained --turned-up", "Give a pot with --explained or --turned-up, or --undo alone.")]
    [InlineData("difference Food --explained --since 2026-03-01", "Food has open differences since 2026-03-12; say which with --since DATE.")]
    [InlineData("history Nothing", "There is no pot 'Nothing'")]
    [InlineData("show ledger --about Fod", "there is no pot, bill, debt or income source 'Fod'. Did you mean \"Food\"?")]
    [InlineData("show ledger --dates soon", "--dates soon:")]
    [InlineData("show pots --about Food", "--whole, --about and --dates are of the ledger")]
    public void Look_AskedWrong_IsRefused(string line, string part)
    {
        using TestShell shell = Counted();

        Assert.Contains(part, Refused(shell.Run(line.Split(' ')), 2), StringComparison.Ordinal);
    }

    [Fact]
    public void Ledger_AboutOneAndOfSomeDays_IsThoseLines()
    {
        JsonNode fuel = JsonNode.Parse(demo.Closed.Run("show", "ledger", "--about", "fuel", "--json").Fine().Out)!;
        JsonNode early = JsonNode.Parse(demo.Closed.Run("show", "ledger", "--dates", "2026-03-05", "--json").Fine().Out)!;

        Assert.All(fuel["movements"]!.AsArray(), line => Assert.Contains("Fuel", $"{line!["from"]} {line["to"]}", StringComparison.Ordinal));
        Assert.NotEmpty(fuel["movements"]!.AsArray());
        Assert.All(early["movements"]!.AsArray(), line => Assert.Equal("2026-03-05", (string?)line!["date"]));
        Assert.Equal("No ledger line is like that.\n", demo.Closed.Run("show", "ledger", "--dates", "2020").Fine().Out);
        Assert.Matches(@"Fri(day)?,? 6 Mar", demo.Closed.Run("show", "ledger", "--about", "Fuel").Fine().Out);
    }

    [Fact]
    public void CountAndReturn_ByNotes_AreByThoseNotes()
    {
        using TestShell shell = Counted();
        shell.Run("count", "--undo").Fine();
        shell.Run("spend", "Food", "7.40").Fine();

        Assert.Contains("30.00", shell.Run("count", "--notes", "food=20=1,5=4").Fine().Out, StringComparison.Ordinal);
        JsonNode back = JsonNode.Parse(shell.Run("return", "--notes", "Food=5=2", "--json").Fine().Out)!;

        Assert.Equal("""{"5":2}""", back["pots"]!.AsArray().Single(pot => (string?)pot!["pot"] == "Food")!["notes"]!.ToJsonString());
        Assert.Contains("7 is no note in use", Refused(shell.Run("count", "--notes", "Food=7=1"), 2), StringComparison.Ordinal);
        Assert.Contains("There is no pot 'Fod'", Refused(shell.Run("return", "--notes", "Fod=5=1"), 2), StringComparison.Ordinal);
        Assert.Contains("write it like Food=20=2,5=1.", Refused(shell.Run("count", "--notes", "Food"), 2), StringComparison.Ordinal);
    }

    [Fact]
    public void Reopen_TakesTheLastPaydayUpAgain()
    {
        using TestShell shell = TestShell.WithDemo();
        string before = shell.Run("show", "pots").Fine().Out;
        Assert.Equal(1, shell.Run("reopen").Exit);
        shell.Run("run", "--accept").Fine();

        shell.Run("reopen").Fine();

        Assert.Equal(before, shell.Run("show", "pots").Fine().Out);
    }

    // Whatever only shows doesn't wait for the other, and says the same as without it.
    [Theory]
    [InlineData("run --pot Fuel=90")]
    [InlineData("count")]
    [InlineData("due")]
    [InlineData("fill")]
    [InlineData("return")]
    [InlineData("reconcile --balance 1000")]
    [InlineData("move Reserve Fuel 5 --show")]
    [InlineData("difference")]
    [InlineData("history Fuel")]
    [InlineData("statement --rules")]
    [InlineData("paydays --from 2026-03-01 --to 2026-04-01")]
    [InlineData("debts")]
    [InlineData("show ledger --about Fuel")]
    [InlineData("slip")]
    [InlineData("ahead")]
    [InlineData("status")]
    public void Showing_WhileAnotherHasIt_SaysTheSame(string line)
    {
        Ran before = demo.Closed.Run(line.Split(' '));
        using BookStore other = BookStore.Open(demo.Closed.Data);

        Ran look = demo.Closed.Run(line.Split(' '));

        Assert.Equal((before.Exit, before.Out), (look.Exit, look.Out));
        Assert.StartsWith("payday: note: Another Payday has ", look.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("run --keep")]
    [InlineData("count Fuel=3")]
    [InlineData("due Phones")]
    [InlineData("fill --done")]
    [InlineData("return --confirm")]
    [InlineData("reconcile --balance 1000 --accept")]
    [InlineData("move Reserve Fuel 5")]
    [InlineData("difference Food --explained")]
    [InlineData("reopen")]
    [InlineData("statement --rule words=fee")]
    public void Changing_WhileAnotherHasIt_IsRefused(string line)
    {
        using BookStore other = BookStore.Open(demo.Closed.Data);

        Assert.StartsWith("Another Payday has ", Refused(demo.Closed.Run(line.Split(' ')), 1), StringComparison.Ordinal);
    }

    private static string Refused(Ran ran, int exit)
    {
        Assert.Equal((exit, ""), (ran.Exit, ran.Out));
        return ran.Error.TrimEnd('\n')["payday: ".Length..];
    }

    // A week counted with five missing from Food.
    private static TestShell Counted()
    {
        TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        shell.Run("fill", "--done").Fine();
        shell.Today = new LocalDate(2026, 3, 12);
        shell.Run("count", "Food=20", "--missing", "Food=5", "--name", "the jar").Fine();
        return shell;
    }
}
