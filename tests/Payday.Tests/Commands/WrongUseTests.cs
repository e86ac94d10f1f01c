namespace Payday.Tests.Commands;

public class WrongUseTests(DemoShell demo) : IClassFixture<DemoShell>
{
    [Theory]
    [InlineData("frob", "Unrecognized command or argument 'frob'. See payday --help.")]
    [InlineData("slip --nope", "Unrecognized command or argument '--nope'. See payday slip --help.")]
    [InlineData("import", "Required argument 'FILE' missing for command: 'import'. See payday import --help.")]
    [InlineData("show frob", "WHAT frob: write pots, bills, debts, calendar, months, year or ledger. See payday show --help.")]
    [InlineData("split 70 --weeks 4", "Option '--unit' is required. See payday split --help.")]
    [InlineData("split 70 --weeks 0 --unit 10", "--weeks 0: write a whole number from 1 to 520. See payday split --help.")]
    [InlineData("split 70 --weeks 2.5 --unit 10", "--weeks 2.5: write a whole number from 1 to 520. See payday split --help.")]
    [InlineData("split 70 --weeks 4 --unit 0", "--unit 0: write the value of the smallest note, above zero. See payday split --help.")]
    [InlineData("split -70 --weeks 4 --unit 10", "AMOUNT: -70 is below zero; write zero or more. See payday split --help.")]
    [InlineData("split 92233720368547758.08 --weeks 4 --unit 10", "AMOUNT: The amount is too large; look at its digits. See payday split --help.")]
    [InlineData("split 70.001 --weeks 4 --unit 10", "AMOUNT: USD has at most 2 decimals; write it like 12.55. See payday split --help.")]
    [InlineData("run --on 2026-02-30", "--on 2026-02-30: February 2026 has 28 days. See payday run --help.")]
    [InlineData("run --income Shifts", "--income Shifts: write it like \"Night shifts=1204.55\", with a name of at most 60 plain characters. See payday run --help.")]
    [InlineData("run --income Shifts=-5", "--income Shifts: -5 is below zero; write zero or more. See payday run --help.")]
    [InlineData("slip --on 6.3.2026", "--on 6.3.2026: It can be 6 March or 3 June; write it like 2026-03-12 or 12 Mar 2026. See payday slip --help.")]
    [InlineData("slip --width 31", "--width 31: write a whole number from 32 to 80. See payday slip --help.")]
    [InlineData("slip --pdf a.pdf --print", "Choose one of --pdf and --print. See payday slip --help.")]
    [InlineData("slip --pdf a.pdf --paper A9", "--paper A9: There is no such paper size here; choose one of A6, A4, Letter. See payday slip --help.")]
    [InlineData("slip --replace", "--paper and --replace go with --pdf. See payday slip --help.")]
    [InlineData("slip --print-size huge", "--print-size huge: write usual or large. See payday slip --help.")]
    [InlineData("slip --print-size large", "--print-size large goes with --pdf or --print. See payday slip --help.")]
    [InlineData("slip --print-size large --pdf a.pdf --paper a6", "Large print needs a full sheet; leave --paper A6 out. See payday slip --help.")]
    [InlineData("slip --print-size large --pdf a.pdf --width 40", "Choose one of --width and --print-size large. See payday slip --help.")]
    [InlineData("report --month 2026-13", "--month 2026-13: write it like 2026-03 or \"Mar 2026\". See payday report --help.")]
    [InlineData("report --year 26x", "--year 26x: write it like 2026. See payday report --help.")]
    [InlineData("report --year 2026 --month 2026-03", "Choose one of --month and --year. See payday report --help.")]
    [InlineData("report --paper A4", "--paper and --replace go with --pdf. See payday report --help.")]
    [InlineData("report --pdf a.pdf --paper A9", "--paper A9: There is no such paper size here; choose one of A6, A4, Letter. See payday report --help.")]
    [InlineData("report --pdf a.pdf --paper A6", "A report needs a full sheet; leave --paper A6 out. See payday report --help.")]
    [InlineData("export --replace", "--replace goes with --csv. See payday export --help.")]
    [InlineData("debts --order size", "--order size: write balance or rate. See payday debts --help.")]
    [InlineData("debts --extra 1,50", "--extra: '1,50' is not an amount; write it like 12.55. See payday debts --help.")]
    [InlineData("setaside x.json --mode even", "--mode even: write level or as-they-fall. See payday setaside --help.")]
    [InlineData("paydays --from 2026-01-01", "Option '--to' is required. See payday paydays --help.")]
    [InlineData("paydays --from 2026-01-02 --to 2026-01-01", "--to must be --from or later, and less than 100 years after it. See payday paydays --help.")]
    [InlineData("paydays --from 0001-01-01 --to 9999-12-31", "--to must be --from or later, and less than 100 years after it. See payday paydays --help.")]
    [InlineData("completion csh", "SHELL csh: write bash, zsh or fish. See payday completion --help.")]
    public void Run_WrongUse_SaysWhatIsWrongAndExitsWith2(string line, string reason)
    {
        Ran ran = demo.Begun.Run(line.Split(' '));

        Assert.Equal(new Ran(2, "", $"payday: {reason}\n"), ran);
    }

    [Fact]
    public void Run_CurrencyUnknown_ListsThoseKnown()
    {
        using var shell = new TestShell();

        // The standard's own code for "no currency" is none either.
        Ran ran = shell.Run("split", "70", "--weeks", "4", "--unit", "10", "--currency", "XXX");

        Assert.Equal((2, ""), (ran.Exit, ran.Out));
        Assert.StartsWith("payday: --currency XXX: that is no currency known here; write one of AUD, BHD, ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_SeveralThingsMissing_SaysEachOnItsLine()
    {
        using var shell = new TestShell();

        Ran ran = shell.Run("split");

        Assert.Equal(
            new Ran(2, "", "payday: Option '--weeks' is required.\npayday: Option '--unit' is required.\npayday: Required argument 'AMOUNT' missing for command: 'split'. See payday split --help.\n"),
            ran);
    }

    [Fact]
    public void Run_DataFolderEmpty_DoesNotFallBackToTheUsualOne()
    {
        Ran ran = demo.Begun.Run("--data", "", "show");

        Assert.Equal(new Ran(2, "", "payday: --data is empty; name a folder, or leave it out. See payday show --help.\n"), ran);
    }
}
