using NodaTime;
using Payday.Json;
using Payday.Tests.Slips;

namespace Payday.Tests.Commands;

public sealed class ReconcileCommandTests
{
    [Fact]
    public void Reconcile_FromLinesToUndo_IsAsRecorded()
    {
        using TestShell shell = Spent();
        Equal(shell, "reconcile", 0, "reconcile");
        Equal(shell, "reconcile-off", 0, "reconcile", "--balance", "9000", "--at", Number(shell, 0), "--at", Number(shell, 1));
        Equal(shell, "reconcile-none", 1, "reconcile", "--at", "9999");
        Equal(shell, "reconcile-no-balance", 1, "reconcile", "--accept");
    }

    [Fact]
    public void Accept_WithAllThatIsThere_Agrees_AndCanBeTakenBack()
    {
        using TestShell shell = Spent();
        string[] at = [.. Numbers(shell).SelectMany(number => new[] { "--at", number })];
        string here = System.Text.Json.JsonDocument.Parse(shell.Run("reconcile", "--json").Fine().Out).RootElement.GetProperty("here").GetString()!;
        Assert.Equal("Agreed and stored.", shell.Run(["reconcile", "--balance", here, .. at, "--accept"]).Fine().Lines[^1]);
        Assert.Contains("Agreed with the bank on Sun 8 Mar.", shell.Run("show").Fine().Out, StringComparison.Ordinal);
        Assert.Equal(
            new Ran(1, "", "payday: Card purchase 1 is at the bank by the reconciliation of 8 Mar 2026; take that back first. payday reconcile --undo\n"),
            shell.Run("spend", "--undo", "1"));
        Assert.Equal(["The reconciliation, Sun 8 Mar.", "Taken back."], shell.Run("reconcile", "--undo").Fine().Lines);
        shell.Run("spend", "--undo", "1").Fine();
        Assert.Equal(new Ran(1, "", "payday: The account was not compared with the bank yet.\n"), shell.Run("reconcile", "--undo"));
    }

    // A fee that isn't entered yet: its difference has a name, in view in every answer until the fee is entered.
    [Fact]
    public void Accept_WithADifferenceAndItsName_KeepsThemInViewUntilExplained()
    {
        using TestShell shell = Spent();
        Assert.EndsWith("bank not looked at yet", Assert.Single(shell.Run("status").Lines), StringComparison.Ordinal);
        Assert.Null(Status(shell).Bank);
        string[] at = [.. Numbers(shell).SelectMany(number => new[] { "--at", number })];
        decimal here = decimal.Parse(System.Text.Json.JsonDocument.Parse(shell.Run("reconcile", "--json").Fine().Out).RootElement.GetProperty("here").GetString()!, System.Globalization.CultureInfo.InvariantCulture);
        string bank = (here - 3.10m).ToString(System.Globalization.CultureInfo.InvariantCulture);
        Equal(shell, "reconcile-named", 0, ["reconcile", "--balance", bank, .. at, "--accept", "--name", "a \u001b[31mfee?"]);
        Assert.EndsWith("bank 3.10 less on Sun 8 Mar (\"a ?[31mfee?\")", Assert.Single(shell.Run("status").Lines), StringComparison.Ordinal);
        Assert.Equal(("-3.10", false), (Status(shell).Bank!.Difference, Status(shell).Bank!.Explained));
        Assert.Contains("! The bank had 3.10 less than it should on Sun 8 Mar", shell.Run("show").Fine().Out, StringComparison.Ordinal);

        shell.Run("entry", "out", "3.10", "--for", "buffer").Fine();
        Assert.EndsWith(", explained", Assert.Single(shell.Run("status").Lines), StringComparison.Ordinal);
        Assert.DoesNotContain("! The bank", shell.Run("show").Fine().Out, StringComparison.Ordinal);
        shell.Run("reconcile", "--balance", bank, "--at", Number(shell, 0), "--accept").Fine();
        Assert.EndsWith("agreed with the bank on Sun 8 Mar", Assert.Single(shell.Run("status").Lines), StringComparison.Ordinal);
        Assert.Equal(2, shell.Run("reconcile", "--balance", bank, "--name", "fee").Exit);
        Assert.Equal(2, shell.Run("reconcile", "--balance", bank, "--accept", "--name", new string('x', 61)).Exit);
    }

    // A machine that gives 300 a visit: the bank shows each by itself; the last one brought less than its slip asked for.
    [Fact]
    public void Lines_OfTripsToAMachine_AreOneADay_AlsoOnceOtherNotesWereReceived()
    {
        using TestShell shell = TestShell.WithDemo();
        shell.Today = new LocalDate(2026, 3, 6);
        shell.Run("run", "--accept", "--bank", "20 10 / 300").Fine();
        string[] trips = Fetched(shell);
        Assert.Equal("-300.00", trips[0]);
        Assert.True(trips.Length > 1);

        System.Text.Json.JsonElement asked = System.Text.Json.JsonDocument.Parse(shell.Run("slip", "--json").Fine().Out).RootElement.GetProperty("withdraw");
        string got = string.Join(',', asked.EnumerateObject().Select(note => $"{note.Name}={note.Value.GetInt32() - (note.Name == "10" ? 1 : 0)}"));
        shell.Run("fill", "--got", got).Fine();
        string[] less = Fetched(shell);
        Assert.Equal(trips[..^1], less[..^1]);
        Assert.Equal(Cents(trips[^1]) + 1000, Cents(less[^1]));
        shell.Run("fill", "--got", "slip").Fine();
        Assert.Equal(trips, Fetched(shell));
    }

    [Fact]
    public void Reconcile_CalledWrong_SaysHow()
    {
        using TestShell shell = Spent();
        Assert.Equal(2, shell.Run("reconcile", "--balance", "much").Exit);
        Assert.Equal(2, shell.Run("reconcile", "--at", "zero").Exit);
        Assert.Equal(2, shell.Run("reconcile", "--on", "2027-01-01").Exit);
    }

    private static TestShell Spent()
    {
        TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        shell.Today = new LocalDate(2026, 3, 8);
        shell.Run("spend", "Food", "12.34", "--what", "Corner shop").Fine();
        return shell;
    }

    private static long Cents(string plain) => (long)(decimal.Parse(plain, System.Globalization.CultureInfo.InvariantCulture) * 100);

    private static string[] Fetched(TestShell shell) =>
    [
        .. System.Text.Json.JsonDocument.Parse(shell.Run("reconcile", "--json").Fine().Out).RootElement.GetProperty("lines").EnumerateArray()
            .Where(line => line.GetProperty("what").GetString()!.StartsWith("Cash fetched", StringComparison.Ordinal))
            .Select(line => line.GetProperty("amount").GetString()!),
    ];

    private static StatusResult Status(TestShell shell) =>
        System.Text.Json.JsonSerializer.Deserialize(shell.Run("status", "--json").Out, ResultJson.Readable.StatusResult)!;

    private static string[] Numbers(TestShell shell) =>
    [
        .. System.Text.Json.JsonDocument.Parse(shell.Run("reconcile", "--json").Fine().Out).RootElement.GetProperty("lines").EnumerateArray()
            .Select(line => line.GetProperty("number").GetInt64().ToString(System.Globalization.CultureInfo.InvariantCulture)),
    ];

    private static string Number(TestShell shell, int at) => Numbers(shell)[at];

    private static void Equal(TestShell shell, string golden, int exit, params string[] line)
    {
        Ran ran = shell.Run(line);
        Assert.True(exit == ran.Exit, ran.Out + ran.Error);
        Golden.Equal(golden, (ran.Out + ran.Error).TrimEnd('\n').Split('\n'));
    }
}
