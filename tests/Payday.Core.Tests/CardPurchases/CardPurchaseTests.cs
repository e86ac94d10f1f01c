using NodaTime;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Core.HouseholdChanges;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.CardPurchases;

public class CardPurchaseTests
{
    private static readonly LocalDate Sunday8 = new(2026, 3, 8);

    // Rounded up to a whole note when the cash is pulled: common practice, no source.
    [Theory]
    [InlineData(12.34, 15)]
    [InlineData(15, 15)]
    [InlineData(0.01, 5)]
    public void Enter_RoundingUp_OwesWholeNotes(decimal amount, decimal owed)
    {
        Book book = Closed.Spend("food", amount, Sunday8);

        Assert.Equal((Usd(owed), Usd(-amount), Usd(60 - owed)), (book.Has("cash/owed-back:food"), book.Has("account/owed-back:food"), book.Has("cash/wallet:food")));
        Assert.Equal(Usd(amount), book.Has("outside/spending:food"));
        AssertSound(book);
    }

    [Fact]
    public void Enter_Exact_OwesTheAmount()
    {
        Household exact = House with { Settings = House.Settings with { CardRounding = CardRounding.Exact } };
        Assert.Equal(Usd(12.34m), Close(Book.Begin(exact), Friday6March).Spend("food", 12.34m, Sunday8).Weeks.Purchases[0].OwedBack);
    }

    [Fact]
    public void Enter_RoundingBeyondWhatThePotHas_OwesAllItHas()
    {
        Book book = Closed.Count(new(2026, 3, 19), "food", 12);
        Assert.Equal(Usd(12), book.Spend("food", 11.50m, new(2026, 3, 19)).Weeks.Purchases[0].OwedBack);
    }

    [Fact]
    public void Enter_MoreThanTheWalletHas_TakesTheRestFromHome()
    {
        Book book = Closed.Spend("food", 75, Sunday8);
        Assert.Equal((Usd(0), Usd(45), Usd(75)), (book.Has("cash/wallet:food"), book.Has("cash/pot:food"), book.Has("cash/owed-back:food")));
    }

    [Theory]
    [InlineData("food", 130, "Food has 120.00, less than 130.00; enter what it has, and the rest on another pot or the buffer.")]
    [InlineData("gifts", 16, "Gifts has 15.00, less than 16.00; enter what it has, and the rest on another pot or the buffer.")]
    [InlineData(null, 501, "The buffer has 500.00, less than 501.00; enter what it has, and the rest on a pot.")]
    [InlineData("hats", 1, "There is no pot 'hats'.")]
    [InlineData("food", 0, "The amount is zero; write what the card paid, or below zero what came back.")]
    public void Enter_WhatCannotBe_IsRefused(string? pot, decimal amount, string fault) =>
        Assert.Equal(fault, Purchasing.Enter(Closed, new PurchaseEntry(Sunday8, pot is null ? null : new PotId(pot), Usd(amount), "")).Fault.Said());

    // The first fill is of 6 March: a card that paid on that day or later is paid with it at once, one before it only then.
    [Theory]
    [InlineData("food", 8, null)]
    [InlineData("gifts", 6, null)]
    [InlineData("gifts", 5, 6)]
    [InlineData("food", 5, 6)]
    public void PaidOn_OfAPurchaseBeforeItsPotsFill_IsTheDayOfTheFill(string pot, int day, int? paid)
    {
        Book begun = Book.Begin(House with { Start = new(2026, 3, 1) });
        Book book = Close(begun, Friday6March).Spend(pot, 12.34m, new(2026, 3, day));

        Assert.Equal(paid is { } on ? new LocalDate(2026, 3, on) : null, EarlyPurchase.PaidOn(book, book.Weeks.Purchases[0]));
    }

    [Fact]
    public void Enter_OnAnEmptyPot_SaysWhereElse()
    {
        Book book = Closed.Count(new(2026, 3, 19), "food", 0);
        Assert.Equal(
            "Food has nothing to pay 5.00 with; enter it on another pot or the buffer.",
            Purchasing.Enter(book, new PurchaseEntry(new(2026, 3, 19), new PotId("food"), Usd(5), "")).Fault.Said());
    }

    [Fact]
    public void Enter_OnAccountPotOrBuffer_SpendsThere()
    {
        Book book = Closed.Spend("gifts", 4, Sunday8).Spend(null, 30, Sunday8);

        Assert.Equal((Usd(11), Usd(470), Usd(30)), (book.Has("account/pot:gifts"), book.Has("account/buffer"), book.Has("outside/spending")));
        Assert.Empty(OwedItems.Of(book));
    }

    [Fact]
    public void Enter_OnAnAccountPotBeforeItsMoneyWasThere_IsTakenOnTheFirstDayOnWhichItWas()
    {
        // 15 are there from the 6th, another 15 from the 20th.
        Book book = Close(Closed, new(2026, 3, 20)).Spend("gifts", 20, Sunday8);

        Assert.Equal(new LocalDate(2026, 3, 20), book.Ledger.Movements[^1].Date);
        Assert.Equal(Sunday8, book.Weeks.Purchases[^1].Date);
    }

    [Fact]
    public void Enter_ForgottenInACountedWeek_LeavesTheCountAlone()
    {
        Book counted = Closed.Count(new(2026, 3, 12), "food", 40);
        Book book = counted.Spend("food", 10, Sunday8);

        Assert.Equal(counted.Weeks.Counts, book.Weeks.Counts);
        CountRow next = book.Row(new(2026, 3, 19), "food", new CountEntry(Usd(0)));
        Assert.Equal((Usd(40), Usd(60), Usd(10), Usd(90)), (next.Before, next.Filled, next.OwedBack, next.Spent));
    }

    [Fact]
    public void Undo_GivesAllBack()
    {
        Book book = Closed.Spend("food", 75, Sunday8);
        Book undone = Purchasing.Undo(book, 1, new(2026, 3, 9)).Value!;

        // The fill that was taken up with it waits again too.
        Assert.Equal((Usd(0), Usd(0), Usd(0), Usd(120)), (
            undone.Has("cash/owed-back:food"), undone.Has("account/owed-back:food"), undone.Has("cash/wallet:food"), undone.Has("cash/pot:food")));
        Assert.Equal("Card purchase 1 is undone already.", Purchasing.Undo(undone, 1, Sunday8).Fault.Said());
        Assert.Equal("There is no card purchase 2.", Purchasing.Undo(undone, 2, Sunday8).Fault.Said());
        Assert.Empty(OwedItems.Of(undone));
        Assert.Empty(undone.Weeks.Fills);
    }

    [Fact]
    public void Undo_AfterTheDayOfACount_LeavesNothingOwedInIt()
    {
        Book book = Closed.Spend("food", 20, new(2026, 3, 10));
        Book undone = Purchasing.Undo(book, 1, new(2026, 3, 15)).Value!;

        CountRow row = undone.Row(new(2026, 3, 12), "food", new CountEntry(Usd(60)));
        Assert.Equal((Usd(60), Usd(0), Usd(0), Usd(0)), (row.Filled, row.OwedBack, row.StillOwed, row.Spent));
    }

    [Fact]
    public void Undo_WithAnotherPurchaseSince_LeavesThatTheFillsItNeeds()
    {
        Book book = Closed.Spend("food", 20, new(2026, 3, 10)).Spend("food", 5, new(2026, 3, 11));
        Book once = Purchasing.Undo(book, 1, new(2026, 3, 15)).Value!;

        Assert.Equal((Usd(55), Usd(60)), (once.Has("cash/wallet:food"), once.Has("cash/pot:food")));
        Book twice = Purchasing.Undo(once, 2, new(2026, 3, 15)).Value!;
        Assert.Equal((Usd(0), Usd(120)), (twice.Has("cash/wallet:food"), twice.Has("cash/pot:food")));
    }

    [Fact]
    public void Undo_SeenByACount_WaitsForTheCountToBeTakenBack()
    {
        Book counted = Closed.Spend("food", 20, Sunday8).Count(new(2026, 3, 12), "food", 30);

        Assert.Equal(
            (new BookEntry.Count(new PotId("food"), "Food", new(2026, 3, 12)), "Food was counted on 12 Mar 2026 with card purchase 1 in it; take that count back first."),
            (Purchasing.InTheWay(counted, 1)!.First, Purchasing.InTheWay(counted, 1).Said()));
        Assert.Equal(Purchasing.InTheWay(counted, 1).Said(), Purchasing.Undo(counted, 1, Friday13March).Fault.Said());
        Assert.Equal(Purchasing.InTheWay(counted, 1).Said(), Purchasing.Change(counted, 1, new PurchaseEntry(Sunday8, null, Usd(20), ""), Friday13March).Fault.Said());
        Book back = CountUndo.Of(counted, CountUndo.Last(counted), Friday13March).Value!;
        Assert.True(Purchasing.Undo(back, 1, Friday13March).Ok);
    }

    [Fact]
    public void Undo_Returned_IsRefused()
    {
        Book book = ReturnPlan.Of(Closed.Spend("food", 12, Sunday8), ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;
        Assert.Equal(
            "The cash for card purchase 1 was taken to the bank on 13 Mar 2026; take that cash return back first.",
            Purchasing.Undo(book, 1, Friday13March).Fault.Said());
    }

    [Fact]
    public void Change_IsUndoneAndEnteredAgain()
    {
        Book book = Purchasing.Change(Closed.Spend("food", 12, Sunday8), 1, new PurchaseEntry(Sunday8, new PotId("fares"), Usd(7), "bus"), Sunday8).Value!;

        Assert.Equal([(true, "food"), (false, "fares")], book.Weeks.Purchases.Select(purchase => (purchase.Undone, purchase.PotId!.Value.Text)));
        Assert.Equal((Usd(0), Usd(10)), (book.Has("cash/wallet:food"), book.Has("cash/owed-back:fares")));
        Assert.False(Purchasing.Change(book, 2, new PurchaseEntry(Sunday8, new PotId("fares"), Usd(700), "bus"), Sunday8).Ok);
    }

    [Fact]
    public void HouseholdChange_PotOrTargetOfOwedCash_MustStay()
    {
        Book book = Closed
            .Count(new(2026, 3, 12), "food", new CountEntry(Usd(25)) { Then = new CountThen(MoveTarget.Debt(new DebtId("card"))) })
            .Spend("fares", 12, new(2026, 3, 14));
        Result<Book> changed = HouseholdChange.Of(book, House with { Debts = [], Pots = [] });

        Assert.Contains("Fares (id fares) has 15.00 to pay back; return it to the account first.", changed.Faults.Select(refusal => refusal.InAFile()));
        Assert.Contains("25.00 is on its way to Card (id card); return it to the account first.", changed.Faults.Select(refusal => refusal.InAFile()));
    }
}
