namespace Payday.Tests.Commands;

public class ShowDebtsTests
{
    [Fact]
    public void ShowDebts_OfTheDemo_ShowsTheWayOutAndSaysOnceWhoDecides()
    {
        using TestShell shell = TestShell.WithDemo();

        IReadOnlyList<string> lines = shell.Run("show", "debts").Fine().Lines;

        Assert.Contains("The highest rate first saves 48.74 of interest and takes as long.", lines);
        Assert.Contains(lines, line => line.StartsWith("Owed at minimums alone, over 36 months", StringComparison.Ordinal));
        Assert.Equal([lines.Count - 1], lines.Index().Where(line => line.Item.Contains("The lender's statement decides.", StringComparison.Ordinal)).Select(line => line.Index));
        Assert.All(lines, line => Assert.InRange(line.Length, 0, 80));
    }
}
