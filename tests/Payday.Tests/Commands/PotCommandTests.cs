namespace Payday.Tests.Commands;

/// <summary>What becomes of a sinking pot, said by command.</summary>
public class PotCommandTests
{
    [Theory]
    [InlineData("--finished", "Week at the lake is finished and gets nothing any more.", "finished")]
    [InlineData("--repeats=yearly", "Week at the lake is needed by Fri 31 Jul 2026 and again by each date after it; what was spent counts for the first.", "1,050 short, 49 paydays")]
    [InlineData("--go-on", "Week at the lake is filled on until Fri 31 Jul 2026.", "1,050 short, 14 paydays")]
    [InlineData("--by=2026-08-31", "Week at the lake is filled on until Mon 31 Aug 2026.", "1,050 short, 17 paydays")]
    public void Pot_ThatWasSpent_IsAnswered(string answer, string said, string why)
    {
        using TestShell shell = Spent();
        string asked = string.Join(' ', shell.Run("run").Fine().Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("84 spent: bought?", asked, StringComparison.Ordinal);
        Assert.Contains("? Week at the lake: 84.00 was spent, so it counts as bought; 400.00 is left. Nothing is proposed until you say what becomes of it: payday pot \"Week at the lake\" --finished, --repeats yearly or --go-on.", asked, StringComparison.Ordinal);

        Assert.Contains("\"asks\":\"bought\"", shell.Run("run", "--json").Fine().Out, StringComparison.Ordinal);

        Assert.Equal(said, shell.Run("pot", "week at the lake", answer).Fine().Lines[^1]);

        string after = shell.Run("run").Fine().Out;
        Assert.Contains(why, after, StringComparison.Ordinal);
        Assert.DoesNotContain("? Week at the lake", after, StringComparison.Ordinal);
        Assert.DoesNotContain("\"asks\":\"", shell.Run("run", "--json").Fine().Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new[] { "pot", "Food", "--finished" }, 1, "Food has no target by a date, so there is nothing to say of it.")]
    [InlineData(new[] { "pot", "Week at the lake", "--by", "2026-03-01" }, 1, "No payday comes by 1 Mar 2026 any more; name 20 Mar 2026, the next one, or a later day.")]
    [InlineData(new[] { "pot", "Week at the lake" }, 2, "Say one of --finished, --repeats, --go-on and --by.")]
    [InlineData(new[] { "pot", "Week at the lake", "--go-on", "--finished" }, 2, "Say one of --finished, --repeats, --go-on and --by.")]
    [InlineData(new[] { "pot", "Lake", "--go-on" }, 2, "There is no pot 'Lake'; there is ")]
    public void Pot_WrongWords_ChangesNothingAndSaysWhy(string[] line, int exit, string fault)
    {
        using TestShell shell = Spent();
        string before = shell.Run("export").Fine().Out;

        Ran ran = shell.Run(line);

        Assert.Equal(exit, ran.Exit);
        Assert.Contains(fault, ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, shell.Run("export").Fine().Out);
    }

    // It has 400 before the first payday and 484 from then on: what is bought the day before is paid with its first fill, and that is said.
    [Theory]
    [InlineData("2026-03-05", true)]
    [InlineData("2026-03-06", false)]
    public void Spend_BeforeThePotsFill_SaysWhatPaysForIt(string day, bool early)
    {
        using TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();

        string said = shell.Run("spend", "Week at the lake", "450", "--on", day) is { Exit: 0 } ran
            ? string.Join(' ', ran.Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
            : "";

        Assert.Equal(early, said.Contains("hadn't that much by 5 Mar 2026; what it got by 6 Mar 2026 pays for it.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2026-13", 2, "--month 2026-13: write a month as 2026-04.")]
    [InlineData("2025-12", 1, "The household begins in")]
    public void ShowMonths_WrongMonth_SaysWhy(string month, int exit, string fault)
    {
        using TestShell shell = TestShell.WithDemo();

        Ran ran = shell.Run("show", "months", "--month", month);

        Assert.Equal(exit, ran.Exit);
        Assert.Contains(fault, ran.Error, StringComparison.Ordinal);
    }

    private static TestShell Spent()
    {
        TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        shell.Today = new(2026, 3, 12);
        shell.Run("spend", "Week at the lake", "84", "--on", "2026-03-10").Fine();
        return shell;
    }
}
