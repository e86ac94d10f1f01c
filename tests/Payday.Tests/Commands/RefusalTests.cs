namespace Payday.Tests.Commands;

public class RefusalTests
{
    private const string TooLarge = "The amounts are too large: a sum of them passes what 64 bits can hold. Use smaller ones.";

    [Theory]
    [InlineData("notes", "", "standard input: There is nothing in the text.")]
    [InlineData("notes", "{'currency':'USD'", "standard input: line 1, column 18: The text ends too early; a bracket or a quote is not closed.")]
    [InlineData("notes", "[]", "standard input: line 1: A list stands here; write an object in { }.")]
    [InlineData("notes", "{'currency':'USD','notes':['20'],'pots':[],'tip':1}", "standard input: tip, line 1: This field is not known here; remove it, or write one of currency, notes, onHand, source, pots.")]
    [InlineData("notes", "{'currency':'USD','notes':['20'],\n'pots':[],\n'pots':[]}", "standard input: pots, line 3: This field stands here twice; keep one of them.")]
    [InlineData("notes", "{'currency':'USD','notes':['20'],'pots':[{'name':'Food','amount':'-85.00'}]}", "standard input: pots[0].amount, line 1: This amount is below zero; write zero or more.")]
    [InlineData("notes", "{'currency':'USD','notes':['20'],'pots':[{'name':'Food','amount':85}]}", "standard input: pots[0].amount, line 1: 85 stands here without quotes; write it as \"85\".")]
    [InlineData("notes", "{'currency':'USD','notes':['20'],'pots':[{'name':'Food','amount':'85 EUR'}]}", "standard input: pots[0].amount, line 1: \"85 EUR\" is in EUR and the rest in USD, and two currencies can't mix; convert it and write the number alone.")]
    [InlineData("notes", "{'currency':'USD','notes':['20'],'pots':[{'name':'Food','amount':'92233720368547758.08'}]}", "standard input: pots[0].amount, line 1: The amount is too large; look at its digits.")]
    [InlineData("notes", "{'currency':'USD','notes':['20'],'pots':[{'name':'Food','amount':'90000000000000000'},{'name':'Fuel','amount':'90000000000000000'}]}", TooLarge)]
    [InlineData("notes", "{'currency':'USD','notes':['20'],'pots':[{'name':'F\\u001b[31m','amount':'85'}]}", "standard input: pots[0].name, line 1: This text holds a character that can't be shown (U+001B); remove it.")]
    [InlineData("notes", "{'currency':'USD','notes':['20','5'],'pots':[{'name':'Food','amount':'4.00'}]}", "No note makes any part of Food's 4.00; add smaller notes, or raise the amount to 5.00.")]
    [InlineData("notes", "{'currency':'USD','notes':['20'],'source':{'kind':'machine','notes':['20'],'limit':'60'},'pots':[{'name':'Food','amount':'80.00'}]}", "The machine's limit is 20.00 too low for what the pots need; raise it, ask a teller, or lower the amounts.")]
    [InlineData("setaside", "{'currency':'USD','paydays':[{'date':'2026-02-30','income':'1'}],'dues':[]}", "standard input: paydays[0].date, line 1: 2026-02-30 is not in the calendar: February 2026 has 28 days.")]
    [InlineData("setaside", "{'currency':'USD','paydays':[],'dues':[]}", "standard input: paydays, line 1: There is no payday here; write at least one.")]
    [InlineData("setaside", "{'currency':'USD','paydays':[{'date':'2026-02-01','income':'1'},{'date':'2026-01-01','income':'1'}],'dues':[]}", "standard input: paydays[1], line 1: This payday is not after the one before it; write them in order, each date once.")]
    [InlineData("setaside", "{'currency':'USD','paydays':[{'date':'2026-01-01','income':'92233720368547758.07'},{'date':'2026-02-01','income':'0.01'}],'dues':[]}", TooLarge)]
    [InlineData("debts", "{'currency':'USD','from':'2026-01-01','debts':[{'name':'Loan','balance':'10','rate':'19.99','minimum':{'fixed':'1'}}]}", "standard input: debts[0].rate, line 1: \"19.99\" is above 10, that is 1000 %; write 19.99 % as \"0.1999\".")]
    public void Run_InputThatCannotBe_SaysWhereAndHowToMendIt(string command, string input, string reason)
    {
        using var shell = new TestShell();

        Ran ran = shell.RunOn(input.Replace('\'', '"'), command, "-");

        Assert.Equal(new Ran(1, "", $"payday: {reason}\n"), ran);
    }

    [Theory]
    [InlineData("import")]
    [InlineData("notes")]
    [InlineData("debts")]
    [InlineData("setaside")]
    public void Run_NoSuchFileOrAFolderOrNoText_SaysSo(string command)
    {
        using var shell = new TestShell();
        string noText = shell.In("no-text.json");
        File.WriteAllBytes(noText, [0x7B, 0xFF, 0xFE, 0x7D]);
        string empty = shell.File("empty.json", "");
        string missing = shell.In("missing.json");
        string folder = Path.GetDirectoryName(empty)!;

        Assert.Equal(new Ran(1, "", $"payday: There is no file {missing}.\n"), shell.Run(command, missing));
        Assert.Equal(new Ran(1, "", $"payday: {folder} is a folder; name a file in it.\n"), shell.Run(command, folder));
        Assert.Equal(new Ran(1, "", $"payday: {empty}: There is nothing in the text.\n"), shell.Run(command, empty));
        Assert.Equal(new Ran(1, "", $"payday: {noText}: This is not a text in UTF-8; save the file as UTF-8 and try again.\n"), shell.Run(command, noText));
    }

    [Theory]
    [InlineData("show")]
    [InlineData("run")]
    [InlineData("slip")]
    [InlineData("export")]
    [InlineData("debts")]
    public void Run_NoHousehold_SaysHowToGetOneAndMakesNoFolder(string command)
    {
        using var shell = new TestShell();

        Ran ran = shell.Run(command);

        Assert.Equal(
            new Ran(1, "", $"payday: There is no household in {shell.Data.Path} yet. Look at one with payday demo, or bring your own with payday import FILE.\n"),
            ran);
        Assert.False(Directory.Exists(shell.Data.Path));
    }

    [Theory]
    [InlineData("2026-03-07", "2026-03-07 is not a payday. The next payday is 2026-03-06. The first after 2026-03-07 is 2026-03-20.")]
    [InlineData("2026-01-02", "The household starts on 2026-03-05, after 2026-01-02.")]
    public void RunOn_NoPayday_NamesTheNext(string on, string reason)
    {
        using TestShell shell = TestShell.WithDemo();

        Assert.Equal(new Ran(1, "", $"payday: {reason}\n"), shell.Run("run", "--on", on));
    }

    [Fact]
    public void RunIncome_SumTooLarge_RefusesAndKeepsNothing()
    {
        using TestShell shell = TestShell.WithDemo();

        Assert.Equal(new Ran(1, "", $"payday: {TooLarge}\n"), shell.Run("run", "--one-off", "Prize=92233720368547758.07"));
        Assert.DoesNotContain("Prize", shell.Run("run").Fine().Out, StringComparison.Ordinal);
    }
}
