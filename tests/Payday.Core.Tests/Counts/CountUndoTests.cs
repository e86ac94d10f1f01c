using NodaTime;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.ClosedPaydays;
using Payday.Core.Counts;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Counts;

public class CountUndoTests
{
    private static readonly LocalDate Thursday12 = new(2026, 3, 12);

    [Fact]
    public void Of_LastCounts_TakesBackAllThatWereConfirmedTogether()
    {
        Book first = Closed.Count(Thursday12, "boots", 30);
        CountDraft draft = new CountDraft(Thursday12).With(new PotId("food"), new CountEntry(Usd(35))).With(new PotId("fares"), new CountEntry(Usd(5)) { Missing = Usd(2), DifferenceName = "odd" });
        Book counted = CountPlan.Of(first, draft).Confirm().Value!;

        Assert.Equal(["food", "fares"], CountUndo.Last(counted).Select(count => count.PotId.Text));
        Book back = CountUndo.Of(counted, CountUndo.Last(counted), Friday13March).Value!;

        Assert.Equal(Answers.Of(first, Friday6March, new(2026, 3, 31)), Answers.Of(back, Friday6March, new(2026, 3, 31)));
        Assert.Equal(Thursday12, back.Weeks.Draft!.Date);
        Assert.Equal(draft.Entries.Keys, back.Weeks.Draft.Entries.Keys);
        Assert.Equal((Usd(5), Usd(2), "odd"), (back.Weeks.Draft.Entries[new PotId("fares")].Left, back.Weeks.Draft.Entries[new PotId("fares")].Missing, back.Weeks.Draft.Entries[new PotId("fares")].DifferenceName));
        Assert.Equal(counted.Weeks.Counts[1].Spent, CountPlan.Of(back, back.Weeks.Draft).Confirm().Value!.Weeks.Counts[^2].Spent);
    }

    // The fill that the count took as done the purchase after it would have taken up itself.
    [Fact]
    public void Of_WithAPurchaseSince_LeavesThatTheFillsItNeeds()
    {
        Book counted = Closed.Count(Thursday12, "food", 60).Spend("food", 5, Thursday12);
        Book back = CountUndo.Of(counted, CountUndo.Last(counted), Friday13March).Value!;

        Assert.Equal(Closed.Spend("food", 5, Thursday12).Ledger.Balances.All, back.Ledger.Balances.All);
        Assert.Equal(Friday6March, Assert.Single(back.Weeks.Fills).Key.Day);
        Assert.Empty(Core.CardPurchases.Purchasing.Undo(back, 1, Friday13March).Value!.Weeks.Fills);
    }

    [Fact]
    public void EntryOf_ACount_IsWhatWasEntered()
    {
        CountEntry missing = new(Usd(20)) { Notes = Notes((20, 1)), Missing = Usd(5), DifferenceName = "odd", Then = new CountThen(MoveTarget.Buffer) };
        CountEntry found = new(Usd(65)) { IsFind = true, DifferenceName = "coat", Then = CountThen.Stays };

        Assert.Equal(missing, CountUndo.EntryOf(Closed.Count(Thursday12, "food", missing).Weeks.Counts[0]));
        Assert.Equal(found, CountUndo.EntryOf(Closed.Count(Thursday12, "food", found).Weeks.Counts[0]));
    }

    // Of counts for two days those of the draft's day are in it again; without one it is begun for the later day.
    [Fact]
    public void Of_CountsOfSeveralDays_BeginsTheDraftOfOne()
    {
        Book both = Closed.Count(Thursday12, "food", 35).Count(Friday13March, "boots", 30);
        Book back = CountUndo.Of(both, [.. both.Weeks.Counts], Friday13March).Value!;

        Assert.Equal((Friday13March, "boots"), (back.Weeks.Draft!.Date, Assert.Single(back.Weeks.Draft.Entries.Keys).Text));
        Assert.Equal("count taken back", back.Ledger.Movements[^1].Reason);
        Assert.All(back.Weeks.Counts, count => Assert.True(count.Undone));
        Assert.Empty(CountUndo.Last(back));
    }

    [Fact]
    public void Of_AnotherCountBegun_KeepsThatDraft()
    {
        Book counted = Closed.Count(Thursday12, "food", 35);
        CountDraft other = new CountDraft(Friday13March).With(new PotId("boots"), new CountEntry(Usd(30)));
        Book begun = counted with { Weeks = counted.Weeks with { Draft = other } };

        Assert.Same(other, CountUndo.Of(begun, CountUndo.Last(begun), Friday13March).Value!.Weeks.Draft);
    }

    [Fact]
    public void Of_DifferenceClearedUp_IsInTheWayUntilThatIsTakenBack()
    {
        Book counted = Closed.Count(Thursday12, "food", new CountEntry(Usd(35)) { Missing = Usd(5), DifferenceName = "odd" });
        Book settled = Differences.Settle(counted, 1, DifferenceEnd.Explained, Friday13March).Value!;

        Assert.Equal(
            (nameof(BookEntry.Difference), "The difference of the count of Food on 12 Mar 2026 was cleared up since; take that back first."),
            (CountUndo.InTheWay(settled, CountUndo.Last(settled))!.First!.GetType().Name, CountUndo.Of(settled, CountUndo.Last(settled), Friday13March).Fault.Said()));
        Book open = Differences.Reopen(settled, Differences.LastSettled(settled)!, Friday13March).Value!;
        Assert.Equal(Usd(5), Assert.Single(Differences.Open(open)).Difference);
        Assert.True(CountUndo.Of(open, CountUndo.Last(open), Friday13March).Ok);
    }

    [Fact]
    public void Of_MovedOnAndReturned_IsInTheWayUntilTheReturnIsTakenBack()
    {
        Book counted = Closed.Count(Thursday12, "food", new CountEntry(Usd(25)) { Then = new CountThen(MoveTarget.Buffer) });
        Book returned = ReturnPlan.Of(counted, ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;

        Assert.Equal(
            "The cash for what the count of Food on 12 Mar 2026 sent elsewhere was taken to the bank on 13 Mar 2026; take that cash return back first.",
            CountUndo.Of(returned, CountUndo.Last(returned), Friday13March).Fault.Said());
        Book back = ReturnUndo.Of(returned, ReturnUndo.Last(returned)!, Friday13March).Value!;
        Assert.True(CountUndo.Of(back, CountUndo.Last(back), Friday13March).Ok);
    }

    [Fact]
    public void Of_MovedOnToAPotThatWasCountedSince_NamesThatCount()
    {
        Book counted = Closed.Count(Thursday12, "food", new CountEntry(Usd(25)) { Then = new CountThen(MoveTarget.Pot(new PotId("boots"))) }).Count(Friday13March, "boots", 55);

        Assert.Equal(
            "Boots was counted on 13 Mar 2026 with the count of Food on 12 Mar 2026 in it; take that count back first.",
            CountUndo.Of(counted, [counted.Weeks.LastCountOf(new PotId("food"))!], Friday13March).Fault.Said());
    }

    // A count that finds all as it should be writes no movement, and has seen the payday all the same.
    [Fact]
    public void Reopening_CountedSince_NamesTheCount()
    {
        Book counted = Closed.Count(Thursday12, "boots", 30);

        Assert.Equal(
            "The payday of 6 Mar 2026 can't be reopened: the count of Boots on 12 Mar 2026 was written since and may depend on it; take that back first.",
            Reopening.Of(counted, Friday13March).Fault.Said());
        Assert.True(Reopening.Of(CountUndo.Of(counted, CountUndo.Last(counted), Friday13March).Value!, Friday13March).Ok);
    }

    [Fact]
    public void Reopening_ClosedAgainLater_FillsAPotOnce()
    {
        Book again = Close(Reopening.Of(Closed, new(2026, 3, 20)).Value!, Friday6March);
        CountRow row = again.Row(Thursday12, "boots", new CountEntry(Usd(30)));

        Assert.Equal((Usd(30), Usd(0)), (row.Filled, row.Spent));
        Assert.Null(row.Fault);
    }

    [Fact]
    public void Undoing_AMovementOfACount_NamesTheCount()
    {
        Book counted = Closed.Count(Thursday12, "food", 35);
        long spent = counted.Weeks.Counts[0].LastMovement;

        Assert.Equal($"Ledger line {spent} belongs to the count of Food on 12 Mar 2026, so it isn't undone alone; take that back as a whole.", Undoing.Of(counted, spent, Friday13March, "wrong").Fault.Said());
    }
}
