using System.Text.Json;

namespace Payday.Tests.Commands;

public class JsonTests(DemoShell demo) : IClassFixture<DemoShell>
{
    [Theory]
    [InlineData("")]
    [InlineData("demo")]
    [InlineData("run")]
    [InlineData("slip")]
    [InlineData("slip --filling")]
    [InlineData("slip --pdf {0}/slip.pdf")]
    [InlineData("show")]
    [InlineData("show pots")]
    [InlineData("show bills")]
    [InlineData("show debts")]
    [InlineData("show calendar")]
    [InlineData("show year")]
    [InlineData("report")]
    [InlineData("report --year 2026")]
    [InlineData("report --pdf {0}/report.pdf")]
    [InlineData("ahead")]
    [InlineData("show ledger")]
    [InlineData("export")]
    [InlineData("export --csv {0}/csv")]
    [InlineData("split 70 --weeks 4 --unit 10")]
    [InlineData("debts --extra 50 --order rate")]
    [InlineData("paydays --from 2026-01-01 --to 2026-12-31")]
    [InlineData("completion bash")]
    public void Json_OfACommand_IsOneDocument(string line)
    {
        string folder = Path.GetDirectoryName(demo.Begun.Data.Path)!;

        IsOneDocument(demo.Begun.Run([.. line.Replace("{0}", folder).Split(' ', StringSplitOptions.RemoveEmptyEntries), "--json"]));
    }

    [Theory]
    [InlineData("run --one-off Shifts=20")]
    [InlineData("run --accept")]
    public void Json_OfACommandThatChanges_IsOneDocument(string line)
    {
        using TestShell shell = TestShell.WithDemo();

        IsOneDocument(shell.Run([.. line.Split(' '), "--json"]));
    }

    [Fact]
    public void Json_OfARefusal_IsNone()
    {
        using var shell = new TestShell();

        Assert.Equal((1, ""), shell.Run("show", "--json") is { } ran ? (ran.Exit, ran.Out) : default);
    }

    [Fact]
    public void Json_OfNames_EscapesNoMoreThanItMust()
    {
        Assert.Contains("\"Renters' insurance\"", demo.Begun.Run("show", "bills", "--json").Fine().Out, StringComparison.Ordinal);
    }

    private static void IsOneDocument(Ran ran)
    {
        using JsonDocument document = JsonDocument.Parse(ran.Fine().Out);
        Assert.Equal(JsonValueKind.Object, document.RootElement.ValueKind);
    }
}
