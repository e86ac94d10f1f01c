using System.Text.Json.Nodes;
using Payday.Tests.Screens;

namespace Payday.Tests.Commands;

/// <summary>An account that begins below zero, from the shell.</summary>
public sealed class OverdraftCommandTests
{
    [Fact]
    public void Run_AsProposed_PaysItOffFirst()
    {
        using TestShell shell = Below();

        Assert.Contains("300.00 pays off the overdraft of 300.00 first. What an overdraft costs", shell.Run("run").Fine().Out, StringComparison.Ordinal);
        JsonNode run = JsonNode.Parse(shell.Run("run", "--accept", "--json").Fine().Out)!;

        Assert.Equal(("300.00", "0.00"), ((string?)run["toOverdraft"], (string?)run["leftToPlace"]));
        Assert.DoesNotContain("overdraft", shell.Run("show").Out, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("The account began 300.00 below zero; that overdraft is paid off.", shell.Run("show", "year").Fine().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Overdraft_LeavesTheRest()
    {
        using TestShell shell = Below();

        shell.Run("run", "--overdraft", "100", "--accept").Fine();

        Assert.Contains("overdraft", shell.Run("show").Out, StringComparison.Ordinal);
        Assert.Contains("-200.00", shell.Run("show").Out, StringComparison.Ordinal);
        Assert.Equal("200.00", (string?)JsonNode.Parse(shell.Run("ahead", "--json").Fine().Out)!["paydays"]![0]!["toOverdraft"]);
        Assert.Contains("200.00 of that overdraft is left, beside", shell.Run("show", "year").Fine().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_OverdraftReopened_IsAsItWas()
    {
        using TestShell shell = Below();
        string before = Purposes();
        shell.Run("run", "--overdraft", "100", "--accept").Fine();

        shell.Run("undo", "--payday", "--drop").Fine();

        Assert.Equal(before, Purposes());

        string Purposes() => JsonNode.Parse(shell.Run("show", "--json").Out)!["purposes"]!.ToJsonString();
    }

    [Theory]
    [InlineData("301", "--overdraft: the overdraft is 300.00; write that much at most.")]
    [InlineData("x", "--overdraft: 'x' is not an amount; write it like 12.55.")]
    public void Run_OverdraftThatIsNone_IsWrongUse(string amount, string expected)
    {
        using TestShell shell = Below();

        Ran ran = shell.Run("run", "--overdraft", amount);

        Assert.Equal(2, ran.Exit);
        Assert.Contains(expected, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_OverdraftWithoutOne_IsWrongUse()
    {
        using TestShell shell = TestShell.WithDemo();

        Assert.Contains("--overdraft: the account has no overdraft.", shell.Run("run", "--overdraft", "1").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Reconcile_BelowZero_Agrees()
    {
        using TestShell shell = Below();

        Assert.Contains("It agrees.", shell.Run("reconcile", "--balance=-300").Fine().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Export_OfIt_IsReadAgain()
    {
        using TestShell shell = Below();
        string written = shell.Run("export").Fine().Out;
        using var other = new TestShell();

        other.Run("import", other.File("again.json", written)).Fine();

        Assert.Equal(written, other.Run("export").Fine().Out);
        Assert.Contains("\"account\": \"-300.00\"", written, StringComparison.Ordinal);
    }

    private static TestShell Below()
    {
        var shell = new TestShell();
        shell.Run("import", shell.File("below.json", OverdraftScreenTests.File)).Fine();
        return shell;
    }
}
