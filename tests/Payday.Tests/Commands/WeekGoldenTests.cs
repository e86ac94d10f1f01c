using NodaTime;
using Payday.Tests.Slips;
using Payday.Text;

namespace Payday.Tests.Commands;

/// <summary>What the commands of a week tell, whole, from the fill to the return.</summary>
public sealed class WeekGoldenTests
{
    [Fact]
    public void Week_FromFillToReturn_IsAsRecorded()
    {
        using TestShell shell = TestShell.WithDemo();
        Equal(shell, "status-payday-due", 1, "status");
        Equal(shell, "fill-none", 0, "fill");
        Equal(shell, "return-none", 0, "return");
        shell.Run("run", "--accept").Fine();
        Equal(shell, "status-fills", 1, "status");
        Equal(shell, "fill", 0, "fill");
        Equal(shell, "fill-done", 0, "fill", "--done", "--skip", "Eating out");
        Equal(shell, "status-nothing", 1, "status");

        shell.Today = new LocalDate(2026, 3, 8);
        Equal(shell, "spend", 0, "spend", "Food", "12.34", "--what", "Corner shop");
        Equal(shell, "spend-second", 0, "spend", "Fares", "4.10");
        Equal(shell, "spend-undo", 0, "spend", "--undo", "2");
        shell.File("list", "2026-03-07, 12.50, Corner shop 0517\n2026-03-08, 4, Chemist\n");
        Equal(shell, "spend-list", 0, "spend", "--list", shell.In("list"));
        Equal(shell, "spend-list-accept", 0, "spend", "--list", shell.In("list"), "--pot", "2=buffer", "--accept");
        Equal(shell, "status-owed", 1, "status");

        shell.Today = new LocalDate(2026, 3, 12);
        Equal(shell, "count", 0, "count");
        Equal(shell, "count-stored", 0, "count", "Food=21.50", "Fares=3+2", "--move", "Food=buffer");
        Equal(shell, "count-missing", 0, "count", "Fuel=10", "--missing", "Fuel=5", "--name", "torn pocket");
        Equal(shell, "status-difference", 1, "status");
        Equal(shell, "return", 0, "return");
        Equal(shell, "return-confirm", 0, "return", "--confirm");
        Equal(shell, "return-again", 1, "return", "--confirm");

        shell.Today = new LocalDate(2026, 3, 13);
        Equal(shell, "status-count-open", 1, "status");
    }

    private static void Equal(TestShell shell, string golden, int exit, params string[] line)
    {
        Ran ran = shell.Run(line);
        string text = ran.Out + ran.Error;
        Assert.True(exit == ran.Exit, $"{golden}: {text}");
        string[] lines = text.TrimEnd('\n').Split('\n');

        // A status is one line, however much waits.
        Assert.All(lines, one => Assert.InRange(TextColumns.Width(one), 0, golden.StartsWith("status", StringComparison.Ordinal) ? 120 : 80));
        Golden.Equal(golden, lines);
    }
}
