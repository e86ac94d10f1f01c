using System.Drawing;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Ids;
using Payday.Core.Reconciling;
using Payday.Screens.Bank;
using Payday.Screens.Home;
using Payday.Screens.Shell;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens.Weeks;

/// <summary>The demo household on Friday 13 March, with its payday of 6 March closed and a card purchase, held against the bank.</summary>
public sealed class ReconcileScreenTests : IDisposable
{
    private readonly DemoBook demo = new(new LocalDate(2026, 3, 13));

    public ReconcileScreenTests()
    {
        demo.CloseOne();
        var entry = new PurchaseEntry(demo.Session.Today, new PotId("food"), Money.FromMinorUnits(1240, demo.Household.Currency), "Corner shop");
        demo.Session.Take(Purchasing.Enter(demo.Session.Book, entry).Value!);
    }

    public void Dispose() => demo.Dispose();

    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    public void Lines_WithADifference_AreAsRecorded(int width, int height)
    {
        Hand hand = Begun();
        hand.Press("Enter").Type((Plan.Expected - Money.FromMinorUnits(124, Plan.Expected.Currency)).ToString(demo.Session.Style));
        Golden.Equal($"reconcile-{width}x{height}", hand.Shown(new Size(width, height)));
    }

    [Fact]
    public void Begun_IsThereAgain_AtAnotherStart()
    {
        Begun().Press("Enter").Type("1234.50").Press("d").Type("12 Mar");
        ReconciliationDraft draft = demo.Stored.Weeks.Reconciling!;
        Assert.Equal((new LocalDate(2026, 3, 12), "1234.50", 2), (draft.Date, draft.Balance!.Value.ToPlain(), draft.AtBank.Count));
        Assert.Contains(new Hand(new ReconcileScreen(demo.Session)).Shown(new Size(80, 24)), line => line.Contains("Thu 12 Mar 2026", StringComparison.Ordinal));
    }

    [Fact]
    public void Accept_ThatAgrees_IsSaidOnHome()
    {
        var hand = new Hand(new HomeScreen(demo.Session));
        hand.Press("@", "Space", "Space", "Enter").Type(Plan.Expected.ToString(demo.Session.Style)).Press("c");
        Assert.Equal("Agreed with the bank on Fri 13 Mar.", hand.Message);
        hand.Press("Down");
        Assert.Contains(hand.Shown(new Size(80, 60)), line => line.Contains("── agreed with the bank on Fri 13 Mar ──", StringComparison.Ordinal));
        Assert.Contains(hand.Shown(new Size(60, 60)), line => line == " Agreed with the bank on Fri 13 Mar.");
        Assert.Null(demo.Stored.Weeks.Reconciling);
    }

    [Fact]
    public void Accept_WithADifference_AsksAndKeepsItInView()
    {
        var hand = new Hand(new HomeScreen(demo.Session));
        hand.Press("@", "Enter").Type("1.00").Press("c");
        Assert.Equal("Accept with a difference", hand.Top.Title);
        Assert.Empty(demo.Stored.Weeks.Reconciliations);
        hand.Press("Enter");
        Assert.Contains(hand.Shown(new Size(80, 60)), line => line.Contains("less than it should on Fri 13 Mar (@).", StringComparison.Ordinal));
    }

    // A name is kept as the rest is, shown with the difference, and gone once it is explained.
    [Fact]
    public void Accept_WithAName_ShowsItUntilItIsExplained()
    {
        var hand = new Hand(new HomeScreen(demo.Session));
        hand.Press("@", "Ctrl+A", "Enter").Type((Plan.Expected - Money.FromMinorUnits(310, Plan.Expected.Currency)).ToString(demo.Session.Style)).Press("c", "e");
        Assert.Equal("At most 60 characters, please.", hand.Try(new string('x', 61)));
        hand.Press("e").Type("an account fee?");
        Assert.Equal("an account fee?", demo.Stored.Weeks.Reconciling!.Name);
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("It is called \"an account fee?\".", StringComparison.Ordinal));
        hand.Press("Enter", "Down");
        string[] shown = hand.Shown(new Size(80, 60));
        Assert.True(InOneLine(shown).Contains("The bank had 3.10 less than it should on Fri 13 Mar (\"an account fee?\") (@).", StringComparison.Ordinal), string.Join('\n', shown));
        Assert.Contains("(\"an account fee?\").", string.Join(' ', hand.Press("@").Shown(new Size(100, 24))), StringComparison.Ordinal);

        hand.Press("Esc", "$", "a").Pick("w").To("Amount").Type("3.10").To("For").Pick("b").Pick("b").Press("Right", "Esc");
        shown = hand.Shown(new Size(80, 60));
        Assert.True(InOneLine(shown).Contains("(\"an account fee?\"); what was entered since explains it.", StringComparison.Ordinal), string.Join('\n', shown));
    }

    // The difference is what is proposed: its way, its amount; what it is for is all that is asked. Then its line is the one to tick.
    [Theory]
    [InlineData(-310, "Went out")]
    [InlineData(125, "Came in")]
    public void Enter_WhatIsMissing_ProposesTheDifference(int cents, string way)
    {
        Hand hand = new Hand(new ReconcileScreen(demo.Session)).Press("Ctrl+A", "Enter");
        hand.Type((Plan.Expected + Money.FromMinorUnits(cents, Plan.Expected.Currency)).ToString(demo.Session.Style)).Press("$");
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains(way, StringComparison.Ordinal));
        hand.Pick("b").Pick("b").Press("Right");
        Assert.Equal("Account against the bank", hand.Top.Title);
        Assert.Equal(cents, Assert.Single(demo.Session.Book.Weeks.Entries).Amount.MinorUnits);
        hand.Press("Space");
        Assert.Equal(0, Plan.Difference!.Value.MinorUnits);
        hand.Press("c");
        Assert.Single(demo.Stored.Weeks.Reconciliations);
    }

    [Fact]
    public void All_TicksEveryLine_AndThenNone()
    {
        Hand hand = Begun().Press("Ctrl+A");
        Assert.All(Plan.Lines, line => Assert.True(Plan.IsAtBank(line)));
        hand.Press("Ctrl+A");
        Assert.Empty(Plan.Draft.AtBank);
    }

    [Fact]
    public void Undo_OfAPurchaseAtTheBank_LeadsToTheReconciliation()
    {
        var hand = new Hand(new HomeScreen(demo.Session));
        hand.Press("@", "Ctrl+A", "Enter").Type(Plan.Expected.ToString(demo.Session.Style)).Press("c", "b", "u");
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("at the bank by the reconciliation of 13 Mar 2026", StringComparison.Ordinal));
        hand.Press("Enter");
        Assert.StartsWith("Take back the reconciliation of ", hand.Top.Title, StringComparison.Ordinal);
        hand.Press("Enter", "Esc", "u", "Enter");
        Assert.True(demo.Session.Book.Weeks.Purchases[0].Undone);
        Assert.Equal(Plan.Lines.Length, Plan.Draft.AtBank.Count);
    }

    [Fact]
    public void Wrong_Input_IsSaid()
    {
        var hand = new Hand(new ReconcileScreen(demo.Session));
        Assert.NotNull(hand.Press("Enter").Try("twelve"));
        Assert.NotNull(hand.Press("d").Try("1 Jan 2026"));
        Assert.NotNull(hand.Press("d").Try("14 Mar 2026"));
        Assert.Equal("The account was not compared with the bank yet.", hand.Press("u").Message);
    }

    private static string InOneLine(string[] shown) => string.Join(' ', shown.SelectMany(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)));

    private ReconciliationPlan Plan => ReconciliationPlan.Of(demo.Session.Book, demo.Session.Today);

    private Hand Begun() => new Hand(new ReconcileScreen(demo.Session)).Press("Space", "Space");
}
