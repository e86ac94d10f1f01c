using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.CashReturns;
using Payday.Core.ClosedPaydays;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.NotesAtHome;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.CashReturns;

public class ReturnTests
{
    private static readonly LocalDate Thursday12 = new(2026, 3, 12);
    private static readonly LocalDate Friday20 = new(2026, 3, 20);

    [Fact]
    public void Of_CountedByNotes_PullsFromThem()
    {
        Book book = Closed.Spend("food", 12, new(2026, 3, 8)).Count(Thursday12, "food", ByNotes((20, 1), (10, 2), (5, 1)));

        ReturnLine line = ReturnPlan.Of(book, ReturnDraft.AsPlanned).Lines.Single();

        Assert.Equal((ReturnWay.Pull, Usd(15)), (line.Way, line.Owes));
        Assert.Equal(Notes((10, 1), (5, 1)), line.Notes);
    }

    [Fact]
    public void Confirm_PutsTheRoundingInTheBuffer()
    {
        Book book = Closed.Spend("food", 12.34m, new(2026, 3, 8));
        Book back = ReturnPlan.Of(book, ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;

        Assert.Equal((Usd(0), Usd(0), Usd(502.66m)), (back.Has("cash/owed-back:food"), back.Has("account/owed-back:food"), back.Has("account/buffer")));
        Assert.Equal(Usd(15), Assert.Single(back.Weeks.Returns).Pots.Single().Amount);
        Assert.Empty(OwedItems.Of(back));
        Assert.Equal("No pot has cash to pay back.", ReturnPlan.Of(back, ReturnDraft.AsPlanned).Confirm(Friday20).Fault.Said());
        AssertSound(back);
    }

    [Fact]
    public void Of_NotesThatDontMakeIt_SwapsWithAnotherPot()
    {
        Book book = Closed.Spend("food", 12, new(2026, 3, 8))
            .Count(Thursday12, "food", ByNotes((20, 2)))
            .Count(Thursday12, "fares", ByNotes((5, 4)));

        ReturnPlan plan = ReturnPlan.Of(book, ReturnDraft.AsPlanned);

        NoteSwap swap = Assert.Single(plan.Swaps);
        Assert.Equal(("food", "fares"), (swap.PotId.Text, swap.With?.Text));
        Assert.Equal(Notes((20, 1)), swap.Gives);
        Assert.Equal(Notes((5, 4)), swap.Gets);
        Assert.Equal(Notes((5, 3)), plan.SlipNotes);
        PotNotes after = PotNotes.Of(plan.Confirm(Friday13March).Value!);
        Assert.Equal(Notes((20, 1), (5, 1)), after.InWallet(new PotId("food")));
        Assert.Equal(Notes((20, 1)), after.InWallet(new PotId("fares")));
    }

    // Four fives lie loose and four in fares: the loose ones are nobody's, so they go first.
    [Fact]
    public void Of_NotesThatDontMakeIt_SwapsWithLooseOnesFirst()
    {
        Book begun = Book.Begin(House with { Opening = House.Opening with { LooseNotes = Notes((5, 4)) } });
        Book book = Closing.Of(Routine.Plan(begun, new RoutineDraft(Friday6March) { LeavesNotesAtHome = true }).Value!).Value!
            .Spend("food", 12, new(2026, 3, 8))
            .Count(Thursday12, "food", ByNotes((20, 2)))
            .Count(Thursday12, "fares", ByNotes((5, 4)));

        NoteSwap swap = Assert.Single(ReturnPlan.Of(book, ReturnDraft.AsPlanned).Swaps);
        Assert.Equal((null, Notes((20, 1)), Notes((5, 4))), (swap.With, swap.Gives, swap.Gets));
    }

    // What a pot gives by hand may be any of its notes, so none of them are swapped away from it.
    [Fact]
    public void Of_NotesPickedByHand_AreNotSwapped()
    {
        Book book = Closed.Spend("food", 12, new(2026, 3, 8)).Spend("boots", 5, new(2026, 3, 8))
            .Count(Thursday12, "food", ByNotes((20, 2)))
            .Count(Thursday12, "boots", ByNotes((5, 6)));

        Assert.Equal(ReturnWay.Swap, ReturnPlan.Of(book, ReturnDraft.AsPlanned).Lines[0].Way);
        ReturnDraft picked = ReturnDraft.AsPlanned with { Picked = ReturnDraft.AsPlanned.Picked.Add(new PotId("boots"), Notes((5, 1))) };
        Assert.Equal([ReturnWay.NoWay, ReturnWay.Picked], ReturnPlan.Of(book, picked).Lines.Select(line => line.Way));
    }

    [Fact]
    public void Of_NoSwap_StaysOwedAndSaysSo()
    {
        Book book = Closed.Spend("food", 12, new(2026, 3, 8)).Count(Thursday12, "food", ByNotes((20, 2))).Count(Thursday12, "fares", 0);
        ReturnPlan plan = ReturnPlan.Of(book, ReturnDraft.AsPlanned);

        Assert.Equal((ReturnWay.NoWay, false, Usd(0)), (plan.Lines[0].Way, plan.Lines[0].Goes, plan.Total));
        Assert.Equal("No notes of Food, nor a swap with another pot, make 15.00: leave it for later, or bring change.", Payday.Texts.ReturnTexts.Advice(plan.Lines[0], NumberStyle.Plain));
        Assert.Equal("Nothing of what is to pay back goes to the bank this time.", plan.Confirm(Friday13March).Fault.Said());
    }

    [Fact]
    public void Of_UnknownNotes_AreLeftToThePerson()
    {
        Book book = Closed.Spend("food", 12, new(2026, 3, 8)).Count(Thursday12, "food", 20);
        ReturnPlan plan = ReturnPlan.Of(book, ReturnDraft.AsPlanned);

        Assert.Equal((ReturnWay.NotesUnknown, Usd(15)), (plan.Lines[0].Way, plan.Unlisted));
        ReturnDraft picked = ReturnDraft.AsPlanned with { Picked = ReturnDraft.AsPlanned.Picked.Add(new PotId("food"), Notes((10, 1), (5, 1))) };
        Assert.Equal(Usd(0), ReturnPlan.Of(book, picked).Unlisted);
        Assert.Equal(Notes((10, 1), (5, 1)), ReturnPlan.Of(book, picked).SlipNotes);
        Assert.Equal(Usd(0), ReturnPlan.Of(book, picked).Confirm(Friday13March).Value!.Has("cash/owed-back:food"));
        ReturnDraft wrong = picked with { Picked = picked.Picked.SetItem(new PotId("food"), Notes((20, 1))) };
        Assert.Equal("The notes for Food come to 20.00, but it has 15.00 to pay back.", ReturnPlan.Of(book, wrong).Confirm(Friday13March).Fault.Said());
    }

    [Fact]
    public void Confirm_LeftOwedOrTooEarly_IsNotReturned()
    {
        Book book = Closed.Spend("food", 12, new(2026, 3, 8)).Spend("fares", 5, new(2026, 3, 9));
        ReturnDraft draft = ReturnDraft.AsPlanned with { Leaves = ReturnDraft.AsPlanned.Leaves.Add(new PotId("food")) };

        Assert.Equal("Fares did not have all of it to pay back yet on 8 Mar 2026; give a later day.", ReturnPlan.Of(book, draft).Confirm(new(2026, 3, 8)).Fault.Said());
        Book back = ReturnPlan.Of(book, draft).Confirm(Thursday12).Value!;
        Assert.Equal((Usd(15), Usd(0)), (back.Has("cash/owed-back:food"), back.Has("cash/owed-back:fares")));
    }

    [Fact]
    public void PotNotes_FillsAndSpending_AreKnownUntilSpent()
    {
        Book filled = WalletFills.Mark(Closed, new FillKey(Friday6March, Friday6March, new PotId("food")), FillState.Done, Friday6March).Value!;

        Assert.Equal(Notes((50, 1), (10, 1)), PotNotes.Of(filled).InWallet(new PotId("food")));
        Assert.Equal(Notes((50, 1), (10, 1)), PotNotes.Of(filled).AtHome(new PotId("food")));
        Assert.Equal(Core.Cash.Notes.None, PotNotes.Of(Closed).InWallet(new PotId("food")));
        Assert.Null(PotNotes.Of(filled.Count(Thursday12, "food", 30)).InWallet(new PotId("food")));
        Assert.Equal(Notes((50, 1), (10, 1)), PotNotes.Of(filled.Count(Thursday12, "food", 60)).InWallet(new PotId("food")));
        Assert.Equal(Core.Cash.Notes.None, PotNotes.Of(filled.Count(Thursday12, "food", 0)).InWallet(new PotId("food")));
    }

    [Fact]
    public void Offer_OwedBackNotes_SaveTheWayToTheBank()
    {
        Book book = Closed.Spend("food", 50, new(2026, 3, 8)).Count(Thursday12, "food", ByNotes((50, 1), (10, 1)));
        RoutinePlan plan = Routine.Plan(book, new RoutineDraft(Friday20)).Value!;

        OwedBackOffer offer = OwedBackOffer.Of(plan)!;

        Assert.Equal(Notes((50, 1)), offer.Notes);
        Assert.Equal(offer.Apart.Withdrawn - Usd(50), offer.Together.Withdrawn);
        Assert.Equal(offer.Apart.NotesCarried - 2, offer.Together.NotesCarried);
        Assert.Null(OwedBackOffer.Of(Routine.Plan(Closed, new RoutineDraft(Friday20)).Value!));
    }

    [Fact]
    public void Closing_UsesOwedBackNotes_SettlesThem()
    {
        Book book = Closed.Spend("food", 48.50m, new(2026, 3, 8)).Count(Thursday12, "food", ByNotes((50, 1), (10, 1)));
        Book after = Closing.Of(Routine.Plan(book, new RoutineDraft(Friday20) { UsesOwedBack = true }).Value!).Value!;

        Book apart = Close(book, Friday20);
        Assert.Equal((Usd(0), Usd(0)), (after.Has("cash/owed-back:food"), after.Has("account/owed-back:food")));
        Assert.Equal(apart.Has("account/buffer") + Usd(1.50m), after.Has("account/buffer"));
        Assert.Equal(apart.Has("cash/pot:food"), after.Has("cash/pot:food"));
        Assert.Equal((Friday20, Usd(50)), (after.Weeks.Returns.Single().Payday!.Value, after.Weeks.Returns.Single().Pots.Single().Amount));
        Assert.Equal(after.Ledger.Movements.Count, after.LastClosed!.LastMovement);
        AssertSound(after);
        Assert.Equal(after.Has("cash/wallet:food"), PotNotes.Of(after).InWallet(new PotId("food"))!.Worth(Dollars));
    }

    // What is paid on the debt once its cash is there is no part of what the pot brought.
    [Fact]
    public void Roundings_OfAReturnThatAlsoPaysADebt_AreThoseOfThePurchases()
    {
        Book moved = Moving.Enter(Closed, new MoveEntry(Friday6March, LedgerEnd.FromKey("cash/pot:food"), LedgerEnd.FromKey("owed/card"), Usd(20), "", null)).Value!;
        Book back = ReturnPlan.Of(moved.Spend("food", 12.40m, Friday6March.PlusDays(1)), ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;

        Assert.Equal([Usd(2.60m)], Roundings.Of(back).Select(number => back.Ledger.Movements[(int)number - 1].Amount));
    }
}
