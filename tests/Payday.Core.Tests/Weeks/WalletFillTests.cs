using NodaTime;
using Payday.Core.Households;
using Payday.Core.Weeks;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Routines.Homes;
using static Payday.Core.Tests.Weeks.WeekHomes;

namespace Payday.Core.Tests.Weeks;

public class WalletFillTests
{
    private static readonly FillKey First = new(Friday6March, Friday6March, "food");
    private static readonly FillKey Second = new(Friday6March, Friday13March, "food");

    [Fact]
    public void Waiting_AfterClosing_AreTheFirstWeeksParts()
    {
        Assert.Equal(["food", "fares"], WalletFills.Waiting(Closed, Friday6March).Select(part => part.Pot.Id));
        Assert.Equal([Friday13March, Friday13March], WalletFills.Waiting(Closed, Friday13March).Select(part => part.Key.Day));
        Assert.Equal(Notes((50, 1), (10, 1)), WalletFills.Waiting(Closed, Friday6March)[0].Notes);
    }

    // One answer for all that speak of it: the status, the list, and marking them all.
    [Theory]
    [InlineData(6, 2)]
    [InlineData(12, 2)]
    [InlineData(13, 2)]
    [InlineData(19, 2)]
    [InlineData(20, 0)]
    public void Waiting_OnADay_IsWhatTheStatusSaysAndWhatMarkingAllMarks(int day, int waiting)
    {
        LocalDate date = new(2026, 3, day);
        Assert.Equal(
            (waiting, waiting, waiting),
            (WalletFills.Waiting(Closed, date).Length, BookStatus.Of(Closed, date).FillsWaiting, WalletFills.FillAll(Closed, date).Value!.Weeks.Fills.Length));
        Assert.All(WalletFills.Waiting(Closed, date), part => Assert.False(WalletFills.IsOver(House, part, date)));
    }

    [Fact]
    public void Mark_Done_PutsItInTheWallet()
    {
        Book book = WalletFills.Mark(Closed, First, FillState.Done, Friday6March).Value!;

        Assert.Equal((Usd(60), Usd(60)), (book.Has("cash/wallet:food"), book.Has("cash/pot:food")));
        Assert.Equal("The fill of Food for 6 Mar 2026 is marked done already.", WalletFills.Mark(book, First, FillState.Done, Friday6March).Fault);
    }

    [Fact]
    public void Mark_Skipped_StaysAtHomeAndIsNotExpected()
    {
        Book book = WalletFills.Mark(Closed, First, FillState.Skipped, Friday6March).Value!;

        Assert.Equal(Usd(0), book.Row(new(2026, 3, 12), "food", new CountEntry(Usd(0))).Expected);
        Assert.Equal(Usd(120), book.Has("cash/pot:food"));
        Book later = WalletFills.Mark(book, First, FillState.Done, new(2026, 3, 15)).Value!;
        Assert.Equal(Usd(120), later.Row(new(2026, 3, 19), "food", new CountEntry(Usd(0))).Expected);
    }

    [Fact]
    public void Mark_DoneThenSkipped_TakesItOutAgainUntilItIsCounted()
    {
        Book done = WalletFills.Mark(Closed, First, FillState.Done, Friday6March).Value!;

        Assert.Equal(Usd(0), WalletFills.Mark(done, First, FillState.Skipped, Friday6March).Value!.Has("cash/wallet:food"));
        Assert.Equal(
            "Food was counted on 12 Mar 2026 with this fill in it, so it can't be skipped any more.",
            WalletFills.Mark(done.Count(new(2026, 3, 12), "food", 60), First, FillState.Skipped, Friday13March).Fault);
        Assert.Equal(
            "Food has less than 60.00 in the wallet by now, so this fill can't be skipped any more.",
            WalletFills.Mark(done.Spend("food", 20, Friday6March), First, FillState.Skipped, Friday6March).Fault);
    }

    [Fact]
    public void Mark_NoSuchFill_IsRefused() => Assert.Equal(
        "No closed payday has a fill of 20 Mar 2026 for that pot.",
        WalletFills.Mark(Closed, Second with { Week = new(2026, 3, 20) }, FillState.Done, Friday13March).Fault);
}
