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

    [Fact]
    public void RunIncome_ForASource_IsKeptForTheNextRun()
    {
        using TestShell shell = TestShell.WithDemo();

        Ran told = shell.Run("run", "--income", "odette, joinery=2300").Fine();

        Assert.Equal("The amounts are kept; close the payday with payday run --accept.", told.Lines[^1]);
        Assert.Contains("Odette, joinery  2,287.64  *2,300.00", shell.Run("run").Fine().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_OfAPaydayThatFallsShort_DoesNotOfferToCloseIt()
    {
        using TestShell shell = TestShell.WithDemo();

        Ran told = shell.Run("run", "--income", "Odette, joinery=700").Fine();
        Ran again = shell.Run("run").Fine();

        // The buffer gives the 50.77 that it has above what it keeps.
        Assert.Equal("The amounts are kept. It can't be closed yet: Car loan can't be paid in full: 0.75 short by 18 Mar 2026.", told.Lines[^1]);
        Assert.EndsWith("It can't be closed yet: Car loan can't be paid in full: 0.75 short by 18 Mar 2026. Correct an income with --income \"Name=AMOUNT\".", string.Join(' ', again.Lines), StringComparison.Ordinal);
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
        Assert.Equal(debts, shell.Run("debts", "--extra", "0,00").Fine().Out);
    }

    [Fact]
    public void RunIncome_OfNoSource_SaysThatItIsAOneOff()
    {
        using TestShell shell = TestShell.WithDemo();

        Ran ran = shell.Run("run", "--income", "Bakes=15.5").Fine();

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
    public void RunAccept_WhenItDoesNotFit_RefusesAndKeepsWhatWasEntered()
    {
        using TestShell shell = TestShell.WithDemo();
        string poor = shell.Run("export").Fine().Out.Replace("\"account\": \"3318.37\"", "\"account\": \"2967.60\"", StringComparison.Ordinal);
        shell.RunOn(poor, "import", "-").Fine();

        Ran ran = shell.Run("run", "--income", "Odette, joinery=10", "--accept");

        Assert.Equal((1, ""), (ran.Exit, ran.Out));
        Assert.StartsWith("payday: This payday can't be closed. ", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith("What you entered is kept.\n", ran.Error, StringComparison.Ordinal);
        Assert.Contains("*10.00", shell.Run("run").Fine().Out, StringComparison.Ordinal);
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
