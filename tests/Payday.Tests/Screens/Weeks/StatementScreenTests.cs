using System.Drawing;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.StatementTaking;
using Payday.Screens.Home;
using Payday.Screens.Statements;
using Payday.Statements.Taking;
using Payday.Tests.Commands;
using Payday.Tests.Printing;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;
using Payday.Core.Amounts;

namespace Payday.Tests.Screens.Weeks;

/// <summary>The demo household on 1 April, its paydays of March closed, and the bank's statement of March.</summary>
public sealed class StatementScreenTests : IDisposable
{
    private readonly ScratchFolder files = new();
    private readonly DemoBook demo = new(new LocalDate(2026, 4, 1));

    public StatementScreenTests()
    {
        demo.CloseOne();
        demo.CloseOne();
        demo.CloseOne();
        File.WriteAllText(files.In("march.csv"), MarchStatement.Csv());
    }

    public void Dispose()
    {
        demo.Dispose();
        files.Dispose();
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    public void Screens_OfAMonth_AreAsRecorded(int width, int height)
    {
        var size = new Size(width, height);
        var hand = new Hand(new StatementScreen(demo.Session));
        Golden.Equal($"statement-none-{width}x{height}", hand.Shown(size));
        hand.Press("Enter").Type(files.In("mar"));
        Golden.Equal($"statement-{width}x{height}", hand.Shown(size));
        hand.Press("Ctrl+A", "Up", "Up", "Up", "Up", "Enter").Pick("h").Press("Enter", "x");
        Golden.Equal($"statement-chosen-{width}x{height}", hand.Shown(size));
        hand.Press("c");
        Golden.Equal($"statement-take-{width}x{height}", hand.Shown(size));
    }

    [Fact]
    public void Chosen_IsThereAgain_AtAnotherStart_AndWrittenAtTheEndAlone()
    {
        int before = demo.Stored.Ledger.Movements.Count;
        Read().Press("Ctrl+A").To("Greenleaf").Press("Enter").Pick("h").Press("Enter");
        Assert.Equal(before, demo.Stored.Ledger.Movements.Count);
        Assert.Empty(demo.Stored.Weeks.Takings);

        var hand = new Hand(new HomeScreen(demo.Session));
        hand.Press("%");
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.StartsWith('\u2713') && line.Contains("Household goods, by card", StringComparison.Ordinal));
        hand.To("Quillby").Press("x", "c", "Enter");
        Assert.Equal("The statement is taken. So the bank has 19.99 less than the account here on 31 Mar.", hand.Message);
        TakingOfStatements taking = Assert.Single(demo.Stored.Weeks.Takings);
        Assert.Equal((24, 4, 1), (taking.Lines.Length, taking.Lines.Count(line => line.Wrote is not null), taking.Lines.Count(line => line.IsLeft)));
        Assert.Empty(demo.Stored.Weeks.Forms);

        hand.Press("%", "u", "Enter");
        Assert.Equal("The statement is taken back.", hand.Message);
        Assert.Empty(demo.Stored.Weeks.StandingReconciliations);
    }

    // A fee that came by a statement: its ledger line belongs to an entry, that is at the bank by a reconciliation, and that is the statement's.
    [Fact]
    public void Undo_InTheLedger_OfWhatAStatementBrought_LeadsStraightToIt()
    {
        File.WriteAllText(files.In("fee.csv"), "Date;Party;Amount;Balance\n2026-03-30;Account fee;-4.50;995.50\n2026-03-31;Corner shop;-1.25;994.25\n");
        var hand = new Hand(new HomeScreen(demo.Session)).Press("%", "Enter").Type(files.In("fee"));
        hand.To("Account fee").Press("Enter").To("Fee ").Press("Enter").To("Corner shop").Press("x", "c", "Enter");
        Assert.Single(demo.Stored.Weeks.Entries);

        hand.Press("l").To("fee").Press("u");
        Assert.Contains(
            "belongs to the fee of 30 Mar 2026 (account entry 1), so it isn't undone alone; take that back as a whole. First to be taken back is the statement to 31 Mar 2026; Enter leads there.",
            string.Join(' ', string.Join(' ', hand.Shown(new Size(80, 24))).Split(' ', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        hand.Press("Enter");
        Assert.StartsWith("Take back the statement to ", hand.Top.Title, StringComparison.Ordinal);
        hand.Press("Enter");

        Assert.Equal("The statement is taken back.", hand.Message);
        Assert.True(demo.Stored.Weeks.Entries[0].Undone);
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("It is undone.", StringComparison.Ordinal));
    }

    [Fact]
    public void Rule_KeptOnALine_CountsTheNextTime_AndIsChangedAndDropped()
    {
        Hand hand = Read().To("Greenleaf");
        Assert.Contains("Pick what this line becomes first", hand.Press("#").Message, StringComparison.Ordinal);
        hand.Press("Enter").Pick("h").Press("Enter").To("Greenleaf").Press("#").Leave();
        Assert.Equal(["greenleaf grocer"], demo.Stored.Weeks.StatementRules.Select(rule => rule.Words));
        hand.Press("Del");
        hand = Read().To("Greenleaf");
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("Household goods, by card?", StringComparison.Ordinal));
        hand.Press("Space");
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.StartsWith('\u2713'));

        hand.Press("Ctrl+K", "Enter").Pick("b").Press("Enter");
        Assert.Equal(LineUse.For, demo.Stored.Weeks.StatementRules[0].Target.Use);
        hand.Press("a").Type("corner shop").Press("Right").Pick("l").Press("Enter");
        Assert.Equal(2, demo.Stored.Weeks.StatementRules.Length);
        Assert.NotNull(hand.Press("a").Try("..."));
        hand.Press("x", "x");
        Assert.Empty(demo.Stored.Weeks.StatementRules);
    }

    [Fact]
    public void Wrong_Input_IsSaid_AndNothingIsLost()
    {
        var hand = new Hand(new StatementScreen(demo.Session));
        Assert.Equal("No statement was taken yet.", hand.Press("u").Message);
        Assert.Contains("There is no file", hand.Press("Enter").Try(files.In("none.csv")), StringComparison.Ordinal);
        File.WriteAllText(files.In("may.csv"), "Dear customer,\n");
        Assert.Contains("march.csv, may.csv; type more of the name", hand.Press("Enter").Try(files.In("ma")), StringComparison.Ordinal);
        hand.Press("Enter").Type(files.In("may"));
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("Del forgets the file", StringComparison.Ordinal));
        hand.Press("Del", "Enter").Type(files.In("mar"));
        hand.To("Greenleaf").Press("Enter").Pick("i").Press("Enter");
        Assert.Empty(demo.Stored.Weeks.Takings);
    }

    [Fact]
    public void Asked_ByAFile_IsAnsweredByPicking_AndRemembered()
    {
        File.WriteAllText(files.In("list.csv"), "When;Who;Sum\n2026-03-30;Corner shop;12.50\n2026-03-31;Bakery;4.50\n");
        var hand = new Hand(new HomeScreen(demo.Session)).Press("%", "Enter").Type(files.In("list"));
        Assert.Contains("which way the money went", string.Join(' ', hand.Shown(new Size(80, 24))), StringComparison.Ordinal);
        hand.Press("Enter").To("Bakery").Press("x");
        Assert.Contains("@ types it", hand.Press("c").Message, StringComparison.Ordinal);
        hand.Press("@").Type("1").Press("c", "Enter");
        Assert.StartsWith("The statement is taken.", hand.Message, StringComparison.Ordinal);
        Assert.Single(demo.Stored.Weeks.Readings);
        File.WriteAllText(files.In("next.csv"), "When;Who;Sum\n2026-04-01;Corner shop;13.50\n");
        hand.Press("%", "Enter").Type(files.In("next")).To("Corner shop");
    }

    [Fact]
    public void Cash_IsPickedWithItsNotes_AndAMoveByBothEnds()
    {
        File.WriteAllText(files.In("cash.csv"), "Date;Party;Amount;Balance\n2026-03-27;ATM High Street;-60;940\n2026-03-30;Savings bank;-25;915\n");
        Hand hand = new Hand(new HomeScreen(demo.Session)).Press("%", "Enter").Type(files.In("cash"));
        Assert.Contains("cash for the loose notes", string.Join('\n', hand.Shown(new Size(80, 24))), StringComparison.Ordinal);
        Assert.DoesNotContain(hand.Shown(new Size(80, 24)), line => line.Contains("?.", StringComparison.Ordinal));
        Assert.Contains(hand.Press("Enter").Shown(new Size(80, 24)), line => line.Contains(">Cash loose notes", StringComparison.Ordinal));
        hand.Press("PgUp", "PgUp").To("Cash Food").Press("Enter", "PgUp", "PgUp").To("ATM").Press("n").Type("0", "0", "3", "0").Press("Right");
        Assert.Contains(hand.To("Savings").Press("Enter").Shown(new Size(80, 24)), line => line.Contains("more below", StringComparison.Ordinal));
        hand.Press("PgDn", "PgDn", "PgDn", "PgDn", "Enter").To("Reserve").Press("Enter", "PgUp", "PgUp").To("Another account").Press("Enter");
        string shown = string.Join('\n', hand.Shown(new Size(80, 24)));
        Assert.Contains("cash for Food", shown, StringComparison.Ordinal);
        Assert.Contains("transfer from Reserve", shown, StringComparison.Ordinal);
        Assert.Empty(demo.Stored.Weeks.Moves);
        hand.Press("c", "Enter");
        Assert.StartsWith("The statement is taken.", hand.Message, StringComparison.Ordinal);
        Assert.Equal(Money.FromMinorUnits(6000, demo.Session.Book.Household.Currency), Assert.Single(demo.Stored.Weeks.Moves).Notes!.Worth(demo.Session.Book.Household.Currency));
        Assert.Equal(EntryKind.Transfer, Assert.Single(demo.Stored.Weeks.Entries).Kind);
    }

    [Fact]
    public void Rule_WordsThatWereTyped_AreThereAgainAfterEsc()
    {
        var hand = new Hand(new RulesScreen(demo.Session));
        hand.Press("a").Type("High street");
        hand = new Hand(new RulesScreen(demo.Session));
        Assert.Contains("'high street': Right picks", string.Join('\n', hand.Shown(new Size(80, 24))), StringComparison.Ordinal);
        hand.Press("Right").To("Cash Food").Press("Enter");
        Assert.Equal(LineUse.Cash, Assert.Single(demo.Stored.Weeks.StatementRules).Target.Use);
        Assert.Empty(demo.Stored.Weeks.Forms);
    }

    // Paths line by line, a folder, and what is no path: nothing of it is lost, nothing is done twice.
    [Fact]
    public void Paths_Pasted_AreFiles_AndTheFirstThatIsNoneIsSaid()
    {
        File.WriteAllText(files.In("late.csv"), MarchStatement.Csv(from: "2026-03-20"));
        var hand = new Hand(new StatementScreen(demo.Session));
        Assert.True(hand.Top.Pasted($"{files.In("march.csv")}\n{files.In("late.csv")}\n{files.In("none.csv")}\u001b[2J\n"));
        Assert.Contains("There is no file", hand.Top.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', hand.Top.Message);
        Assert.True(string.Join(' ', hand.Shown(new Size(80, 24))).Contains("5 new or unclear", StringComparison.Ordinal), string.Join('\n', hand.Shown(new Size(80, 24))));
        Assert.False(hand.Top.Pasted(" \n"));
        hand.Press("Del");
        Assert.True(hand.Top.Pasted(files.Path));
        Assert.Contains("5 new or unclear", string.Join(' ', hand.Shown(new Size(80, 24))), StringComparison.Ordinal);
    }

    // Another process took the statement while choices stood here: they are for lines that are known now, and nothing is written again.
    [Fact]
    public void Book_ThatChangedMeanwhile_IsTheOneThatCounts()
    {
        Read().To("Greenleaf").Press("Enter").Pick("h").Press("Enter");
        Book taken = StatementPlan.Of(
            demo.Stored, [.. new StatementWork(demo.Session).Input.Statements], new PlanOptions(), demo.Session.Today).Value!.Taken(demo.Session.Today).Value!;
        demo.Session.Take(taken);
        int movements = demo.Stored.Ledger.Movements.Count;
        var hand = new Hand(new StatementScreen(demo.Session));
        Assert.Contains("22 taken before", string.Join(' ', hand.Shown(new Size(80, 24))), StringComparison.Ordinal);
        Assert.Equal(movements, demo.Stored.Ledger.Movements.Count);
        hand.Press("c", "Enter");
        Assert.Equal(2, demo.Stored.Weeks.Takings.Length);
        Assert.Single(demo.Stored.Weeks.Takings[1].Lines, line => line.Wrote is not null);
    }

    private Hand Read() => new Hand(new StatementScreen(demo.Session)).Press("Enter").Type(files.In("mar"));
}
