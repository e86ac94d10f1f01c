using System.Text.Json.Nodes;

namespace Payday.Tests.Commands;

/// <summary>The decisions of the seven steps, from the shell.</summary>
public sealed class RunDecisionTests(DemoShell demo) : IClassFixture<DemoShell>
{
    [Theory]
    [InlineData("--bill Phones=81.50", "due", "Phones", "amount", "81.50")]
    [InlineData("--bill After-school_club@2026-03-16=20", "due", "2026-03-16", "amount", "20.00")]
    [InlineData("--bill phones=0", "due", "Phones", "amount", "0.00")]
    [InlineData("--debt Sofa_card=60", "debts", "Sofa card", "payment", "60.00")]
    [InlineData("--debt Sofa_card@2026-03-12=60", "debts", "Sofa card", "payment", "60.00")]
    [InlineData("--pot Fuel=95.5", "pots", "Fuel", "fill", "95.50")]
    [InlineData("--place Reserve=46", "placements", "Reserve", "amount", "46.00")]
    [InlineData("--place Reserve=46", "placements", "Dental plan", "amount", "200.46")]
    [InlineData("--place reserve=rest", "placements", "Reserve", "amount", "246.46")]
    [InlineData("--place none --place buffer=10", "placements", "buffer", "amount", "10.00")]
    public void Run_Decision_IsInTheRoutine(string options, string list, string name, string field, string expected)
    {
        JsonNode run = Run(options);

        JsonNode row = run[list]!.AsArray().First(one => one!.AsObject().Any(cell => cell.Value?.ToString() == name))!;
        Assert.Equal(expected, (string?)row[field]);
        Assert.False((bool)run["closed"]!);
    }

    [Fact]
    public void Run_PaidAndUnpaid_TickTheDue()
    {
        JsonNode run = Run("--paid Phones --paid After-school_club=2026-03-09 --paid Sofa_card");

        string[] paid = [.. run["due"]!.AsArray().Where(due => (bool)due!["paid"]!).Select(due => $"{due!["bill"]} {due["date"]}")];
        Assert.Equal(["After-school club 2026-03-09", "Phones 2026-03-10"], paid);
        Assert.Equal(["Sofa card"], run["debts"]!.AsArray().Where(debt => (bool?)debt!["paid"] == true).Select(debt => (string?)debt!["name"]));
        Assert.DoesNotContain(Run("--unpaid Phones")["due"]!.AsArray(), due => (bool)due!["paid"]!);
    }

    [Fact]
    public void Run_NotesByHand_AreThoseOfThePart()
    {
        string shown = demo.Begun.Run("run", "--notes", "Food@2026-03-13=100=1,50=2,5=1", "--notes", "Eating out=10=7").Fine().Out;

        Assert.Matches(@"13 Mar\s+\*?1\s+2\s+\.\s+\.\s+1\s+205\.00", shown);
        Assert.Matches(@"Eating out\s+6 Mar\s+\.\s+\.\s+\.\s+7\s+\.\s+70\.00", shown);
    }

    [Theory]
    [InlineData("--set-asides when-due", "set aside when due")]
    [InlineData("--machine", "from a machine")]
    [InlineData("--machine 20_50_/_500", "from a machine")]
    [InlineData("--loose keep", "820.00 withdrawn (65 notes), 1.40 not in notes")]
    [InlineData("--teller", "from a teller")]
    public void Run_OfTheWholePayday_IsShown(string options, string part)
    {
        string shown = demo.Begun.Run(["run", .. Words(options)]).Fine().Out;

        Assert.Contains(part, shown, StringComparison.Ordinal);
    }

    // Each with the first words of what is said.
    [Theory]
    [InlineData("--bill Phone=5", "there is no bill 'Phone'. Did you mean \"Phones\"?")]
    [InlineData("--bill Rent=1700", "Rent isn't due before the next payday")]
    [InlineData("--bill After-school_club=20", "After-school club has 2026-03-09, 2026-03-16; write which, like \"After-school club@2026-03-16=20\".")]
    [InlineData("--bill After-school_club@2026-03-10=20", "After-school club has 2026-03-09, 2026-03-16; write which")]
    [InlineData("--bill Phones", "write it like Electricity=92.40.")]
    [InlineData("--bill Phones=-1", "-1 is below zero")]
    [InlineData("--paid Nobody", "there is no bill or debt 'Nobody'. The nearest are")]
    [InlineData("--paid Dental_plan", "Dental plan isn't due before the next payday")]
    [InlineData("--debt Car=1", "there is no debt 'Car'. Did you mean \"Car loan\"?")]
    [InlineData("--debt Sofa_card=2000", "That is more than is owed; at most 1,882.33.")]
    [InlineData("--pot Fod=1", "there is no pot 'Fod'. Did you mean \"Food\"?")]
    [InlineData("--pot Food=1 --pot food=2", "food is there twice; give it once.")]
    [InlineData("--place Reserve=247", "There is 246.46 to place in all")]
    [InlineData("--place Dental_plan=600", "That is more than is owed; at most 540.00.")]
    [InlineData("--notes Food=20=1", "Food has 2026-03-06, 2026-03-13; write which")]
    [InlineData("--notes Food@2026-03-06=100=9", "Food has 410.00, and its notes would come to 1,105.00; lower another first.")]
    [InlineData("--notes Reserve=20=1", "Reserve gets nothing in notes on this payday.")]
    [InlineData("--notes Fuel@2026-03-06=7=1", "7 is no note in use")]
    [InlineData("--teller --bank usual", "Give one of --teller, --machine and --bank.")]
    [InlineData("--accept --keep", "give it or --accept, not both.")]
    public void Run_DecisionThatCantBeTaken_IsRefusedAndNothingIsStored(string options, string part)
    {
        long before = new FileInfo(demo.Begun.Data.Journal).Length;

        Ran ran = demo.Begun.Run(["run", .. Words(options), .. options.Contains("--keep", StringComparison.Ordinal) ? Array.Empty<string>() : ["--accept"]]);

        Assert.Equal((2, ""), (ran.Exit, ran.Out));
        Assert.Contains(part, ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, new FileInfo(demo.Begun.Data.Journal).Length);
    }

    [Fact]
    public void RunKeep_IsGoneOnWithAndUsualTakesItBack()
    {
        using TestShell shell = TestShell.WithDemo();
        string before = shell.Run("run").Fine().Out;

        Assert.StartsWith("Kept, not closed.", shell.Run("run", "--keep", "--bill", "Phones=81.50", "--pot", "Fuel=90", "--place", "Reserve=20", "--buffer", "0").Fine().Lines[^1], StringComparison.Ordinal);

        Assert.Contains("81.50", shell.Run("run").Fine().Out, StringComparison.Ordinal);
        Assert.Equal(before, shell.Run("run", "--anew").Fine().Out.Replace("Nothing is stored. Close it with the same line and --accept.", before.TrimEnd('\n').Split('\n')[^1], StringComparison.Ordinal));
        shell.Run("run", "--keep", "--bill", "Phones=usual", "--pot", "Fuel=usual", "--place", "usual", "--buffer", "usual").Fine();
        Assert.Equal(before, shell.Run("run").Fine().Out);
    }

    private static string[] Words(string options) => [.. options.Split(' ').Select(word => word.Replace('_', ' '))];

    private JsonNode Run(string options) => JsonNode.Parse(demo.Begun.Run(["run", .. Words(options), "--json"]).Fine().Out)!;
}
