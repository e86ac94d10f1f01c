using Payday.Core.Books;
using Payday.Core.DuePayments;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.DuePayments.RentAndCard;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.DuePayments;

/// <summary>What an undone payment would change of what was reckoned with it since. Rule: the project's design, sections 4 and 5.9.</summary>
public class PaymentUndoTests
{
    // What was freed went on with the payday, though another part of the same payment only paid.
    [Fact]
    public void Undo_APartPaidAndTheRestFreed_LeadsToThePaydayThatPlacedIt()
    {
        Book freed = Pay(March, new DueEntry(Rent, Friday13March, Usd(100), FreesRest: true));

        Assert.Null(Paying.InTheWay(freed, 1));
        Assert.Equal(new BookEntry.Payday(Second), Assert.IsType<Obstacle.GoneOn>(Paying.InTheWay(Close(freed, Second), 1)).To);
    }

    // April's minimum, ticked on 16 March, charged March's interest with it; April's own was charged on that.
    [Fact]
    public void Undo_WhatChargedInterestThatLaterInterestIsOn_LeadsToIt()
    {
        Book ticked = Pay(March, new DueEntry(AprilCard, new(2026, 3, 16)));
        Book charged = Close(Close(Close(ticked, Second), Third), new(2026, 4, 17));

        Assert.Null(Paying.InTheWay(ticked, 1));
        Assert.Equal(new BookEntry.Payday(new(2026, 4, 17)), Assert.IsType<Obstacle.GoneOn>(Paying.InTheWay(charged, 1)).To);
    }

    // Its own interest is in nobody's way.
    [Fact]
    public void Undo_AWaivedMinimumThatWroteInterestAlone_LeavesAllAsItWas()
    {
        Book waived = Pay(March, new DueEntry(AprilCard, new(2026, 3, 16), Usd(0), FreesRest: true));
        Assert.Equal(March.Ledger.Movements.Count + 1, waived.Ledger.Movements.Count);

        Book undone = Paying.Undo(waived, 1, new(2026, 3, 17)).Value!;
        Assert.Equal(March.Ledger.Balances.All, undone.Ledger.Balances.All.Where(end => !end.Value.IsZero));
        Assert.Equal(Lines(March), Lines(undone));
    }
}
