using Payday.Commands;
using Payday.Store.HouseholdFiles;

namespace Payday.Tests.Commands;

public class RunCommandTests
{
    [Fact]
    public void Run_WithoutAccept_ChangesNothing()
    {
        using TestShell shell = TestShell.WithDemo();
        string before = shell.Run("show", "ledger").Fine().Out;

        shell.Run("run").Fine();

        Assert.Equal(before, shell.Run("show", "ledger").Fine().Out);
    }

    [Theory]
    [InlineData("--income", "odette, joinery=2300")]
    [InlineData("--one-off", "Bakes=15.5")]
    public void Run_WhatCameInWithoutAccept_IsShownAndNotStored(string option, string text)
    {
        using TestShell shell = TestShell.WithDemo();
        string before = shell.Run("run").Fine().Out;
        long stored = new FileInfo(shell.Data.Journal).Length;

        Ran told = shell.Run("run", option, text).Fine();

        Assert.Equal("Nothing is stored. Close it with the same line and --accept.", told.Lines[^1]);
        Assert.NotEqual(before, told.Out);
        Assert.Equal(before, shell.Run("run").Fine().Out);
        Assert.Equal(stored, new FileInfo(shell.Data.Journal).Length);
    }

    [Fact]
    public void RunAccept_WithWhatCameIn_ClosesWithIt()
    {
        using TestShell shell = TestShell.WithDemo();

        string closed = shell.Run("run", "--income", "odette, joinery=2300", "--one-off", "Cake = sale=15.5", "--accept").Fine().Out;

        Assert.Contains("*2,300.00", closed, StringComparison.Ordinal);
        Assert.Contains("Cake = sale", closed, StringComparison.Ordinal);
        Assert.Contains("2,300.00", shell.Run("show", "ledger", "--whole").Fine().Out, StringComparison.Ordinal);
    }

    // A name that is not one of theirs is neither taken for the nearest nor put on top.
    [Theory]
    [InlineData("Odette=100", "there is no income source 'Odette'. Did you mean \"Odette, joinery\"?")]
    [InlineData("Odete joinry=100", "there is no income source 'Odete joinry'. Did you mean \"Odette, joinery\"?")]
    [InlineData("Bakes=15.5", "there is no income source 'Bakes'. There are \"")]
    public void RunIncome_OfNoSource_IsRefusedWithTheNearest(string text, string part)
    {
        using TestShell shell = TestShell.WithDemo();

        Ran ran = shell.Run("run", "--income", text, "--accept");

        Assert.Equal((2, ""), (ran.Exit, ran.Out));
        Assert.Contains(part, ran.Error, StringComparison.Ordinal);
        Assert.Contains("Money from nobody on the list is --one-off \"Name=AMOUNT\".", ran.Error, StringComparison.Ordinal);
        Assert.StartsWith("Payday of Fri 6 Mar 2026 ", shell.Run("run").Fine().Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--one-off odette,_joinery=5", "Odette, joinery is an income source; correct what came from it with --income.")]
    [InlineData("--income Odette,_joinery=5 --income odette,_joinery=6", "Odette, joinery is there twice; give what came from it together.")]
    [InlineData("--one-off Cake=5 --one-off cake=6", "cake is there twice; give it once, or under two names.")]
    [InlineData("--one-off Cake", "write it like \"Night shifts=1204.55\"")]
    public void Run_WhatCameInMuddled_IsRefused(string line, string part)
    {
        using TestShell shell = TestShell.WithDemo();

        Ran ran = shell.Run(["run", .. line.Split(' ').Select(word => word.Replace('_', ' '))]);

        Assert.Equal((2, ""), (ran.Exit, ran.Out));
        Assert.Contains(part, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_OfAPaydayThatFallsShort_DoesNotOfferToCloseIt()
    {
        using TestShell shell = TestShell.WithDemo();

        Ran told = shell.Run("run", "--income", "Odette, joinery=700").Fine();

        // The buffer gives the 50.77 that it has above what it keeps.
        Assert.Equal("Nothing is stored. It can't be closed like this: Car loan can't be paid in full: 0.75 short by 18 Mar 2026.", told.Lines[^1]);
    }

    [Fact]
    public void Commands_OfAHouseholdWithADecimalComma_ReadAndShowItsNumbers()
    {
        using var shell = new TestShell();
        string file = shell.File("comma.json", HouseholdFile.Write(DemoCommand.Household()).Replace("\"1,234.56\"", "\"1.234,56\"", StringComparison.Ordinal));
        shell.Run("import", file).Fine();

        Assert.Contains("*2.300,50", shell.Run("run", "--income", "Odette, joinery=2.300,50").Fine().Out, StringComparison.Ordinal);
        Assert.Contains("write it like 12,55", shell.Run("run", "--income", "Odette, joinery=2300.50").Error, StringComparison.Ordinal);
        string debts = shell.Run("show", "debts").Fine().Out;
        Assert.Contains("1.846,19  23,49 %", debts, StringComparison.Ordinal);
        IReadOnlyList<string> projected = shell.Run("debts", "--extra", "0,00").Fine().Lines;
        Assert.Equal(projected.SkipLast(1), shell.Run("show", "debts").Fine().Lines.Take(projected.Count - 1));
    }

    [Fact]
    public void RunOneOff_OfNoSource_SaysThatItIsAOneOff()
    {
        using TestShell shell = TestShell.WithDemo();

        Ran ran = shell.Run("run", "--one-off", "Bakes=15.5").Fine();

        Assert.Contains("! Bakes is none of the income sources, so it counts as a one-off on top of them.", ran.Lines);
    }

    [Fact]
    public void RunIncome_WithControlCharacters_ReachesNoOutputRaw()
    {
        using TestShell shell = TestShell.WithDemo();

        Ran income = shell.Run("run", "--income", "a\u001b[31m\u0007b=5");
        Ran path = shell.Run("import", "no\u001b]0;title\u0007such\r\nfile");

        Assert.Equal((2, 1), (income.Exit, path.Exit));
        Assert.All(income.Error + path.Error, character => Assert.True(character is >= ' ' or '\n'));
    }

    [Fact]
    public void RunOn_PastAnOpenPayday_SaysThatItIsLeftOut()
    {
        using TestShell shell = TestShell.WithDemo();

        Ran ran = shell.Run("run", "--on", "2026-03-20").Fine();

        Assert.Contains("! The payday of Fri 6 Mar 2026 is left out: it can't be closed after this one.", ran.Lines);
    }

    [Fact]
    public void RunAccept_WhenItDoesNotFit_RefusesAndKeepsNothing()
    {
        using TestShell shell = TestShell.WithDemo();
        string poor = shell.Run("export").Fine().Out.Replace("\"account\": \"3318.37\"", "\"account\": \"2967.60\"", StringComparison.Ordinal);
        shell.RunOn(poor, "import", "-").Fine();

        Ran ran = shell.Run("run", "--income", "Odette, joinery=10", "--accept");

        Assert.Equal((1, ""), (ran.Exit, ran.Out));
        Assert.StartsWith("payday: This payday can't be closed. ", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith("Nothing was changed.\n", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("*10.00", shell.Run("run").Fine().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void RunAccept_Twice_ClosesTwoPaydays()
    {
        using TestShell shell = TestShell.WithDemo();

        Assert.StartsWith("Payday of Fri 6 Mar 2026 ", shell.Run("run", "--accept").Fine().Out, StringComparison.Ordinal);
        Assert.StartsWith("Payday of Fri 20 Mar 2026 ", shell.Run("run", "--accept").Fine().Out, StringComparison.Ordinal);
        Assert.Equal(
            new Ran(1, "", "payday: The payday of 2026-03-20 is closed, so none up to it can be worked on again.\n"),
            shell.Run("run", "--on", "2026-03-06"));
    }

    [Fact]
    public void SlipPdf_NotClosed_WritesItAndSaysSo()
    {
        using TestShell shell = TestShell.WithDemo();

        Ran ran = shell.Run("slip", "--pdf", shell.In("slip.pdf"), "--paper", "letter").Fine();

        Assert.Equal($"Written to {shell.In("slip.pdf")}, Letter.", ran.Lines[0]);
        Assert.Equal("This payday is not closed yet: the figures may still change.", ran.Lines[^1]);
        Assert.True(File.Exists(shell.In("slip.pdf")));
    }
}
