using NodaTime;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Screens.Home;
using Payday.Screens.Shell;
using Payday.Screens.Start;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Store.HouseholdFiles;
using Payday.Tests.Printing;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens;

/// <summary>An account that begins below zero, from home through the routine.</summary>
public sealed class OverdraftScreenTests : IDisposable
{
    /// <summary>300 below zero, 1,000 a fortnight, a rent of 250 and 300 of food a week.</summary>
    internal const string File = """
        {"version":3,"name":"Ferry steps","start":"2026-03-05","currency":"USD","notes":["50","20","10"],"fillDay":"Friday","holidays":"none","bufferKeeps":"0",
         "opening":{"account":"-300.00"},
         "sources":[{"name":"Wage","schedule":{"kind":"fortnightly","anchor":"2026-03-06"},"shift":"none","expected":"1000"}],
         "bills":[{"name":"Rent","amount":"250","schedule":{"kind":"monthly","day":6},"shift":"none","essential":true}],
         "pots":[{"name":"Food","kind":"spending","amount":"200","per":"week","held":"cash"}]}
        """;

    private readonly ScratchFolder folder = new();
    private readonly BookStore store;
    private readonly BookSession session;
    private readonly Hand hand;

    public OverdraftScreenTests()
    {
        store = BookStore.Open(new StoreFolder(folder.Path));
        session = NewBook.Store(store, HouseholdFile.Read(File).Value!, () => new LocalDate(2026, 3, 6));
        hand = new Hand(new HomeScreen(session));
    }

    public void Dispose()
    {
        store.Dispose();
        folder.Dispose();
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    public void Home_AndTheIncomeStep_ShowIt(int width, int height)
    {
        string[] home = hand.Shown(new(width, height));
        hand.Press("Enter", "Down");

        Golden.Equal($"overdraft-{width}x{height}", [.. home, .. hand.Shown(new(width, height))]);
    }

    [Fact]
    public void Income_LessByHand_IsKeptAndSpaceTakesTheProposalAgain()
    {
        hand.Press("Enter", "Down", "Enter").Type("120");
        Assert.Equal("120.00", store.Load()!.Draft!.ToOverdraft?.ToPlain());
        Assert.Contains(hand.Shown(new(80, 24)), line => line.StartsWith("*>Pays off the overdraft", StringComparison.Ordinal) && line.EndsWith("*-120.00", StringComparison.Ordinal));

        hand.Press("Space");

        Assert.Null(store.Load()!.Draft!.ToOverdraft);
    }

    [Theory]
    [InlineData("301", "The overdraft is 300.00.")]
    [InlineData("-1", "An amount below zero has no place here.")]
    [InlineData("x", "'x' is not an amount; write it like 12.55.")]
    public void Income_WhatCanNotPayItOff_IsRefused(string typed, string expected) =>
        Assert.Equal(expected, hand.Press("Enter", "Down", "Enter").Try(typed));

    [Fact]
    public void Income_MoreThanCameIn_IsRefused()
    {
        hand.Press("Enter", "Enter").Type("90").Press("Down", "Enter");

        Assert.Equal("90.00 came in, so no more of it is paid off today.", hand.Try("200"));
    }

    [Fact]
    public void Close_AsProposed_PaysItOff()
    {
        hand.Press("Enter", "Right", "Right", "Right", "Right", "Right", "Right", "c");
        Assert.Contains(" 300.00 pays off the overdraft.", hand.Shown(new(80, 24)));

        hand.Press("Enter");

        Balances balances = store.Load()!.Ledger.Balances;
        Assert.Equal(("0.00", "50.00"), (balances.Overdrawn.ToPlain(), balances.In(Place.Account).ToPlain()));
        Assert.DoesNotContain(hand.Shown(new(80, 24)), line => line.Contains("verdraft", StringComparison.Ordinal));
    }

    // 1,000 on -300 with 250 paid leaves 450, and 700 would be fetched.
    [Fact]
    public void Withdrawal_MoreThanTheAccountHas_SaysSoAndIsNotClosed()
    {
        session.Take(session.Book with { Draft = new RoutineDraft(new(2026, 3, 6)) { ToOverdraft = Core.Amounts.Money.Zero(session.Book.Household.Currency), Step = RoutineStep.Withdrawal } });
        session.Take(session.Book with { Draft = session.Book.Draft! with { Fills = session.Book.Draft.Fills.Add(new("food"), Core.Amounts.Money.FromMinorUnits(70000, session.Book.Household.Currency)) } });
        hand.Press("Enter");

        string[] shown = hand.Shown(new(80, 24));
        Assert.True(shown.Any(line => line.StartsWith(" ! 700.00 is withdrawn, and with what is left of the overdraft the account", StringComparison.Ordinal)), string.Join('\n', shown));
        hand.Press("Right", "c");
        Assert.Contains(hand.Shown(new(80, 24)), line => line.Contains("450.00 in cash at most", StringComparison.Ordinal));
    }
}
