using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.NotesAtHome;
using Payday.Core.Pots;
using Payday.Core.Receiving;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Receiving;

/// <summary>Rule 17 of the design. The slip of 6 March asks for 60 and 60 for food, 20 and 20 for fares, 30 for boots.</summary>
public class ReceivingTests
{
    private static readonly PotId Food = new("food");
    private static readonly PotId Boots = new("boots");

    [Fact]
    public void Closed_AsTestsBegin_AsksFor190()
    {
        Assert.Equal(Usd(190), Closed.LastClosed!.Withdraw.Worth(Dollars));
        Assert.Equal(5, Closed.LastClosed.Parts.Length);
    }

    [Fact]
    public void Receive_SmallerNotes_KeepsAllMoneyAndWritesNoMovement()
    {
        ReceivingPlan plan = Plan(Closed, Notes((10, 19)));
        Book book = plan.Confirm(Friday6March).Value!;

        Assert.Equal(
            ["food 6 6x1000", "fares 6 2x1000", "food 13 6x1000", "fares 13 2x1000"],
            FillPart.Of(book).Select(part => $"{part.Pot.Id} {part.Key.Day.Day} {part.Notes}"));
        Assert.Equal(Closed.Ledger.Movements.Count, book.Ledger.Movements.Count);
        Assert.Equal(Notes((10, 3)), PotNotes.Of(book).AtHome(Boots));
        Assert.Empty(plan.Gone);
        Assert.True(plan.More.IsZero && plan.Loose.IsEmpty);
    }

    // 50, 50, 50 and 20, 20: food's weeks can't be 60 each any more, and boots can't be 30.
    [Fact]
    public void Receive_LargerNotes_GivesUpWeeksBeforeMoney()
    {
        ReceivingPlan plan = Plan(Closed, Notes((50, 3), (20, 2)));

        Assert.Equal(Usd(140), Money.Sum(plan.Parts.Select(part => part.Notes.Worth(Dollars)), Dollars));
        Assert.Contains(plan.Gone, gone => gone.Kind == WishKind.Week && gone.PotId == Food);
        Assert.Equal(Notes((50, 1)), plan.Loose);
        Assert.Equal(Usd(50), Money.Sum(plan.LooseOf.Values, Dollars));
    }

    [Fact]
    public void Receive_ANoteThatNoPotCanTake_LiesLooseAndStaysThePots()
    {
        Book book = Enter(Closed, Notes((50, 3), (20, 2)));

        Assert.Equal(Notes((50, 1)), PotNotes.Of(book).Loose);
        Assert.Equal(Closed.Ledger.Balances.In(Place.Cash), book.Ledger.Balances.In(Place.Cash));
        Assert.All(House.Pots, pot => Assert.Equal(PotMoney.HasNow(Closed.Ledger.Balances, pot.Id), PotMoney.HasNow(book.Ledger.Balances, pot.Id)));
        AssertSound(book);
        AssertNotesAgree(book);
    }

    // The next payday hands the loose note on, and the pots have all their money in notes again.
    [Fact]
    public void Close_AfterALooseNote_UsesItAndLeavesNothingLoose()
    {
        Book book = Enter(Closed, Notes((50, 3), (20, 2)));
        Book next = Close(book, new LocalDate(2026, 3, 20));

        Assert.Equal(Notes(), PotNotes.Of(next).Loose);
        Assert.All(House.Pots, pot => Assert.Equal(Usd(0), PotMoney.InLooseNotes(next.Ledger.Balances, pot.Id)));
        Assert.All(House.Pots, pot => Assert.Equal(
            PotMoney.HasNow(Close(Closed, new LocalDate(2026, 3, 20)).Ledger.Balances, pot.Id), PotMoney.HasNow(next.Ledger.Balances, pot.Id)));
        AssertSound(next);
    }

    [Fact]
    public void Close_LeavingNotesAtHome_LeavesThemThePots()
    {
        Book book = Enter(Closed, Notes((50, 3), (20, 2)));
        Book next = Closing.Of(Routine.Plan(book, new RoutineDraft(new LocalDate(2026, 3, 20)) { LeavesNotesAtHome = true }).Value!).Value!;

        Assert.Equal(Notes((50, 1)), PotNotes.Of(next).Loose);
        Assert.Equal(Usd(50), Money.Sum(House.Pots.Select(pot => PotMoney.InLooseNotes(next.Ledger.Balances, pot.Id)), Dollars));
        AssertSound(next);
    }

    [Fact]
    public void Receive_Less_LeavesTheRestInTheAccountForItsPot()
    {
        Book book = Enter(Closed, Notes((50, 2), (20, 3)));

        Assert.Equal(Usd(-30), Plan(Closed, Notes((50, 2), (20, 3))).More);
        Assert.Equal(Closed.Ledger.Balances.In(Place.Account) + Usd(30), book.Ledger.Balances.In(Place.Account));
        Assert.All(House.Pots, pot => Assert.Equal(PotMoney.HasNow(Closed.Ledger.Balances, pot.Id), PotMoney.HasNow(book.Ledger.Balances, pot.Id)));
    }

    [Fact]
    public void Receive_More_ComesOutOfTheBufferAndLiesLoose()
    {
        Book book = Enter(Closed, Closed.LastClosed!.Withdraw.Plus(Notes((50, 1))));

        Assert.Equal(Closed.Has("account/buffer") - Usd(50), book.Has("account/buffer"));
        Assert.Equal(Usd(50), book.Has("cash/buffer"));
        Assert.Equal(Notes((50, 1)), PotNotes.Of(book).Loose);
    }

    [Fact]
    public void Receive_MoreThanTheBufferHas_IsRefusedWithWhatLacks() => Assert.Equal(
        "The bank gave 1,000.00 more than the slip asks for, and the buffer in the account and what is not in notes for cash pots lack 500.00 of that. Count again; if it is right, move money to the buffer first, then enter it.",
        ReceivingPlan.Of(Closed, Closed.LastClosed!.Withdraw.Plus(Notes((50, 20)))).Fault.Said());

    [Fact]
    public void Receive_ASmallNoteWish_GivesWayAndIsNamed()
    {
        Book book = Close(
            Book.Begin(House with { Pots = [.. House.Pots.Select(pot => pot.Id == Food ? pot with { Notes = new NoteWishes(Usd(20), new SmallMoney(Usd(5), Usd(10))) } : pot)] }),
            Friday6March);
        ReceivingPlan plan = Plan(book, Notes((50, 2), (10, 9)));

        Assert.Equal(Usd(190), Money.Sum(plan.Parts.Select(part => part.Notes.Worth(Dollars)), Dollars));
        Assert.Equal(
            [(WishKind.TopNote, 6), (WishKind.SmallMoney, 6), (WishKind.TopNote, 13), (WishKind.SmallMoney, 13)],
            plan.Gone.Select(gone => (gone.Kind, gone.Week!.Value.Day)));
    }

    [Fact]
    public void Receive_OnceAFillIsMarked_IsRefusedAndNamesIt()
    {
        Book filled = WalletFills.Mark(Closed, new FillKey(Friday6March, Friday6March, Food), FillState.Done, Friday6March).Value!;
        Assert.Equal(
            "The notes of the payday of 6 Mar 2026 have gone on: the fill of Food for 6 Mar 2026 was entered since; take that back first.",
            ReceivingPlan.Of(filled, Notes((10, 19))).Fault.Said());

        Book skipped = WalletFills.Mark(Closed, new FillKey(Friday6March, Friday6March, Food), FillState.Skipped, Friday6March).Value!;
        Assert.IsType<Core.Undo.Obstacle.NotesGoneOn>(ReceivingPlan.Of(skipped, Notes((10, 19))).Fault);
        Assert.IsType<Core.Undo.Obstacle.NotesGoneOn>(ReceivingPlan.Of(Closed.Count(new(2026, 3, 12), "food", 60), Notes((10, 19))).Fault);
        Assert.IsType<Core.Undo.Obstacle.NotesGoneOn>(ReceivingPlan.Of(Closed.Spend("boots", 7, Friday6March), Notes((10, 19))).Fault);
    }

    [Fact]
    public void Receive_Refusals_SayWhatIsWrong()
    {
        Assert.IsType<ReceivingFault.NoSlip>(ReceivingPlan.Of(Book.Begin(House), Notes((10, 19))).Fault);
        Assert.IsType<ReceivingFault.AsAsked>(ReceivingPlan.Of(Closed, Closed.LastClosed!.Withdraw).Fault);
        Assert.IsType<ReceivingFault.NoSuchPiece>(ReceivingPlan.Of(Closed, Notes((7, 2))).Fault);
        Assert.IsType<ReceivingFault.BeforePayday>(Plan(Closed, Notes((10, 19))).Confirm(new LocalDate(2026, 3, 5)).Fault);
        Assert.IsType<ReceivingFault.NothingEntered>(ReceivingUndo.Of(Closed, Friday6March).Fault);
    }

    // A typing error is put right by entering it again; what the slip asked for takes it back.
    [Fact]
    public void Receive_Again_TakesThePlaceOfWhatWasEntered()
    {
        Book twice = Enter(Enter(Closed, Notes((50, 3), (20, 2))), Notes((10, 19)));
        Assert.Equal(FillPart.Of(Enter(Closed, Notes((10, 19)))).Select(part => part.Notes), FillPart.Of(twice).Select(part => part.Notes));
        Assert.Equal([true, false], twice.Weeks.Received.Select(one => one.Undone));

        Book asAsked = Enter(twice, Closed.LastClosed!.Withdraw);
        Assert.Null(ReceivingUndo.Last(asAsked));
        Assert.Equal(FillPart.Of(Closed).Select(part => part.Notes), FillPart.Of(asAsked).Select(part => part.Notes));
    }

    [Fact]
    public void Reopen_WithOtherNotes_NamesThem() => Assert.Equal(
        "The payday of 6 Mar 2026 can't be reopened: the notes received for the payday of 6 Mar 2026 were written since and may depend on it; take that back first.",
        Reopening.Of(Enter(Closed, Notes((10, 19))), Friday6March).Fault.Said());

    // The model: of all ways to hand out the notes, tried one by one, none puts more money in the pots; and all adds up.
    [Fact]
    public void Receive_AnyNotes_PutsAsMuchInPotsAsCanBe() =>
        Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var chance = new Random(seed);
                if (OtherNotes.Of(Closed, chance) is not { } got || ReceivingPlan.Of(Closed, got) is not { Ok: true } planned)
                {
                    return;
                }

                ReceivingPlan plan = planned.Value;
                Book book = plan.Confirm(Friday6March).Value!;
                AssertSound(book);
                AssertNotesAgree(book);
                Assert.Equal(got, Core.Cash.Notes.Sum([.. plan.Parts.Select(part => part.Notes), plan.Loose]));
                Assert.Equal(Closed.Ledger.Balances.In(Place.Account) - plan.More, book.Ledger.Balances.In(Place.Account));
                Assert.Equal(Closed.Ledger.Balances.In(Place.Cash) + plan.More, book.Ledger.Balances.In(Place.Cash));
                Assert.All(House.Pots, pot => Assert.Equal(PotMoney.HasNow(Closed.Ledger.Balances, pot.Id), PotMoney.HasNow(book.Ledger.Balances, pot.Id)));
                long inPots = plan.Parts.Sum(part => part.Notes.Sum(note => note.Key * note.Value));
                Assert.Equal(MostInPots([12000, 4000, 3000], got), inPots);

                ReceivedNotes papers = ReceivedNotes.Of(book, book.LastClosed!);
                Assert.Equal(plan.Loose, papers.Loose);
                Assert.Equal(plan.LooseOf, papers.LooseOf);
            },
            iter: 300);

    // Every sum of every pot that some notes come to, one note after the other.
    private static long MostInPots(long[] amounts, Notes notes)
    {
        HashSet<(long, long, long)> reached = [(0, 0, 0)];
        foreach ((long value, int count) in notes)
        {
            for (int i = 0; i < count; i++)
            {
                reached.UnionWith([.. reached.SelectMany(sums => new[]
                {
                    (sums.Item1 + value, sums.Item2, sums.Item3),
                    (sums.Item1, sums.Item2 + value, sums.Item3),
                    (sums.Item1, sums.Item2, sums.Item3 + value),
                }).Where(sums => sums.Item1 <= amounts[0] && sums.Item2 <= amounts[1] && sums.Item3 <= amounts[2])]);
            }
        }

        return reached.Max(sums => sums.Item1 + sums.Item2 + sums.Item3);
    }

    private static void AssertNotesAgree(Book book)
    {
        PotNotes notes = PotNotes.Of(book);
        Money loose = book.Has("cash/buffer") + Money.Sum(book.Household.Pots.Select(pot => PotMoney.InLooseNotes(book.Ledger.Balances, pot.Id)), Dollars);
        Assert.Equal(loose, notes.Loose.Worth(Dollars));
        Assert.All(book.Household.Pots, pot => Assert.Equal(book.Ledger.Balances[LedgerEnd.InCash(Purpose.Pot(pot.Id))], notes.AtHome(pot.Id)!.Worth(Dollars)));
    }

    private static ReceivingPlan Plan(Book book, Notes got)
    {
        Result<ReceivingPlan> plan = ReceivingPlan.Of(book, got);
        Assert.True(plan.Ok, plan.Fault.Said());
        return plan.Value;
    }

    private static Book Enter(Book book, Notes got) => Plan(book, got).Confirm(Friday6March).Value!;
}
