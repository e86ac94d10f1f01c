using System.Text.Json;
using Payday.Tests.Slips;
using Payday.Text;

namespace Payday.Tests.Commands;

/// <summary>Statements held against the book and taken into it, by command.</summary>
public sealed class StatementTakingTests
{
    [Fact]
    public void Month_FromPlanToUndo_IsAsRecorded()
    {
        using TestShell shell = MarchStatement.Lived();
        string file = shell.File("march.csv", MarchStatement.Csv());
        string before = shell.Run("show", "ledger", "--json").Fine().Out;

        Equal(shell, "statement-plan", 0, "statement", file);
        Equal(shell, "statement-no-line", 2, "statement", file, "--take", "9=Food");
        Equal(shell, "statement-no-such", 2, "statement", file, "--take", "1=Nothing");
        Equal(shell, "statement-wrong-way", 1, "statement", file, "--take", "1=income", "--accept");
        Assert.Equal(before, shell.Run("show", "ledger", "--json").Fine().Out);

        Equal(shell, "statement-taken", 0, "statement", file, "--take", "1=Food", "--take", "2=buffer", "--rule", "greenleaf=Food", "--accept");
        Equal(shell, "statement-again", 0, "statement", file, "--accept");
        Equal(shell, "statement-reconciled", 1, "reconcile", "--undo");
        Equal(shell, "statement-undo", 0, "statement", "--undo");
        Equal(shell, "statement-undo-none", 1, "statement", "--undo");
        Equal(shell, "statement-ruled", 0, "statement", file);
    }

    [Fact]
    public void Rules_AreKeptListedChangedAndDropped()
    {
        using TestShell shell = MarchStatement.Lived();
        string file = shell.File("march.csv", MarchStatement.Csv());

        Equal(shell, "statement-rules-none", 0, "statement", "--rules");
        Equal(shell, "statement-rules-kept", 0, "statement", "--rule", "Greenleaf Grocer=Food", "--rule", "quillby=leave");
        Equal(shell, "statement-rules-changed", 0, "statement", "--rule", "quillby=Household goods");
        Assert.Equal(
            ["Food, by card", "Household goods, by card"],
            Lines(shell.Run("statement", file, "--json").Fine().Out).Where(line => line.GetProperty("state").GetString() == "new").Take(2).Select(line => line.GetProperty("becomes").GetString()));
        Equal(shell, "statement-rules-dropped", 0, "statement", "--drop-rule", "QUILLBY");
        Equal(shell, "statement-rules-no-such", 1, "statement", "--drop-rule", "quillby");
        Assert.Equal(2, shell.Run("statement", "--rule", "=Food").Exit);
        Assert.Equal(2, shell.Run("statement", "--rule", new string('a', 61) + "=Food").Exit);
        Assert.Equal(2, shell.Run("statement", "--rule", "grocer=Nowhere").Exit);
    }

    [Fact]
    public void Taken_InTwoThatOverlap_WithOneMissingBefore_SaysSoAndEndsTheSame()
    {
        using TestShell shell = MarchStatement.Lived();
        string early = shell.File("early.csv", MarchStatement.Csv(to: "2026-03-12"));
        string late = shell.File("late.csv", MarchStatement.Csv(from: "2026-03-20"));
        string middle = shell.File("middle.csv", MarchStatement.Csv(from: "2026-03-10", to: "2026-03-23"));

        shell.Run("statement", early, "--accept").Fine();
        Ran gap = shell.Run("statement", late, "--accept").Fine();
        Assert.Contains("A statement in between may be missing from Fri 13 Mar 2026 on, with -377.92 in all.", string.Join(' ', gap.Lines.Select(line => line.Trim())), StringComparison.Ordinal);
        Ran joined = shell.Run("statement", middle, "--take", "1=Food", "--accept").Fine();
        Assert.DoesNotContain("missing", joined.Out, StringComparison.Ordinal);
        Assert.Contains("19.99 less", joined.Out, StringComparison.Ordinal);
        Assert.Contains("on 31 Mar.", joined.Out, StringComparison.Ordinal);
        Assert.All(new[] { early, middle, MarchFile(shell) }, file => Assert.DoesNotContain("Stored.", shell.Run("statement", file, "--accept").Fine().Lines));
    }

    [Fact]
    public void Taken_WithoutABalance_AsksForItAndTakesIt()
    {
        using TestShell shell = MarchStatement.Lived();
        string file = shell.File("fee.csv", "Date;Party;Amount\n2026-03-31;Account fee;-4,50\n2026-03-30;Corner shop;-12,25\n");

        Equal(shell, "statement-no-balance", 1, "statement", file, "--accept");
        Assert.Equal("Stored.", shell.Run("statement", file, "--balance", "10", "--accept").Fine().Lines[^1]);
        Assert.Equal(2, shell.Run("statement", file, "--balance", "much").Exit);
    }

    [Fact]
    public void Asked_TwiceByAFile_IsAnsweredTwice_AndRememberedOnceItIsTaken()
    {
        using TestShell shell = MarchStatement.Lived();
        string file = shell.File("list.csv", "When;Who;Sum\n03/04/2026;Corner shop;12.500\n03/05/2026;Bakery;4.500\n");
        shell.Today = new NodaTime.LocalDate(2026, 7, 1);

        Ran first = shell.Run("statement", file);
        Assert.Equal(1, first.Exit);
        string[] answers = [];
        while (shell.Run(["statement", file, "--balance", "100", .. answers]) is { Exit: 1 } asked && answers.Length < 8)
        {
            Assert.Contains("--choose 1", asked.Error, StringComparison.Ordinal);
            answers = [.. answers, "--choose", "1"];
        }

        Assert.True(answers.Length >= 4, string.Join(' ', answers));
        Assert.Equal("Stored.", shell.Run(["statement", file, "--balance", "100", "--accept", .. answers]).Fine().Lines[^1]);
        string next = shell.File("next.csv", "When;Who;Sum\n04/06/2026;Corner shop;13.500\n");
        shell.Run("statement", next, "--balance", "90").Fine();
    }

    [Theory]
    [InlineData("USD", "{1:F01X}{2:O940X}{4:\n:20:1\n:25:77\n:28C:1\n:60F:C260301USD100,00\n:61:2603310331D4,50NMSCNONREF\n:86:Fee\n:62F:C260331USD95,00\n-}\n", "doesn't add up: its lines lead to 95.50, and it closes with 95.00")]
    [InlineData("EUR", "Date;Party;Amount;Balance\n2026-03-31;Fee;-4.50;10.00\n", "in EUR, and the household in USD")]
    [InlineData("USD", "Date;Party;Amount;Balance\n2025-03-31;Fee;-4.50;10.00\n", "before the household's first day")]
    public void Refused_SaysWhyAndStoresNothing(string currency, string text, string why)
    {
        using TestShell shell = MarchStatement.Lived();
        Ran ran = shell.Run("statement", shell.File("odd.csv", text), "--currency", currency, "--accept");
        Assert.Equal(1, ran.Exit);
        Assert.Contains(why, ran.Error, StringComparison.Ordinal);
        Assert.EndsWith("Nothing was stored.\n", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("statement")]
    [InlineData("statement", "--accept")]
    [InlineData("statement", "--undo", "march.csv")]
    [InlineData("statement", "march.csv", "--rules")]
    [InlineData("statement", "--read")]
    [InlineData("statement", "march.csv", "--read", "--accept")]
    public void Run_WithWhatDoesntGoTogether_IsWrongUse(params string[] line)
    {
        using TestShell shell = TestShell.WithDemo();
        Assert.Equal(2, shell.Run(line).Exit);
    }

    private static string MarchFile(TestShell shell) => shell.File("march.csv", MarchStatement.Csv());

    private static IEnumerable<JsonElement> Lines(string json) => JsonDocument.Parse(json).RootElement.GetProperty("lines").EnumerateArray();

    private static void Equal(TestShell shell, string golden, int exit, params string[] line)
    {
        Ran ran = shell.Run(line);
        string text = ran.Out + ran.Error;
        Assert.True(exit == ran.Exit, $"{golden}: {text}");
        string[] lines = text.TrimEnd('\n').Split('\n');
        if (exit == 0)
        {
            Assert.All(lines, one => Assert.InRange(TextColumns.Width(one), 0, 80));
        }

        Golden.Equal(golden, lines);
    }
}
