using NodaTime;

namespace Payday.Tests.Commands;

public class WeekCommandTests
{
    private static readonly LocalDate Thursday12 = new(2026, 3, 12);

    [Fact]
    public void Week_FromFillToReturn_IsStored()
    {
        using TestShell shell = Closed();
        Assert.Contains("done", shell.Run("fill", "--on", "2026-03-06", "--done").Fine().Out, StringComparison.Ordinal);

        Assert.Equal("Stored.", shell.Run("spend", "Food", "12.34", "--what", "Corner shop", "--on", "2026-03-07").Fine().Lines[^1]);
        Assert.Equal("Counted and stored.", shell.Run("count", "food=21.50", "Fares=3+2", "--move", "Food=buffer").Fine().Lines[^1]);
        Assert.Contains("to pay back", shell.Run("status").Out, StringComparison.Ordinal);
        Assert.Equal("Returned and stored.", shell.Run("return", "--confirm").Fine().Lines[^1]);
        Assert.Equal(new Ran(1, "", "payday: No pot has cash to pay back.\n"), shell.Run("return", "--confirm"));
    }

    [Fact]
    public void Undo_OfCountFillAndReturn_IsAsBefore()
    {
        using TestShell shell = Closed();
        string[] fresh = Told(shell);
        shell.Run("fill", "--on", "2026-03-06", "--done").Fine();
        string[] filled = Told(shell);
        shell.Run("spend", "Food", "12.34", "--on", "2026-03-07").Fine();
        string[] bought = Told(shell);
        shell.Run("count", "food=21.50", "Fares=3+2").Fine();

        Assert.Equal(["The count of Food, Thu 12 Mar.", "The count of Fares, Thu 12 Mar.", "Taken back."], shell.Run("count", "--undo").Fine().Lines);
        Assert.Equal(bought, Told(shell));
        shell.Run("return", "--confirm").Fine();
        Assert.Equal(["The cash return, Thu 12 Mar.", "Taken back."], shell.Run("return", "--undo").Fine().Lines);
        Assert.Equal(bought, Told(shell));
        shell.Run("spend", "--undo", "1").Fine();
        Assert.Equal(filled, Told(shell));
        Assert.Equal("{\"version\":1,\"takenBack\":[{\"what\":\"fill\",\"pot\":\"Fares\",\"date\":\"2026-03-06\"}]}", shell.Run("fill", "--undo", "fares", "--json").Fine().Out.TrimEnd());
        shell.Run("fill", "--undo").Fine();
        Assert.Equal(fresh, Told(shell));
    }

    [Fact]
    public void Undo_WithSomethingInTheWay_NamesItAndTheCommand()
    {
        using TestShell shell = Closed();
        shell.Run("fill", "--on", "2026-03-06", "--done").Fine();
        shell.Run("spend", "Food", "12.34", "--on", "2026-03-07").Fine();
        shell.Run("count", "food=21.50").Fine();

        Assert.Equal(
            new Ran(1, "", "payday: Food was counted on 12 Mar 2026 with card purchase 1 in it; take that count back first. payday count --undo \"Food\"\n"),
            shell.Run("spend", "--undo", "1"));
        Assert.Equal(
            new Ran(1, "", "payday: Food was counted on 12 Mar 2026 with the fill of Food for 6 Mar 2026 in it; take that count back first. payday count --undo \"Food\"\n"),
            shell.Run("fill", "--undo", "food"));
        Assert.Equal(new Ran(1, "", "payday: No cash was taken to the bank yet.\n"), shell.Run("return", "--undo"));
        shell.Run("count", "--undo", "Food").Fine();
        Assert.Equal(new Ran(1, "", "payday: No count was confirmed yet.\n"), shell.Run("count", "--undo"));
    }

    // 205 were filled; 95 of the 300 are next week's.
    [Fact]
    public void Fill_AfterAPurchaseLargerThanTheWallet_SaysWhatItMoves()
    {
        using TestShell shell = Closed();
        shell.Run("fill", "--on", "2026-03-06", "--done").Fine();
        shell.Run("spend", "Food", "300", "--on", "2026-03-08").Fine();
        shell.Today = new(2026, 3, 13);

        Assert.Contains("Food             Fri 13 Mar  110.00  left of 205.00  to fill", shell.Run("fill").Fine().Out, StringComparison.Ordinal);
        Assert.Contains("(payday fill): 5 pots, 220.00.", shell.Run("show").Fine().Out, StringComparison.Ordinal);
        Assert.Contains("Food             Fri 13 Mar  110.00  left of 205.00  done", shell.Run("fill", "--done").Fine().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Status_ExitCode_SaysWhetherSomethingWaits()
    {
        using TestShell shell = Closed();

        Assert.Equal((1, ""), shell.Run("status") is var waiting ? (waiting.Exit, waiting.Error) : default);
        shell.Run("fill", "--on", "2026-03-06", "--done").Fine();
        Assert.Equal((1, "payday Fri 20 Mar · 246.46 to pay on debts · bank not looked at yet"), shell.Run("status") is var extra ? (extra.Exit, extra.Out.TrimEnd()) : default);
        Reconciled(shell);
        Assert.Equal("payday Fri 20 Mar · agreed with the bank on Thu 12 Mar", shell.Run("status").Fine().Out.TrimEnd());
        shell.Today = new(2026, 3, 13);
        Assert.StartsWith("payday Fri 20 Mar · not counted since Fri 6 Mar", shell.Run("status").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Show_WhileWeeksWait_NamesThemWithTheirCommands()
    {
        using TestShell shell = Closed();
        Assert.Contains("then fill the wallet", shell.Run("show").Fine().Out, StringComparison.Ordinal);
        shell.Run("fill", "--on", "2026-03-06", "--done").Fine();
        Assert.Contains("! Pay 246.46 to Dental plan yourself (payday due NAME --extra yes).", shell.Run("show").Fine().Out, StringComparison.Ordinal);
        Reconciled(shell);
        Assert.Contains("Nothing needs doing.", shell.Run("show").Fine().Out, StringComparison.Ordinal);
        shell.Today = new(2026, 3, 13);
        string shown = shell.Run("show").Fine().Out;
        Assert.Contains("to count for the week of Fri 6 Mar (payday count).", shown, StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing needs doing", shown, StringComparison.Ordinal);
    }

    // The bank shows all that is here, the payment on the debt too.
    private static void Reconciled(TestShell shell)
    {
        System.Text.Json.JsonElement open = System.Text.Json.JsonDocument.Parse(shell.Run("reconcile", "--json").Fine().Out).RootElement;
        string[] at = [.. open.GetProperty("lines").EnumerateArray().SelectMany(line => new[] { "--at", line.GetProperty("number").ToString() })];
        shell.Run(["reconcile", "--balance", open.GetProperty("here").GetString()!, .. at, "--accept"]).Fine();
    }

    [Fact]
    public void Show_OnAPayday_SaysThatNothingElseWaits()
    {
        using TestShell shell = TestShell.WithDemo();
        Assert.Contains("Nothing else needs doing.", shell.Run("show").Fine().Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "99999 is more", "count", "Food=99999")]
    [InlineData(1, "with --found POT or --missing POT=AMOUNT, and --name TEXT", "count", "Food=99999")]
    [InlineData(2, "There is no pot 'Hats'", "count", "Hats=1")]
    [InlineData(2, "write what is left like Food=21.50", "count", "Food")]
    [InlineData(2, "Reserve is in the account", "count", "Reserve=1")]
    [InlineData(2, "that day is still to come", "count", "Food=1", "--on", "2026-04-01")]
    [InlineData(2, "'Moon' is no pot and no debt", "count", "Food=1", "--move", "Food=Moon")]
    [InlineData(1, "Name what is missing from Food", "count", "Food=1", "--missing", "Food=5")]
    [InlineData(1, "less than 5,000.00", "spend", "Food", "5000")]
    [InlineData(2, "is not an amount", "spend", "Food", "much")]
    [InlineData(2, "Give a pot and an amount", "spend", "Food")]
    [InlineData(1, "There is no card purchase 7.", "spend", "--undo", "7")]
    [InlineData(1, "There is no file", "spend", "--list", "/nowhere/list")]
    [InlineData(2, "There is no pot 'Hats'", "fill", "--skip", "Hats")]
    [InlineData(2, "There is no pot 'Hats'", "return", "--leave", "Hats")]
    [InlineData(2, "There is no pot 'Hats'", "count", "--undo", "Hats")]
    [InlineData(2, "There is no pot 'Hats'", "fill", "--undo", "Hats")]
    [InlineData(1, "That pot was not counted yet.", "count", "--undo", "Food")]
    [InlineData(1, "No fill is marked.", "fill", "--undo")]
    public void Run_WhatCannotBe_IsRefusedInOneSentence(int exit, string part, params string[] args)
    {
        using TestShell shell = Closed();
        string before = shell.Run("show", "ledger").Fine().Out;

        Ran ran = shell.Run(args);

        Assert.Equal((exit, ""), (ran.Exit, ran.Out));
        Assert.Contains(part.Replace("99999", "99,999.00", StringComparison.Ordinal), ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, shell.Run("show", "ledger").Fine().Out);
    }

    [Fact]
    public void SpendList_GuessesFromEarlierOnes_AndStoresWhenAccepted()
    {
        using TestShell shell = Closed();
        shell.Run("spend", "Food", "3", "--what", "CORNER SHOP 0441").Fine();
        const string list = "2026-03-07, 12.50, Corner shop 0517\n2026-03-08, 4, Chemist\n";

        Assert.StartsWith("Nothing is stored.", shell.RunOn(list, "spend", "--list", "-").Fine().Lines[^1], StringComparison.Ordinal);
        Assert.Equal(
            new Ran(1, "", "payday: No pot is known for line 2; name it with --pot 2=POT, or leave the line out with --leave 2.\n"), shell.RunOn(list, "spend", "--list", "-", "--accept"));
        Assert.Equal("Stored.", shell.RunOn(list, "spend", "--list", "-", "--pot", "2=buffer", "--accept").Fine().Lines[^1]);
        Assert.Equal("Taken back.", shell.Run("spend", "--undo", "2").Fine().Lines[^1]);
    }

    [Fact]
    public void SpendList_WithRefundsAndLinesThatAreNone_EntersWhatIsKnown()
    {
        using TestShell shell = Closed();
        const string list = "Date;Amount;Text\n2026-03-07;-12,50;\"Corner; shop\"\n2026-03-08;-4,00;Chemist\n2026-03-09;5,00;CORNER SHOP 0517\n2026-03-10;1.900,00;Wage\n2026-03-11;-3,00;chemist\nTotal;;\n";

        Ran unread = shell.RunOn(list, "spend", "--list", "-");
        Assert.Equal((1, "payday: Line 7: 'Total': Not a date; write it like 2026-03-12 or 12 Mar 2026.\n"), (unread.Exit, unread.Error));
        Ran shown = shell.RunOn(list, "spend", "--list", "-", "--leave", "7", "--pot", "2=Food", "--pot", "3=Food").Fine();
        Assert.Contains("   4  Mon 9 Mar       -5.00  Food  CORNER SHOP 0517", shown.Lines);
        Assert.Contains("   5  Tue 10 Mar  -1,900.00  ?     Wage", shown.Lines);
        Assert.Equal(
            new Ran(1, "", "payday: No pot is known for line 5; name it with --pot 5=POT, or leave the line out with --leave 5.\n"),
            shell.RunOn(list, "spend", "--list", "-", "--leave", "7", "--pot", "2=Food", "--pot", "3=Food", "--accept"));

        shell.RunOn(list, "spend", "--list", "-", "--leave", "7", "--leave", "5", "--pot", "2=Food", "--pot", "3=Food", "--accept").Fine();

        using var ledger = System.Text.Json.JsonDocument.Parse(shell.Run("return", "--json").Fine().Out);
        Assert.Equal("20.00", ledger.RootElement.GetProperty("pots")[0].GetProperty("owes").GetString());
    }

    [Theory]
    [InlineData("0", "--leave 0: write a whole number from 1 to 2147483647.")]
    [InlineData("9", "--leave 9: the list has no line 9.")]
    public void SpendListLeave_ALineThatIsNotThere_IsNamed(string number, string fault)
    {
        using TestShell shell = Closed();

        Ran ran = shell.RunOn("2026-03-07,4,Bus", "spend", "--list", "-", "--leave", number);

        Assert.Equal(new Ran(2, "", $"payday: {fault} See payday spend --help.\n"), ran);
    }

    [Theory]
    [InlineData("fill")]
    [InlineData("count")]
    [InlineData("count Food=5")]
    [InlineData("spend Food 4")]
    [InlineData("return")]
    public void Json_OfAWeekCommand_IsOneDocument(string line)
    {
        using TestShell shell = Closed();
        using var document = System.Text.Json.JsonDocument.Parse(shell.Run([.. line.Split(' '), "--json"]).Fine().Out);
        Assert.Equal(System.Text.Json.JsonValueKind.Object, document.RootElement.ValueKind);
    }

    // Everything but the ledger's own list.
    private static string[] Told(TestShell shell) =>
        [.. "show,show pots,show bills,show debts,show year,status,fill,count".Split(',').Select(command => shell.Run(command.Split(' ')).Out)];

    private static TestShell Closed()
    {
        TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        shell.Today = Thursday12;
        return shell;
    }
}
