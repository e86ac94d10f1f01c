using NodaTime;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
using Payday.Core.ClosedPaydays;
using Payday.Core.Ids;
using Payday.Core.Routines;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.CashReturns;

public class ReturnUndoTests
{
    private static readonly LocalDate Sunday8 = new(2026, 3, 8);
    private static readonly LocalDate Friday20 = new(2026, 3, 20);
    private static readonly Book Spent = Closed.Spend("food", 12.40m, Sunday8).Spend("fares", 5, Sunday8);

    [Fact]
    public void Of_TheLast_OwesAsBefore()
    {
        Book first = Returned(Spent);
        Book second = Returned(first.Spend("food", 7, Friday13March));
        Book back = ReturnUndo.Of(second, ReturnUndo.Last(second)!, Friday13March).Value!;

        Assert.Equal([false, true], back.Weeks.Returns.Select(one => one.Undone));
        Assert.Equal((Usd(10), Usd(-7), first.Has("account/buffer")), (back.Has("cash/owed-back:food"), back.Has("account/owed-back:food"), back.Has("account/buffer")));
        Assert.Equal([3L], OwedItems.Of(back).Select(item => item.Key.Number));
        Assert.Equal("cash return taken back", back.Ledger.Movements[^1].Reason);
        Assert.Equal(first.Weeks.Returns[0], ReturnUndo.Last(back));
        Assert.Equal(
            OwedItems.Of(Spent), OwedItems.Of(ReturnUndo.Of(back, ReturnUndo.Last(back)!, Friday13March).Value!).Where(item => item.Key.Number < 3));
    }

    // A refund was taken off what was left to bring then: with the return undone it would have been taken off another.
    [Fact]
    public void Of_WithARefundOfThePotSince_AsksForThatFirst()
    {
        Book before = Returned(Refund(Spent, "food", 2));
        Book others = Refund(before, "gifts", 2);
        Book refunded = Refund(Refund(before, "fares", 1), "gifts", 1);

        Assert.Null(ReturnUndo.InTheWay(before, ReturnUndo.Last(before)!));
        Assert.Null(ReturnUndo.InTheWay(others, ReturnUndo.Last(others)!));
        Assert.Equal(new Obstacle.RefundSince(new BookEntry.Return(1, Friday13March), new BookEntry.Purchase(4)), ReturnUndo.InTheWay(refunded, ReturnUndo.Last(refunded)!));
        Assert.IsType<Obstacle.RefundSince>(ReturnUndo.Of(refunded, ReturnUndo.Last(refunded)!, Friday13March).Fault);
    }

    // The buffer has paid with the rounding since.
    [Fact]
    public void Of_WhatHasGoneOn_NamesIt()
    {
        Book returned = Returned(Spent);
        Book spent = returned.Spend(null, returned.Has("account/buffer").ToDecimal(), Friday13March);

        Assert.IsType<Obstacle.GoneOn>(ReturnUndo.InTheWay(spent, ReturnUndo.Last(spent)!));
    }

    // Notes that a payday put into pots are that payday's to give back.
    [Fact]
    public void Last_OfNotesThatAPaydayUsedAgain_IsNone()
    {
        Book counted = Closed.Spend("food", 50, Sunday8).Count(new(2026, 3, 12), "food", ByNotes((50, 1), (10, 1)));
        Book after = Closing.Of(Routine.Plan(counted, new RoutineDraft(Friday20) { UsesOwedBack = true }).Value!).Value!;

        Assert.Single(after.Weeks.Returns);
        Assert.Null(ReturnUndo.Last(after));
        Assert.Equal(new BookEntry.Payday(Friday20), Assert.IsType<Obstacle.CashInPots>(Purchasing.InTheWay(after, 1)).First);
        Assert.Equal(new BookEntry.Return(1, Friday13March), Assert.IsType<Obstacle.CashAtBank>(Purchasing.InTheWay(Returned(Spent), 2)).First);
    }

    private static Book Returned(Book book) => ReturnPlan.Of(book, ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;

    private static Book Refund(Book book, string pot, decimal amount) =>
        CardRefunds.Enter(book, new PurchaseEntry(Friday13March, new PotId(pot), Usd(amount), "shop")).Value!;
}
