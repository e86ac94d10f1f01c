using NodaTime;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Counts;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Status;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Fills;

public class WalletFillTests
{
    private static readonly FillKey First = new(Friday6March, Friday6March, new PotId("food"));
    private static readonly FillKey Second = new(Friday6March, Friday13March, new PotId("food"));

    [Fact]
    public void Waiting_AfterClosing_AreTheFirstWeeksParts()
    {
        Assert.Equal(["food", "fares"], WalletFills.Waiting(Closed, Friday6March).Select(part => part.Pot.Id.Text));
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
    public void Waiting_AfterACardPurchase_StillHasTheFill()
    {
        Book bought = Closed.Spend("food", 18, Friday6March);

        FillPart food = WalletFills.Waiting(bought, Friday6March).Single(part => part.Pot.Id.Text == "food");
        Assert.Equal((Usd(60), Usd(40), true), (food.Amount, food.Moves, food.IsAssumed));
        Assert.Equal(2, BookStatus.Of(bought, Friday6March).FillsWaiting);

        Book filled = WalletFills.Mark(bought, First, FillState.Done, Friday6March).Value!;
        Assert.Equal(["fares"], WalletFills.Waiting(filled, Friday6March).Select(part => part.Pot.Id.Text));
        Assert.Equal((bought.Has("cash/wallet:food"), Usd(40)), (filled.Has("cash/wallet:food"), filled.Has("cash/wallet:food")));
        Assert.Equal("The fill of Food for 6 Mar 2026 is marked done already.", WalletFills.Mark(filled, First, FillState.Done, Friday6March).Fault.Said());

        Book waits = WalletFills.Unmark(filled, First, Friday6March).Value!;
        Assert.Equal(2, WalletFills.Waiting(waits, Friday6March).Length);
        Assert.Equal(Usd(0), Purchasing.Undo(waits, 1, Friday6March).Value!.Has("cash/wallet:food"));
    }

    [Fact]
    public void Waiting_AfterACardPurchaseAndACount_HasTheFillNoMore()
    {
        Book bought = Closed.Spend("food", 18, Friday6March);

        Assert.Equal(2, WalletFills.Waiting(bought, new(2026, 3, 12)).Length);
        Assert.Equal(["fares"], WalletFills.Waiting(bought.Count(new(2026, 3, 12), "food", 10), new(2026, 3, 12)).Select(part => part.Pot.Id.Text));
    }

    // 120 of food are taken up by a purchase in the second week, of which 50 are left: the first fill has them, the second nothing.
    // Those of another pot keep theirs, and one that a person says is done changes no other.
    [Fact]
    public void Of_TwoWeeksThatAPurchaseTookUp_ShareWhatIsLeftInOrder()
    {
        Book bought = Closed.Spend("food", 70, Friday13March).Spend("fares", 10, Friday13March);
        Assert.Equal(
            [("food", 6, 50m), ("fares", 6, 20m), ("food", 13, 0m), ("fares", 13, 10m)],
            FillPart.Of(bought).Where(part => part.IsAssumed).Select(part => (part.Pot.Id.Text, part.Key.Day.Day, part.Moves.MinorUnits / 100m)));
        Assert.Equal(["fares"], WalletFills.Waiting(bought, Friday13March).Select(part => part.Pot.Id.Text));

        Book said = WalletFills.Mark(bought, Second, FillState.Done, Friday13March).Value!;
        Assert.Equal(bought.Weeks.Fills.Select(fill => fill.Key), said.Weeks.Fills.Select(fill => fill.Key));
        Assert.Equal([("food", 6), ("fares", 6), ("fares", 13)], FillPart.Of(said).Where(part => part.IsAssumed).Select(part => (part.Pot.Id.Text, part.Key.Day.Day)));
    }

    // A count of the fill's own day has seen it.
    [Theory]
    [InlineData(5, true)]
    [InlineData(6, false)]
    public void Waiting_AfterACardPurchase_EndsWithACountOfItsDay(int day, bool waits)
    {
        Book counted = Close(Book.Begin(House with { Start = new(2026, 3, 1) }), Friday6March).Spend("food", 18, Friday6March).Count(new(2026, 3, day), "food", day == 5 ? 0 : 40);

        Assert.Equal(waits, WalletFills.Waiting(counted, Friday6March).Any(part => part.Pot.Id.Text == "food"));
    }

    [Fact]
    public void Undo_OfAPurchaseWhoseFillWasMarkedSince_LeavesTheFillDone()
    {
        Book filled = WalletFills.Mark(Closed.Spend("food", 18, Friday6March), First, FillState.Done, Friday6March).Value!;
        Book undone = Purchasing.Undo(filled, 1, Friday6March).Value!;

        Assert.Equal(Usd(60), undone.Has("cash/wallet:food"));
        Assert.Single(WalletFills.Waiting(undone, Friday6March));
        Book waits = WalletFills.Unmark(undone, First, Friday6March).Value!;
        Assert.Equal((Usd(0), 2), (waits.Has("cash/wallet:food"), WalletFills.Waiting(waits, Friday6March).Length));
    }

    [Fact]
    public void Mark_Done_PutsItInTheWallet()
    {
        Book book = WalletFills.Mark(Closed, First, FillState.Done, Friday6March).Value!;

        Assert.Equal((Usd(60), Usd(60)), (book.Has("cash/wallet:food"), book.Has("cash/pot:food")));
        Assert.Equal("The fill of Food for 6 Mar 2026 is marked done already.", WalletFills.Mark(book, First, FillState.Done, Friday6March).Fault.Said());
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
            "Food was counted on 12 Mar 2026 with the fill of Food for 6 Mar 2026 in it; take that count back first.",
            WalletFills.Mark(done.Count(new(2026, 3, 12), "food", 60), First, FillState.Skipped, Friday13March).Fault.Said());
        Assert.Equal(
            "The money of the fill of Food for 6 Mar 2026 has gone on since, to card purchase 1; take that back first.",
            WalletFills.Mark(done.Spend("food", 20, Friday6March), First, FillState.Skipped, Friday6March).Fault.Said());
    }

    [Fact]
    public void Unmark_IsAsBeforeTheMark()
    {
        Book done = WalletFills.Mark(Closed, First, FillState.Done, Friday6March).Value!;
        Book waits = WalletFills.Unmark(done, First, Friday13March).Value!;
        Assert.Equal((Usd(0), Usd(120), 0), (waits.Has("cash/wallet:food"), waits.Has("cash/pot:food"), waits.Weeks.Fills.Length));
        Assert.Equal("The fill of Food for 6 Mar 2026 isn't marked, so there is nothing to take back.", WalletFills.Unmark(waits, First, Friday13March).Fault.Said());

        Book skipped = WalletFills.Mark(done, First, FillState.Skipped, Friday13March).Value!;
        Book again = WalletFills.Unmark(skipped, First, Friday13March).Value!;
        Assert.Equal((Usd(60), FillState.Done, Friday6March), (again.Has("cash/wallet:food"), again.Weeks.Fills[0].State, again.Weeks.Fills[0].Date));
    }

    [Fact]
    public void Unmark_SeenByACount_IsRefused()
    {
        Book skipped = WalletFills.Mark(Closed, First, FillState.Skipped, Friday6March).Value!.Count(new(2026, 3, 12), "food", new CountEntry(Usd(5)) { IsFind = true, DifferenceName = "odd" });
        Assert.Equal("Food was counted on 12 Mar 2026 with the fill of Food for 6 Mar 2026 in it; take that count back first.", WalletFills.Unmark(skipped, First, Friday13March).Fault.Said());
    }

    [Fact]
    public void LastMarked_AreThoseOfTheLastFillDay()
    {
        Book book = WalletFills.FillAll(Closed, Friday13March).Value!;
        Assert.Equal([("food", Friday13March), ("fares", Friday13March)], WalletFills.LastMarked(book).Select(fill => (fill.Key.PotId.Text, fill.Key.Day)));
        Assert.Equal(["fares"], WalletFills.LastMarked(book, new HashSet<PotId> { new("fares") }).Select(fill => fill.Key.PotId.Text));
    }

    // A purchase of 110 takes the 60 in the wallet and 50 of next week's 60 at home.
    [Fact]
    public void Moves_AfterAPurchaseLargerThanTheWallet_IsWhatIsLeftAtHome()
    {
        Book book = WalletFills.Mark(Closed, First, FillState.Done, Friday6March).Value!.Spend("food", 110, new(2026, 3, 8));
        FillPart part = WalletFills.Waiting(book, Friday13March).First(part => part.Key == Second);
        Assert.Equal((Usd(60), Usd(10)), (part.Amount, part.Moves));

        Book filled = WalletFills.Mark(book, Second, FillState.Done, Friday13March).Value!;
        Assert.Equal((Usd(10), Usd(10)), (filled.Has("cash/wallet:food"), FillPart.Of(filled).Single(part => part.Key == Second).Moves));
    }

    // What is left at home goes to the earliest fill that waits, whichever is marked first.
    [Fact]
    public void Moves_OfSeveralThatWait_IsForTheEarliest()
    {
        Ledger less = Closed.Ledger.Add([new Movement(
            0, Friday6March, LedgerEnd.InCash(Purpose.Pot(new PotId("food"))), LedgerEnd.SpentFrom(new PotId("food")), Usd(80), "lost")]);
        Book book = WalletFills.Mark(Closed with { Ledger = less }, Second, FillState.Done, Friday13March).Value!;

        Assert.Equal(Usd(0), book.Has("cash/wallet:food"));
        Assert.Equal([Usd(40), Usd(0)], FillPart.Of(book).Where(part => part.Pot.Id == new PotId("food")).Select(part => part.Moves));
    }

    [Fact]
    public void Moves_NothingLeft_WaitsNoMore()
    {
        Book book = WalletFills.Mark(Closed, First, FillState.Done, Friday6March).Value!.Spend("food", 120, new(2026, 3, 8));
        Assert.DoesNotContain(WalletFills.Waiting(book, Friday13March), part => part.Key == Second);
    }

    // Closed a day ahead: the cash is at home from the payday on.
    [Fact]
    public void Mark_BeforeThePayday_MovesAllTheSame()
    {
        Book book = WalletFills.Mark(Closed, First, FillState.Done, new(2026, 3, 5)).Value!;
        Assert.Equal((Usd(60), Friday6March), (book.Has("cash/wallet:food"), book.Weeks.Fills[0].Date));
    }

    // Its own day where that has been; a fill that is made ahead is of today.
    [Theory]
    [InlineData(6, 6)]
    [InlineData(12, 12)]
    [InlineData(13, 13)]
    [InlineData(16, 13)]
    public void DoneOn_ADay_IsItsOwnOrToday(int today, int done) => Assert.Equal(done, WalletFills.DoneOn(Second, new(2026, 3, today)).Day);

    [Fact]
    public void LastMarked_OfTwoFillDays_AreThoseOfTheLater()
    {
        Book both = WalletFills.FillAll(WalletFills.FillAll(Closed, Friday6March).Value!, Friday13March).Value!;
        Assert.All(WalletFills.LastMarked(both), fill => Assert.Equal(Friday13March, fill.Key.Day));
        Assert.Equal(2, WalletFills.LastMarked(both).Length);
    }

    // The week of the 6th was counted on the 12th without it: what goes in afterwards is in the next count.
    [Fact]
    public void Mark_OfAWeekThatWasCounted_IsOfTheDayOfTheCount()
    {
        Book counted = WalletFills.Mark(Closed, First, FillState.Skipped, Friday6March).Value!.Count(new(2026, 3, 12), "food", 0);
        Book done = WalletFills.Mark(counted, First, FillState.Done, new(2026, 3, 8)).Value!;

        Assert.Equal((new LocalDate(2026, 3, 12), Usd(60)), (done.Weeks.Fills[0].Date, done.Weeks.Fills[0].Amount));
        Assert.Equal(counted.Weeks.Counts, done.Weeks.Counts);
        Assert.Equal((Usd(0), Usd(120)), done.Row(new(2026, 3, 19), "food", new CountEntry(Usd(0))) is var next ? (next.Before, next.Filled) : default);
    }

    [Fact]
    public void Unmark_LeavesTheOthersAndSaysWhatItDid()
    {
        Book both = WalletFills.FillAll(Closed, Friday6March).Value!;
        Book back = WalletFills.Unmark(both, First, Friday13March).Value!;

        Assert.Equal(["fares"], back.Weeks.Fills.Select(fill => fill.Key.PotId.Text));
        Assert.Equal("fill taken back", back.Ledger.Movements[^1].Reason);
        Assert.Equal("fill skipped", WalletFills.Mark(both, First, FillState.Skipped, Friday13March).Value!.Ledger.Movements[^1].Reason);
        Book skipped = WalletFills.Mark(Closed, First, FillState.Skipped, Friday6March).Value!;
        Assert.Equal(FillState.Skipped, WalletFills.Unmark(WalletFills.Mark(skipped, First, FillState.Done, Friday13March).Value!, First, Friday13March).Value!.Weeks.Fills[0].State);
    }

    // Both weeks were in the wallet, then the first was taken out again: its 60 are at home, and once 20 of them are spent it can't be as it was.
    [Theory]
    [InlineData(60, true)]
    [InlineData(80, false)]
    public void Unmark_OfASkip_NeedsWhatTheFillWas(int bought, bool goes)
    {
        Book both = WalletFills.FillAll(WalletFills.FillAll(Closed, Friday6March).Value!, Friday13March).Value!;
        Book skipped = WalletFills.Mark(both, First, FillState.Skipped, Friday13March).Value!.Spend("food", bought, new(2026, 3, 14));

        Assert.Equal(goes ? null : new FillFault.TooLittleAtHome("Food", Usd(60)), WalletFills.Unmark(skipped, First, new(2026, 3, 14)).Fault);
    }

    // What the count of the fill's own day left out it has seen.
    [Fact]
    public void InTheWay_OfASkipThatIsCountedThatDay_IsTheCount()
    {
        Book skipped = WalletFills.Mark(Closed, First, FillState.Skipped, Friday6March).Value!;
        Assert.IsType<Obstacle.Counted>(WalletFills.InTheWay(skipped.Count(Friday6March, "food", 0), First));

        Book later = WalletFills.Mark(Closed, Second, FillState.Skipped, Friday13March).Value!.Count(new(2026, 3, 12), "food", 10);
        Assert.Null(WalletFills.InTheWay(later, Second));
    }

    [Fact]
    public void MarkAndUnmark_OfAPotThatIsGone_AreRefused()
    {
        Book gone = WalletFills.FillAll(Closed, Friday6March).Value! with { Household = House with { Pots = House.Pots.RemoveAt(0) } };

        Assert.Equal(new FillFault.NoSuchFill(Friday6March), WalletFills.Mark(gone, First, FillState.Skipped, Friday6March).Fault);
        Assert.IsType<Obstacle.NotMarked>(WalletFills.InTheWay(gone, First));
    }

    [Fact]
    public void Mark_NoSuchFill_IsRefused() => Assert.Equal(
        "No closed payday has a fill of 20 Mar 2026 for that pot.",
        WalletFills.Mark(Closed, Second with { Week = new(2026, 3, 20) }, FillState.Done, Friday13March).Fault.Said());
}
