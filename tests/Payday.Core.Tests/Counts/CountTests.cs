using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.Counts;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Pots;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Counts;

public class CountTests
{
    private static readonly LocalDate Thursday12 = new(2026, 3, 12);
    private static readonly LocalDate Thursday19 = new(2026, 3, 19);

    [Fact]
    public void Of_FirstWeek_ExpectsWhatWasFilledLessWhatIsOwedBack()
    {
        CountRow row = Closed.Spend("food", 12, new(2026, 3, 8)).Row(Thursday12, "food", new CountEntry(Usd(21.50m)));

        Assert.Equal((Usd(60), Usd(15), Usd(45), Usd(23.50m)), (row.Filled, row.OwedBack, row.Expected, row.Spent));
        Assert.Null(row.Fault);
    }

    [Fact]
    public void Confirm_Left_StaysInTheWalletAndTheRestIsSpent()
    {
        Book book = Closed.Count(Thursday12, "food", 21.50m);

        Assert.Equal((Usd(21.50m), Usd(60), Usd(38.50m)), (book.Has("cash/wallet:food"), book.Has("cash/pot:food"), book.Has("outside/spending:food")));
        Assert.Equal(Friday6March, book.Weeks.Counts.Single().Week);
        Assert.Equal(FillState.Done, book.Weeks.Fills.Single().State);
        AssertSound(book);
    }

    // Counted in one go they are one count for the ledger, each with where its own rest went, and nothing is left to go on with.
    [Fact]
    public void Confirm_SeveralPots_IsOneCountAndEndsTheDraft()
    {
        Book earlier = Closed.Count(new(2026, 3, 9), "food", 50);
        CountDraft draft = new CountDraft(Thursday12)
            .With(new PotId("food"), new CountEntry(Usd(20)) { Then = new CountThen(MoveTarget.Pot(new PotId("boots"))) })
            .With(new PotId("fares"), new CountEntry(Usd(5)) { Then = new CountThen(MoveTarget.Buffer) });
        Book book = CountPlan.Of(earlier with { Weeks = earlier.Weeks with { Draft = draft } }, draft).Confirm().Value!;

        Assert.Null(book.Weeks.Draft);
        Assert.Equal([(1L, 1L), (2L, 2L), (3L, 2L)], book.Weeks.Counts.Select(count => (count.Number, count.Together)));
        Assert.Equal(
            [("goes to Boots", Usd(20)), ("goes to the buffer", Usd(5))],
            book.Weeks.Counts.Skip(1).Select(count => book.Ledger.Movements[(int)count.Move!.Value - 1]).Select(movement => (movement.Reason, movement.Amount)));
    }

    [Fact]
    public void Of_NextWeek_BeginsWithWhatWasLeft()
    {
        CountRow row = Closed.Count(Thursday12, "food", 21.50m).Row(Thursday19, "food", new CountEntry(Usd(0)));

        Assert.Equal((Usd(21.50m), Usd(60), Usd(81.50m)), (row.Before, row.Filled, row.Spent));
    }

    [Fact]
    public void Of_LateCount_LeavesOutWhatCameLater()
    {
        Book late = Closed.Spend("food", 20, new(2026, 3, 14));

        CountRow row = late.Row(Thursday12, "food", new CountEntry(Usd(10)));

        Assert.Equal((Usd(60), Usd(0), Usd(50)), (row.Filled, row.OwedBack, row.Spent));
        Book both = late.Count(Thursday12, "food", 10).Count(Thursday19, "food", 5);
        Assert.Equal((Usd(10), Usd(60), Usd(20), Usd(45)), Figures(both.Weeks.Counts[1]));
        AssertSound(both);
    }

    [Fact]
    public void Of_BeforeTheLastCount_IsRefused() => Assert.Equal(
        "Food was counted on 12 Mar 2026; count it for that day or a later one.",
        Closed.Count(Thursday12, "food", 5).Row(new(2026, 3, 11), "food", new CountEntry(Usd(5))).Fault.Said());

    [Fact]
    public void Of_MoreThanWasThere_IsRefusedWithTheLikelyReason()
    {
        Assert.Equal(
            "70.00 is more than the 60.00 that Food should have: perhaps a fill wasn't recorded, or was marked skipped; mend that, or name it as found.",
            Closed.Row(Thursday12, "food", new CountEntry(Usd(70))).Fault.Said());
        Assert.Equal(
            "60.00 is more than the 45.00 that Food should have: perhaps a fill wasn't recorded, or the 15.00 it has to pay back is still among it; mend that, or name it as found.",
            Closed.Spend("food", 12, new(2026, 3, 8)).Row(Thursday12, "food", new CountEntry(Usd(60))).Fault.Said());
    }

    [Theory]
    [InlineData(-1, 0, "x", "What is left of Food can't be below zero.")]
    [InlineData(50, 11, "x", "Only 10.00 of Food is gone, so 11.00 can't be missing.")]
    [InlineData(50, 4, " ", "Name what is missing from Food, so that it can be cleared up later.")]
    public void Of_BadEntry_IsRefused(decimal left, decimal missing, string name, string fault) => Assert.Equal(
        fault, Closed.Row(Thursday12, "food", new CountEntry(Usd(left)) { Missing = Usd(missing), DifferenceName = name }).Fault.Said());

    [Fact]
    public void Of_FewerNotesThanOwedBack_IsRefused() => Assert.Equal(
        "The notes of Food come to less than the 15.00 it has to pay back; count those among them, or type what is left without them.",
        Closed.Spend("food", 12, new(2026, 3, 8)).Row(Thursday12, "food", ByNotes((10, 1))).Fault.Said());

    [Fact]
    public void Of_ByNotes_TakesOffWhatIsOwedBack() =>
        Assert.Equal(Usd(20), Closed.Spend("food", 12, new(2026, 3, 8)).Row(Thursday12, "food", ByNotes((20, 1), (10, 1), (5, 1))).Left);

    [Fact]
    public void Of_CountThatSpendsWhatWasOwedBackLater_IsRefused()
    {
        Book book = WalletFills.Mark(Closed, new FillKey(Friday6March, Friday13March, new PotId("food")), FillState.Skipped, Friday13March).Value!
            .Spend("food", 40, new(2026, 3, 16));

        Assert.Equal(
            "At most 20.00 of Food can be gone by 12 Mar 2026, for the rest is to be paid back or was moved since; look at its card purchases.",
            book.Row(Thursday12, "food", new CountEntry(Usd(10))).Fault.Said());
    }

    [Fact]
    public void Confirm_Missing_StaysOpenUntilItIsExplained()
    {
        Book book = Closed.Count(Thursday12, "food", new CountEntry(Usd(30)) { Missing = Usd(10), DifferenceName = "lost a note" });

        WeekCount open = Differences.Open(book).Single();
        Assert.Equal((Thursday12, "lost a note", Usd(10), Usd(20)), (open.Date, open.DifferenceName, open.Difference, open.Spent));
        Assert.Equal(Usd(10), book.Has("outside/difference:food"));

        Book explained = Differences.Settle(book, open.Number, DifferenceEnd.Explained, Thursday19).Value!;
        Assert.Empty(Differences.Open(explained));
        Assert.Equal((Usd(0), Usd(30)), (explained.Has("outside/difference:food"), explained.Has("outside/spending:food")));
        Assert.Equal(open, explained.Weeks.Counts.Single());
        Assert.Equal("Count 1 has no open difference.", Differences.Settle(explained, 1, DifferenceEnd.Explained, Thursday19).Fault.Said());
    }

    [Fact]
    public void Settle_TurnedUp_IsInTheWalletAgain()
    {
        Book book = Closed.Count(Thursday12, "food", new CountEntry(Usd(30)) { Missing = Usd(10), DifferenceName = "lost" });
        Book found = Differences.Settle(book, 1, DifferenceEnd.TurnedUp, new(2026, 3, 14)).Value!;

        Assert.Equal(Usd(40), found.Has("cash/wallet:food"));
        Assert.Equal((Usd(30), Usd(60), Usd(0), Usd(100)), Figures(found.Count(Thursday19, "food", 0).Weeks.Counts[1]));
    }

    [Fact]
    public void Confirm_Find_IsKeptAsFound()
    {
        Book book = Closed.Count(Thursday12, "food", new CountEntry(Usd(65)) { IsFind = true, DifferenceName = "coat pocket" });

        Assert.Equal((Usd(-5), Usd(0), Usd(65)), (book.Weeks.Counts[0].Difference, book.Weeks.Counts[0].Spent, book.Has("cash/wallet:food")));
        Assert.Equal("Nothing is missing in count 1: coat pocket was found.", Differences.Settle(book, 1, DifferenceEnd.TurnedUp, Thursday19).Fault.Said());
        AssertSound(Differences.Settle(book, 1, DifferenceEnd.Explained, Thursday19).Value!);
    }

    [Fact]
    public void Confirm_MovesOnToACashPot_IsThereAtOnce()
    {
        Book book = Closed.Count(Thursday12, "food", Moving(12, MoveTarget.Pot(new PotId("boots"))));

        Assert.Equal((Usd(0), Usd(42)), (book.Has("cash/wallet:food"), book.Has("cash/pot:boots")));
        Assert.Equal(Usd(60), book.Row(Thursday19, "food", new CountEntry(Usd(0))).Expected);
        Assert.Equal((Usd(0), Usd(30), Usd(12), Usd(0)), (
            book.Row(Thursday19, "boots", new CountEntry(Usd(42))) is var row ? row.Before : default, row.Filled, row.Moved, row.Spent));
    }

    [Fact]
    public void Confirm_TwoPotsAtOnce_ExpectNothingOfEachOther()
    {
        CountDraft draft = new CountDraft(Thursday12).With(new PotId("food"), Moving(12, MoveTarget.Pot(new PotId("fares")))).With(new PotId("fares"), new CountEntry(Usd(3)));

        Book book = CountPlan.Of(Closed, draft).Confirm().Value!;

        Assert.Equal((Usd(17), Usd(15)), (book.Weeks.Counts[1].Spent, book.Has("cash/wallet:fares")));
        Assert.Null(book.Weeks.Draft);
        AssertSound(book);
    }

    // They are written one behind the other, each worked out before.
    [Fact]
    public void Confirm_TwoPotsAtOnce_NumbersTheMovementsOfEach()
    {
        CountDraft draft = new CountDraft(Thursday12).With(new PotId("food"), new CountEntry(Usd(10))).With(new PotId("fares"), new CountEntry(Usd(3)));

        Book book = CountPlan.Of(Closed, draft).Confirm().Value!;

        long written = Closed.Ledger.Movements.Count;
        Assert.Equal(
            [(written + 1, written + 2, "food"), (written + 3, written + 4, "fares")],
            book.Weeks.Counts.Select(count => (count.FirstMovement, count.LastMovement, count.PotId.Text)));
        Assert.All(book.Weeks.Counts, count =>
        {
            Assert.Equal([count.FirstMovement], count.TakenUp.Movements);
            Assert.Equal(
                [("cash/pot:" + count.PotId, "cash/wallet:" + count.PotId, "week's fill"), ("cash/wallet:" + count.PotId, "outside/spending:" + count.PotId, "spent, counted")],
                book.Ledger.Between(count.FirstMovement, count.LastMovement).Select(movement => (movement.From.Key, movement.To.Key, movement.Reason)));
        });
        Assert.Equal(book.Weeks.Counts.Select(count => (long?)count.FirstMovement), book.Weeks.Fills.Select(fill => fill.Movement));
    }

    // The outlook counts a few pots of many.
    [Fact]
    public void OfEntered_SomePots_HasTheirRowsAndComesToTheSameBook()
    {
        CountDraft draft = new CountDraft(Thursday12).With(new PotId("fares"), new CountEntry(Usd(3)));
        CountPlan all = CountPlan.Of(Closed, draft);
        CountPlan entered = CountPlan.OfEntered(Closed, draft);

        Assert.Equal(["fares"], entered.Rows.Select(row => row.Pot.Id.Text));
        Assert.Equal((3, all.Spent), (all.Rows.Length, entered.Spent));
        Assert.Equal(all.Confirm().Value!.Ledger.Movements, entered.Confirm().Value!.Ledger.Movements);
    }

    [Fact]
    public void Confirm_MovesOnToADebt_PaysItWhenTheCashIsReturned()
    {
        Book book = Closed.Count(Thursday12, "food", Moving(25, MoveTarget.Debt(new DebtId("card"))));
        Money owed = book.Ledger.Balances.OwedOn(new DebtId("card"));

        Assert.Equal(Usd(25), book.Has("cash/owed-back:food"));
        Book paid = ReturnPlan.Of(book, ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;
        Assert.Equal((owed - Usd(25), Usd(0)), (paid.Ledger.Balances.OwedOn(new DebtId("card")), paid.Has("cash/owed-back:food")));
        AssertSound(paid);
    }

    // The ledger's list says what each movement was.
    [Fact]
    public void Confirm_ItsMovements_SayWhatTheyWere()
    {
        Assert.Equal(["week's fill", "spent, counted", "missing: a note", "goes to Boots"], Reasons(new CountEntry(Usd(30)) { Missing = Usd(10), DifferenceName = " a note ", Then = new CountThen(MoveTarget.Pot(new PotId("boots"))) }));
        Assert.Equal(["week's fill", "found: coat"], Reasons(new CountEntry(Usd(65)) { IsFind = true, DifferenceName = "coat" }));

        static IEnumerable<string> Reasons(CountEntry entry) => Closed.Count(Thursday12, "food", entry).Ledger.Movements.Skip(Closed.Ledger.Movements.Count).Select(movement => movement.Reason);
    }

    // Just all of it can be missing, or gone; what is said of nothing needs no name.
    [Fact]
    public void Of_AllOfIt_MayBeMissing()
    {
        Assert.Null(Closed.Row(Thursday12, "food", new CountEntry(Usd(50)) { Missing = Usd(10), DifferenceName = "x" }).Fault);
        Assert.Equal((Usd(0), Usd(10)), Closed.Row(Thursday12, "food", new CountEntry(Usd(50)) { Missing = Usd(10), DifferenceName = "x" }) is var all ? (all.Spent, all.Difference) : default);
        Assert.Equal(new CountFault.MissingMoreThanGone("Food", Usd(0), Usd(1)), Closed.Row(Thursday12, "food", new CountEntry(Usd(60)) { Missing = Usd(1), DifferenceName = "x" }).Fault);
        Assert.Equal(new CountFault.MissingMoreThanGone("Food", Usd(10), Usd(-1)), Closed.Row(Thursday12, "food", new CountEntry(Usd(50)) { Missing = Usd(-1), DifferenceName = "x" }).Fault);
        Assert.Equal(new CountFault.Unnamed("Food", IsMissing: false), Closed.Row(Thursday12, "food", new CountEntry(Usd(65)) { IsFind = true }).Fault);
        Assert.Equal("", Closed.Count(Thursday12, "food", new CountEntry(Usd(50)) { DifferenceName = "x" }).Weeks.Counts[0].DifferenceName);
    }

    [Fact]
    public void Of_OnTheHouseholdsFirstDay_IsTheEarliest()
    {
        Assert.Null(Closed.Row(Friday6March, "food", new CountEntry(Usd(60))).Fault);
        Assert.Equal(new CountFault.BeforeStart(new(2026, 3, 5), Friday6March), Closed.Row(new(2026, 3, 5), "food", new CountEntry(Usd(0))).Fault);
        Assert.Null(Closed.Count(Thursday12, "food", 5).Row(Thursday12, "food", new CountEntry(Usd(5))).Fault);
    }

    // 40 were put apart on the 16th of the 60 that were there on the 12th: just the other 20 can be gone by then.
    [Theory]
    [InlineData(40, true)]
    [InlineData(39.99, false)]
    public void Of_WhatWasPutApartLater_CannotBeGoneBefore(decimal left, bool goes)
    {
        Book book = WalletFills.Mark(Closed, new FillKey(Friday6March, Friday13March, new PotId("food")), FillState.Skipped, Friday13March).Value!
            .Spend("food", 40, new(2026, 3, 16));

        Assert.Equal(goes ? null : new CountFault.MoreGoneThanCan("Food", Usd(20), Thursday12), book.Row(Thursday12, "food", new CountEntry(Usd(left))).Fault);
    }

    // What was left went to boots, which were counted for a later day already: it is in their next count.
    [Fact]
    public void Confirm_MovesOnToAPotCountedLater_IsOfThatDay()
    {
        Book book = Closed.Count(new(2026, 3, 14), "boots", 30).Count(Thursday12, "food", Moving(12, MoveTarget.Pot(new PotId("boots"))));

        Assert.Equal(new LocalDate(2026, 3, 14), book.Ledger.Movements[^1].Date);
        Assert.Equal((Usd(30), Usd(12)), book.Row(Thursday19, "boots", new CountEntry(Usd(42))) is var row ? (row.Before, row.Moved) : default);
        Assert.Equal(Thursday12, Closed.Count(new(2026, 3, 10), "boots", 30).Count(Thursday12, "food", Moving(12, MoveTarget.Pot(new PotId("boots")))).Ledger.Movements[^1].Date);
    }

    // 120 were there by the 13th, and a card took of it then: what was left on the 12th can only go elsewhere as far as it is still there.
    [Theory]
    [InlineData(60, 60, true)]
    [InlineData(60.01, 59.99, false)]
    [InlineData(115, 58, false)]
    public void Confirm_WhatWasLeftAndUsedSince_CannotMoveOn(decimal bought, decimal left, bool goes)
    {
        Book book = Closed.Spend("food", bought, Friday13March);

        Assert.Equal(goes ? null : new CountFault.LeftUsedSince("Food", Thursday12), book.Plan(Thursday12, "food", Moving(left, MoveTarget.Pot(new PotId("boots")))).Confirm().Fault);
    }

    // What the envelope began with was there before; loose notes and what was fetched for it are filled in.
    [Fact]
    public void Of_AnEnvelopeAtHome_HasWhatItBeganWithAndWhatWasPutIn()
    {
        Book begun = Close(Book.Begin(House with { Opening = House.Opening with { Pots = PotSums(("boots", 7)) } }), Friday6March);
        Assert.Equal((Usd(7), Usd(37)), begun.Row(Thursday12, "boots", new CountEntry(Usd(0))) is var first ? (first.Before, first.Expected) : default);

        Book loose = Entering.Enter(Closed, new EntryWish(Friday6March, EntryKind.Gift, MoveEnds.Loose, Usd(20), "") { Notes = Notes((20, 1)) }).Value!;
        Book put = Core.Moves.Moving.Enter(loose, new MoveEntry(Friday6March, MoveEnds.Loose, LedgerEnd.FromKey("cash/pot:boots"), Usd(20), "")).Value!;
        Book fetched = Core.Moves.Moving.Enter(put, new MoveEntry(Friday6March, MoveEnds.Buffer, LedgerEnd.FromKey("cash/pot:boots"), Usd(10), "", Notes((10, 1)))).Value!;
        Assert.Equal((Usd(0), Usd(60), Usd(0)), fetched.Row(Thursday12, "boots", new CountEntry(Usd(0))) is var row ? (row.Before, row.Filled, row.Moved) : default);
    }

    // All of it was put apart, or came and went: there is nothing left to count, but something to say.
    [Fact]
    public void Of_APlan_HasPotsThatHadSomething()
    {
        Book apart = Closed.Spend("fares", 20, new(2026, 3, 8));
        Assert.Contains(CountPlan.Of(apart, new CountDraft(Thursday12)).Rows, row => row.Pot.Id.Text == "fares" && row.Expected.IsZero);

        Book empty = Closed.Count(new(2026, 3, 10), "food", 0);
        Book came = Core.Moves.Moving.Enter(empty, new MoveEntry(new(2026, 3, 11), LedgerEnd.FromKey("cash/pot:boots"), LedgerEnd.FromKey("cash/pot:food"), Usd(5), "")).Value!;
        Book went = came.Spend("food", 5, new(2026, 3, 11));
        Assert.DoesNotContain(CountPlan.Of(empty, new CountDraft(Thursday12)).Rows, row => row.Pot.Id.Text == "food");
        Assert.Contains(CountPlan.Of(went, new CountDraft(Thursday12)).Rows, row => row.Pot.Id.Text == "food" && row.Expected.IsZero && row.Filled.IsZero);
        Assert.Contains(CountPlan.Of(Closed.Count(Thursday12, "food", 5), new CountDraft(Thursday12)).Rows, row => row.Pot.Id.Text == "food");
    }

    // What went out of a pot by a card, to another pot, or came from one is told apart, up to the day.
    [Fact]
    public void Of_WhatWentInAndOut_IsToldApart()
    {
        Book book = Moved(Moved(Closed.Spend("food", 12, new(2026, 3, 8)), "cash/pot:food", "cash/pot:boots", 10, 9), "cash/pot:fares", "cash/pot:food", 5, 10);
        CountRow row = book.Row(Thursday12, "food", new CountEntry(Usd(0)));

        Assert.Equal((Usd(0), Usd(60), Usd(15), Usd(-5), Usd(40), Usd(55)), (row.Before, row.Filled, row.OwedBack, row.Moved, row.Expected, row.WasIn));
        Assert.Equal(Usd(-10), book.Row(new(2026, 3, 9), "food", new CountEntry(Usd(0))).Moved);
        Assert.Equal((Usd(60), Usd(0), Usd(0)), book.Count(Thursday12, "food", 40).Row(Thursday19, "food", new CountEntry(Usd(0))) is var next ? (next.Filled, next.OwedBack, next.Moved) : default);

        static Book Moved(Book book, string from, string to, decimal amount, int day) => Core.Moves.Moving.Enter(
            book, new MoveEntry(new(2026, 3, day), LedgerEnd.FromKey(from), LedgerEnd.FromKey(to), Usd(amount), "")).Value!;
    }

    [Fact]
    public void Of_APlan_CountsAndSumsWhatWasEntered()
    {
        CountPlan plan = CountPlan.Of(Closed, new CountDraft(Thursday12).With(new PotId("food"), new CountEntry(Usd(20))).With(new PotId("fares"), new CountEntry(Usd(30))));

        Assert.Equal((2, Usd(40), Friday6March), (plan.Counted, plan.Spent, plan.Week));
        Assert.Equal(["food", "fares", "boots"], plan.Rows.Select(row => row.Pot.Id.Text));
        Assert.IsType<CountFault.MoreThanThere>(Assert.Single(plan.Faults));
        Assert.Equal(plan.Faults, plan.Confirm().Faults);

        // Counted down to nothing it isn't asked for before something comes; counted for a later day it isn't either.
        Assert.Equal(["fares", "boots"], CountPlan.Of(Closed.Count(Thursday12, "food", 0), new CountDraft(Thursday12)).Rows.Select(row => row.Pot.Id.Text));
        Assert.Equal(["fares", "boots"], CountPlan.Of(Closed.Count(Thursday19, "food", 5), new CountDraft(Thursday12)).Rows.Select(row => row.Pot.Id.Text));
    }

    [Fact]
    public void Of_TargetThatIsNotThere_IsRefused()
    {
        Assert.Equal("What is left of Food can't go to Food itself; say where else, or that it stays.", Closed.Row(Thursday12, "food", Moving(5, MoveTarget.Pot(new PotId("food")))).Fault.Said());
        Assert.Equal("What is left of Food can't go to 'hats', which there isn't.", Closed.Row(Thursday12, "food", Moving(5, MoveTarget.Pot(new PotId("hats")))).Fault.Said());
    }

    [Fact]
    public void Confirm_PotThatMovesOn_ProposesIt()
    {
        Household household = House with { Pots = House.Pots.SetItem(0, House.Pots[0] with { MovesOnTo = MoveTarget.Buffer }) };
        Book book = Close(Book.Begin(household), Friday6March);

        Assert.Equal(MoveTarget.Buffer, book.Row(Thursday12, "food", new CountEntry(Usd(5))).MovesOnTo);
        Assert.Null(book.Row(Thursday12, "food", new CountEntry(Usd(5)) { Then = CountThen.Stays }).MovesOnTo);
    }

    [Fact]
    public void Confirm_Nothing_IsRefused() =>
        Assert.Equal("Nothing has been counted; enter what is left of a pot.", CountPlan.Of(Closed, new CountDraft(Thursday12)).Confirm().Fault.Said());

    [Fact]
    public void Of_OpeningOfASpendingPot_IsInTheWallet()
    {
        Household household = House with { Opening = House.Opening with { Pots = PotSums(("food", 7)) } };
        CountRow row = Close(Book.Begin(household), Friday6March).Row(Thursday12, "food", new CountEntry(Usd(0)));

        Assert.Equal(Usd(67), row.Expected);
    }

    [Fact]
    public void Open_WeeksNotCounted_AreThereInOrder()
    {
        Assert.Empty(CountWeeks.Open(Closed, Thursday12));
        OpenWeek open = CountWeeks.Open(Closed, Friday13March).Single();
        Assert.Equal((Friday6March, Thursday12), (open.Week, open.LastDay));
        Assert.Equal(["food", "fares"], open.PotIds.Select(id => id.Text));
        Assert.Equal([Friday6March, Friday13March], CountWeeks.Open(Closed, new(2026, 3, 20)).Select(week => week.Week));
        Assert.Equal(["fares"], CountWeeks.Open(Closed.Count(Thursday12, "food", 5), Friday13March).Single().PotIds.Select(id => id.Text));
    }

    [Fact]
    public void DayFor_FillDayWithFillsWaiting_IsTheDayBefore()
    {
        Assert.Equal(Thursday12, CountWeeks.DayFor(Closed, Friday13March));
        Assert.Equal(new LocalDate(2026, 3, 14), CountWeeks.DayFor(Closed, new(2026, 3, 14)));
    }

    private static CountEntry Moving(decimal left, MoveTarget target) => new(Usd(left)) { Then = new CountThen(target) };

    private static (Money Before, Money Filled, Money OwedBack, Money Spent) Figures(WeekCount count) =>
        (count.Before, count.Filled, count.OwedBack, count.Spent);
}
