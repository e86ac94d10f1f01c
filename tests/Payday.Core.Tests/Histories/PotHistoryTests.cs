using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Histories;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Pots;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Histories;

/// <summary>What happened to a pot, line by line, over two weeks with one of everything.</summary>
public class PotHistoryTests
{
    private static readonly LocalDate Saturday7 = new(2026, 3, 7);
    private static readonly LocalDate Thursday12 = new(2026, 3, 12);
    private static readonly LocalDate Saturday14 = new(2026, 3, 14);

    // 120 are filled in for two weeks, 60 go in the wallet. 18 are paid by card, and 20 taken back to the bank for it, rounded up. Of 40 the count
    // finds 30 left and 2 missing, so 8 were spent; the 30 go to boots. The 2 turn up, 5 come back from boots, 4 are paid
    // from the next week's 60 at home, and 60 of that are skipped.
    private static readonly Book Lived = Live();

    [Fact]
    public void Of_AFortnightWithOneOfEverything_TellsEachInItsOrder() => Assert.Equal(
        [
            "2026-03-06 Fill 120.00 fill",
            "2026-03-06 Wallet 60.00 ",
            "2026-03-07 Card 18.00 shop",
            "2026-03-07 OwedBack 20.00 shop",
            "2026-03-12 Returned 20.00 ",
            "2026-03-12 Counted 8.00 , 30.00 left",
            "2026-03-12 Difference -2.00 coin",
            "2026-03-12 Move -30.00 to Boots",
            "2026-03-13 Skipped 0.00 ",
            "2026-03-13 Difference 2.00 coin",
            "2026-03-14 Move 5.00 from Boots: too much",
            "2026-03-14 Entry -4.00 torn bag",
        ],
        Lines("food"));

    [Fact]
    public void Of_ThePotOnTheOtherSide_TellsThatToo() => Assert.Equal(
        ["2026-03-06 Fill 30.00 fill", "2026-03-12 Move 30.00 from Food", "2026-03-14 Move -5.00 to Food: too much"], Lines("boots"));

    [Fact]
    public void Of_AnotherPot_HasNoneOfIt() => Assert.Equal(["2026-03-06 Fill 40.00 fill"], Lines("fares"));

    [Fact]
    public void Balances_EndWithWhatThePotHas()
    {
        foreach (string pot in new[] { "food", "boots", "fares", "gifts" })
        {
            Assert.Equal(PotMoney.HasNow(Lived.Ledger.Balances, new PotId(pot)), PotHistory.Of(Lived, new PotId(pot)).Balances[^1].Has);
        }
    }

    // Undone in turn, the last first, nothing of it is told any more.
    [Fact]
    public void Of_WhatWasUndone_IsNotTold()
    {
        Book back = Moving.Undo(Entering.Undo(Lived, 1, Saturday14).Value!, 1, Saturday14).Value!;

        Assert.Equal(Lines("food").SkipLast(2), Lines("food", back));
        Assert.Equal(Lines("boots").SkipLast(1), Lines("boots", back));
    }

    private static Book Live()
    {
        Book book = Done(WalletFills.Mark(Closed, new FillKey(Friday6March, Friday6March, new PotId("food")), FillState.Done, Friday6March)).Spend("food", 18, Saturday7);
        book = Done(ReturnPlan.Of(book, ReturnDraft.AsPlanned).Confirm(Thursday12));
        book = book.Count(Thursday12, "food", new CountEntry(Usd(30)) { Missing = Usd(2), DifferenceName = "coin", Then = new CountThen(MoveTarget.Pot(new PotId("boots"))) });
        book = Done(Differences.Settle(book, 1, DifferenceEnd.TurnedUp, Friday13March));
        book = Done(WalletFills.Mark(book, new FillKey(Friday6March, Friday13March, new PotId("food")), FillState.Skipped, Friday13March));
        book = Done(Moving.Enter(book, new MoveEntry(Saturday14, LedgerEnd.FromKey("cash/pot:boots"), LedgerEnd.FromKey("cash/pot:food"), Usd(5), "too much")));
        return Done(Entering.Enter(book, new EntryWish(Saturday14, EntryKind.Loss, LedgerEnd.FromKey("cash/pot:food"), Usd(-4), "torn bag") { IsCash = true }));
    }

    private static Book Done(Result<Book> result)
    {
        Assert.True(result.Ok, result.Ok ? "" : result.Fault.Said());
        return result.Value!;
    }

    private static string[] Lines(string pot, Book? book = null) =>
        [.. PotHistory.Of(book ?? Lived, new PotId(pot)).Lines.Select(line => $"{line.Date:uuuu-MM-dd} {line.Kind} {line.Amount.ToPlain()} {line.What}{(line.Left is { } left ? $", {left.ToPlain()} left" : "")}")];
}
