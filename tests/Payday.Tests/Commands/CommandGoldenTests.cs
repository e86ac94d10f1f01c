using Payday.Tests.Slips;
using Payday.Text;

namespace Payday.Tests.Commands;

/// <summary>What a person reads, whole, on the demo household.</summary>
public class CommandGoldenTests(DemoShell demo) : IClassFixture<DemoShell>
{
    [Fact]
    public void Demo_AsAWhole_IsAsRecorded()
    {
        using var shell = new TestShell();

        Check("demo", shell.Run("demo"));
        Assert.False(Directory.Exists(shell.Data.Path));
    }

    [Theory]
    [InlineData("overview", "")]
    [InlineData("run", "run")]
    [InlineData("show-pots", "show pots")]
    [InlineData("show-bills", "show bills")]
    [InlineData("show-debts", "show debts")]
    [InlineData("show-calendar", "show calendar")]
    [InlineData("show-months", "show months")]
    [InlineData("show-months-json", "show months --json")]
    [InlineData("show-pots-json", "show pots --json")]
    [InlineData("show-year", "show year")]
    [InlineData("report", "report")]
    [InlineData("report-year", "report --year 2026")]
    [InlineData("ahead", "ahead")]
    [InlineData("ahead-if", "ahead --paydays 6 --if Rent=2900")]
    [InlineData("show-ledger", "show ledger")]
    [InlineData("slip", "slip")]
    [InlineData("slip-filling", "slip --filling")]
    [InlineData("slip-filling-42", "slip --filling --width 42")]
    [InlineData("slip-not-closed", "slip --on 2026-03-20")]
    public void Run_AfterOneClosedPayday_IsAsRecorded(string golden, string line) =>
        Check(golden, demo.Closed.Run(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)));

    private static void Check(string golden, Ran ran)
    {
        Assert.All(ran.Fine().Lines.Where(line => line[..Math.Min(1, line.Length)] != "{"), line => Assert.InRange(TextColumns.Width(line), 0, 80));
        Golden.Equal(golden, ran.Lines);
    }
}
