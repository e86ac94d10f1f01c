using System.Diagnostics;

namespace Payday.Tests.Commands;

/// <summary>What the shell completes: the names of the household too, whatever they hold.</summary>
public class CompletionTests(DemoShell demo) : IClassFixture<DemoShell>
{
    [Theory]
    [InlineData("payday pot ", "Winter coats")]
    [InlineData("payday count ", "Food=")]
    [InlineData("payday count --found ", "Food")]
    [InlineData("payday spend ", "buffer")]
    [InlineData("payday spend Food 3 --card ", "Dental plan")]
    [InlineData("payday due ", "Rent")]
    [InlineData("payday due ", "Dental plan")]
    [InlineData("payday move Food ", "Dental plan")]
    [InlineData("payday ahead --if ", "Rent=")]
    [InlineData("payday run --income ", "Odette, joinery=")]
    [InlineData("payday help ", "statement")]
    public void Suggest_WhereANameIsTaken_OffersThoseOfTheHousehold(string line, string name) =>
        Assert.Contains(name, demo.Begun.Run($"[suggest:{line.Length}]", line).Fine().Lines);

    [Fact]
    public void Suggest_WithoutAHousehold_OffersNoneAndMakesNothing()
    {
        using var shell = new TestShell();

        Ran ran = shell.Run("[suggest:12]", "payday pot ").Fine();

        Assert.All(ran.Lines, line => Assert.True(line.Length == 0 || line[0] == '-'));
        Assert.False(Directory.Exists(shell.Data.Path));
    }

    [Fact]
    public void Suggest_WhereTheJournalIsDamaged_OffersNone()
    {
        using TestShell shell = TestShell.WithDemo();
        File.WriteAllText(shell.Data.Journal, "damage");

        Assert.All(shell.Run("[suggest:11]", "payday pot ").Fine().Lines, line => Assert.True(line.Length == 0 || line[0] == '-'));
        Assert.Equal("damage", File.ReadAllText(shell.Data.Journal));
    }

    [Theory]
    [InlineData("", "Car\\ loan|Food=|\\$\\(touch\\ BAD\\)")]
    [InlineData("Car\\ l", "Car\\ loan")]
    [InlineData("\"Car l", "Car loan")]
    [InlineData("-", "--on")]
    [InlineData("x", "")]
    public void BashScript_OnNames_QuotesThemAndRunsNothing(string word, string offered)
    {
        Assert.SkipUnless(File.Exists("/bin/bash"), "There is no bash here.");
        using var scratch = new Payday.Tests.Printing.ScratchFolder();
        string script = string.Join('\n', demo.Begun.Run("completion", "bash").Fine().Lines);
        var start = new ProcessStartInfo("/bin/bash", ["--norc", "-c", $$"""
            payday() { printf '%s\n' 'Car loan' 'Food=' '$(touch BAD)' '--on'; }
            {{script}}
            COMP_WORDS=(payday count "$1"); COMP_CWORD=2; COMP_LINE="payday count $1"; COMP_POINT=${#COMP_LINE}
            _payday
            IFS='|'; printf '%s' "${COMPREPLY[*]}"
            """, "bash", word])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = scratch.Path,
        };
        using Process bash = Process.Start(start)!;
        string said = bash.StandardOutput.ReadToEnd();
        string wrong = bash.StandardError.ReadToEnd();
        bash.WaitForExit();

        Assert.Equal((offered, ""), (said, wrong));
        Assert.Empty(Directory.GetFiles(scratch.Path));
    }
}
