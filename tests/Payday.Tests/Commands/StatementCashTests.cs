using System.Text.Json;

namespace Payday.Tests.Commands;

/// <summary>Lines of a statement that are cash or moves, as they are named on a command line.</summary>
public sealed class StatementCashTests
{
    private const string Csv = "Date;Party;Amount;Balance\n2026-03-27;ATM High Street;-60;940\n2026-03-28;Cash deposit;15;955\n2026-03-30;Card company;-25;930\n";

    [Theory]
    [InlineData("1=cash Food", "1", "cash for Food")]
    [InlineData("1=CASH food in 20=2,10=2", "1", "cash for Food")]
    [InlineData("1=cash loose notes in 20=3", "1", "cash for the loose notes")]
    [InlineData("1=cash Food from Reserve", "1", "cash for Food, from Reserve")]
    [InlineData("2=cash Food to buffer", "2", "cash from Food, to the buffer")]
    [InlineData("3=Sofa card from Reserve", "3", "paid on Sofa card from Reserve")]
    [InlineData("3=transfer from Reserve", "3", "transfer from Reserve")]
    public void Take_AsCashOrMove_IsShownTakenAndTakenBack(string take, string number, string becomes)
    {
        using TestShell shell = MarchStatement.Lived();
        string file = shell.File("cash.csv", Csv);
        string before = shell.Run("show", "ledger", "--json").Fine().Out;
        JsonElement line = Line(shell.Run("statement", file, "--take", take, "--json").Fine(), number);
        Assert.Equal(becomes, line.GetProperty("becomes").GetString());
        Assert.Equal(before, shell.Run("show", "ledger", "--json").Fine().Out);

        Ran taken = shell.Run("statement", file, "--take", take, "--accept", "--json").Fine();
        Assert.True(JsonDocument.Parse(taken.Out).RootElement.GetProperty("stored").GetBoolean());
        Assert.NotEqual(before, shell.Run("show", "ledger", "--json").Fine().Out);
        shell.Run("statement", "--undo").Fine();
        shell.Run("check").Fine();
    }

    [Fact]
    public void Take_AsACashReturn_SettlesWhatIsToPayBack()
    {
        using TestShell shell = MarchStatement.Lived();
        shell.Run("spend", "Food", "12.40", "--on", "2026-03-27").Fine();
        string file = shell.File("cash.csv", Csv);
        Assert.Equal("cash return", Line(shell.Run("statement", file, "--json").Fine(), "2").GetProperty("proposal").GetString());
        shell.Run("statement", file, "--take", "2", "--accept").Fine();
        Assert.DoesNotContain("12.40", shell.Run("return", "--show").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1=cash Reserve", 2)]
    [InlineData("1=cash Food in 20=x", 2)]
    [InlineData("1=cash Food in 7=3", 2)]
    [InlineData("1=cash Food from Nowhere", 2)]
    [InlineData("1=transfer in 20=3", 2)]
    [InlineData("1=cash Food in 20=2", 1)]
    [InlineData("1=cash return", 1)]
    [InlineData("2=cash return", 1)]
    public void Take_ThatCantBe_IsRefusedInASentence(string take, int exit)
    {
        using TestShell shell = MarchStatement.Lived();
        Ran ran = shell.Run("statement", shell.File("cash.csv", Csv), "--take", take, "--accept");
        Assert.Equal(exit, ran.Exit);
        Assert.NotEmpty(ran.Error);
        Assert.Equal(exit == 1, ran.Error.Contains("Nothing was stored.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("high street=cash Food from Reserve", "cash Food from Reserve")]
    [InlineData("high street=cash loose notes", "cash loose notes")]
    [InlineData("deposit=cash return", "cash return")]
    public void Rule_NamesCashToo(string rule, string target)
    {
        using TestShell shell = MarchStatement.Lived();
        JsonElement kept = JsonDocument.Parse(shell.Run("statement", "--rule", rule, "--json").Fine().Out).RootElement.GetProperty("rules")[0];
        Assert.Equal((target, false), (kept.GetProperty("target").GetString(), kept.GetProperty("gone").GetBoolean()));

        // What is listed can be typed again.
        shell.Run("statement", "--rule", $"again={target}").Fine();
        string number = rule.StartsWith("deposit", StringComparison.Ordinal) ? "2" : "1";
        Assert.Equal(target, Line(shell.Run("statement", shell.File("cash.csv", Csv), "--json").Fine(), number).GetProperty("proposal").GetString());
    }

    [Fact]
    public void Export_HasTheLinesAndTheRules()
    {
        using TestShell shell = MarchStatement.Lived();
        shell.Run("statement", shell.File("cash.csv", Csv.Replace("ATM", "=ATM", StringComparison.Ordinal)), "--take", "1=cash Food", "--rule", "deposit=cash return", "--accept").Fine();
        shell.Run("export", "--csv", shell.In("csv")).Fine();
        string[] lines = File.ReadAllLines(Path.Combine(shell.In("csv"), "statements.csv"));
        Assert.Equal("statement,to,taken back,date,in,out,currency,party,text,mandate,became,ledger lines", lines[0]);
        Assert.Matches("^1,2026-03-30,,2026-03-27,,60.00,USD,,\"'=ATM High Street\",,move,\\d+$", lines[1]);
        Assert.EndsWith(",left,", lines[2], StringComparison.Ordinal);
        Assert.Equal(["lines with,become", "deposit,cash return"], File.ReadAllLines(Path.Combine(shell.In("csv"), "statement-rules.csv")));

        shell.Run("statement", "--undo").Fine();
        shell.Run("export", "--csv", shell.In("csv"), "--replace").Fine();
        Assert.Contains(",yes,2026-03-27,", File.ReadAllLines(Path.Combine(shell.In("csv"), "statements.csv"))[1], StringComparison.Ordinal);
    }

    private static JsonElement Line(Ran ran, string number) => JsonDocument.Parse(ran.Out).RootElement.GetProperty("lines").EnumerateArray()
        .Single(line => line.GetProperty("number").GetInt32().ToString(System.Globalization.CultureInfo.InvariantCulture) == number);
}
