using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.NotesAtHome;
using Payday.Core.Tests.Faults;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Moves;

/// <summary>Rule (design, 12): money moves between purposes at any time. The figures are worked out by hand.</summary>
public class MovingTests
{
    private static readonly LocalDate Tuesday10 = new(2026, 3, 10);

    private static readonly Book Home = Close(
        Book.Begin(House with { Bills = [Bill("Rent", 310, Friday6March, essential: true)], Opening = House.Opening with { LooseNotes = Notes((5, 6), (10, 2)) } }), Friday6March);

    // From, to, the amount; what both have then, and how it gets there.
    [Theory]
    [InlineData("account/pot:gifts", "account/buffer", 15, MoveWay.InAccount)]
    [InlineData("account/buffer", "account/set-aside:rent", 12.34, MoveWay.InAccount)]
    [InlineData("account/buffer", "owed/card", 100, MoveWay.InAccount)]
    [InlineData("cash/pot:food", "cash/pot:fares", 10, MoveWay.InCash)]
    [InlineData("cash/buffer", "cash/pot:boots", 10, MoveWay.InCash)]
    [InlineData("cash/buffer", "account/buffer", 15, MoveWay.Deposited)]
    public void Enter_MovesIt_AndUndoTakesItBack(string from, string to, decimal amount, MoveWay way)
    {
        Book home = from == "cash/buffer" ? WithLoose : Home;
        MoveEffect effect = Effect(home, from, to, amount);

        Assert.Equal(way, effect.Way);
        Assert.Equal(effect.FromBefore - Usd(amount), effect.FromAfter);
        Assert.Equal(effect.ToBefore + (to.StartsWith("owed", StringComparison.Ordinal) ? -Usd(amount) : Usd(amount)), effect.ToAfter);
        AssertSound(effect.Book);
        Assert.Equal(home.Ledger.Balances.All.OrderBy(pair => pair.Key.Key), Moving.Undo(effect.Book, 1, Tuesday10).Value!.Ledger.Balances.All.OrderBy(pair => pair.Key.Key));
    }

    // Nothing in the account is promised from cash still at home: the purpose has it when the cash return is at the bank.
    [Theory]
    [InlineData("account/pot:gifts", 15)]
    [InlineData("account/set-aside:rent", 0)]
    [InlineData("account/buffer", 0)]
    public void Enter_FromCashToTheAccount_IsOwedBackUntilItIsThere(string to, decimal before)
    {
        Book moved = Effect(Home, "cash/pot:food", to, 20).Book;

        Assert.Equal((Usd(20), Home.Has(to)), (moved.Has("cash/owed-back:food"), moved.Has(to)));
        Assert.True(moved.Has(to) >= Usd(before));
        OwedItem item = Assert.Single(OwedItems.Of(moved));
        Assert.Equal((OwedKind.Move, Usd(20), Usd(0)), (item.Key.Kind, item.Left, item.Short));
        Book back = ReturnPlan.Of(moved, ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;
        Assert.Equal((Usd(0), Home.Has(to) + Usd(20)), (back.Has("cash/owed-back:food"), back.Has(to)));
        Assert.Equal("The cash for move 1 was taken to the bank on 13 Mar 2026; take that cash return back first.", Moving.Undo(back, 1, Friday13March).Fault.Said());
        AssertSound(back);
    }

    [Fact]
    public void Enter_FromCashToADebt_PaysItAtTheBank()
    {
        Book moved = Effect(Home, "cash/pot:food", "owed/card", 20).Book;
        Book back = ReturnPlan.Of(moved, ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;

        Assert.Equal(Home.Ledger.Balances.OwedOn(new DebtId("card")), moved.Ledger.Balances.OwedOn(new DebtId("card")));
        Assert.Equal(Home.Ledger.Balances.OwedOn(new DebtId("card")) - Usd(20), back.Ledger.Balances.OwedOn(new DebtId("card")));
    }

    [Fact]
    public void Enter_FromTheAccountToCash_ComesWithTheNextWithdrawal()
    {
        MoveEffect effect = Effect(Home, "account/buffer", "cash/pot:food", 40);
        Book next = Close(effect.Book, Friday6March.PlusDays(14));
        Book without = Close(Home, Friday6March.PlusDays(14));

        Assert.Equal((MoveWay.NextWithdrawal, Usd(40)), (effect.Way, effect.Book.Has("account/kept-back:food")));
        Assert.Equal((Usd(120), Usd(160)), (effect.ToBefore, effect.ToAfter));
        Assert.Equal((Usd(0), without.Has("cash/pot:food") + Usd(40)), (next.Has("account/kept-back:food"), next.Has("cash/pot:food")));
        MoveEffect back = Effect(effect.Book, "account/kept-back:food", "account/buffer", 15);
        Assert.Equal(Usd(25), back.Book.Has("account/kept-back:food"));
        Assert.Equal((Usd(160), Usd(165)), Effect(effect.Book, "account/buffer", "cash/pot:food", 5) is var more ? (more.ToBefore, more.ToAfter) : default);
    }

    [Fact]
    public void Enter_FetchedToday_PutsItsNotesInTheEnvelope()
    {
        Book fetched = Effect(Home, "account/buffer", "cash/pot:boots", 40, (20, 2)).Book;

        Assert.Equal(Home.Has("cash/pot:boots") + Usd(40), fetched.Has("cash/pot:boots"));
        Assert.Equal(PotNotes.Of(Home).AtHome(new PotId("boots"))!.Plus(Notes((20, 2))), PotNotes.Of(fetched).AtHome(new PotId("boots")));
        Book loose = Effect(Home, "account/buffer", "cash/buffer", 40, (20, 2)).Book;
        Assert.Equal(PotNotes.Of(Home).Loose.Plus(Notes((20, 2))), PotNotes.Of(loose).Loose);
    }

    [Fact]
    public void Enter_LooseNotes_GoByTheFewest()
    {
        Assert.Equal(Notes((10, 1)), Effect(WithLoose, "cash/buffer", "cash/pot:boots", 10).Notes);
        Assert.Equal(Notes((5, 2)), Effect(WithLoose, "cash/buffer", "cash/pot:boots", 10, (5, 2)).Notes);
        Assert.Equal(
            PotNotes.Of(WithLoose).Loose.Less(Notes((5, 2))), PotNotes.Of(Effect(WithLoose, "cash/buffer", "cash/pot:boots", 10, (5, 2)).Book).Loose);
    }

    // 50 lie loose in six fives and two tens.
    [Fact]
    public void Enter_AllLooseNotes_LeavesNoneAndMoreIsRefused()
    {
        MoveEffect all = Effect(WithLoose, "cash/buffer", "cash/pot:boots", 50);

        Assert.Equal((Usd(0), Notes((5, 6), (10, 2))), (all.FromAfter, all.Notes));
        Assert.Equal(new MoveFault.HasLess(MoveEnds.Loose, null, Usd(50), Usd(55)), Moving.Enter(WithLoose, Entry("cash/buffer", "cash/pot:boots", 55)).Fault);
    }

    // On the 14th both weeks' fills are in the wallet, marked or not; what is moved comes out of them.
    [Fact]
    public void Enter_FromACashPot_TakesTheFillsUpToThatDayAsDone()
    {
        Book moved = MoveEffect.Of(Home, Entry("cash/pot:food", "cash/pot:boots", 10) with { Date = new(2026, 3, 14) }).Value!.Book;

        Assert.Equal((Usd(110), Usd(0)), (moved.Has("cash/wallet:food"), moved.Has("cash/pot:food")));
        Assert.Equal([Friday6March, Friday13March], moved.Weeks.Fills.Select(fill => fill.Key.Day));
        Assert.Empty(Moving.Undo(moved, 1, new(2026, 3, 15)).Value!.Weeks.Fills);
    }

    // What came on the 13th can't have been moved on the 10th.
    [Fact]
    public void Enter_BeforeTheMoneyWasThere_IsDatedAsItCame()
    {
        Money before = Home.Has("account/buffer");
        Book gift = Entering.Enter(Home, new EntryWish(Friday13March, EntryKind.Gift, MoveEnds.Buffer, Usd(100), "gift")).Value!;

        Assert.Equal(Tuesday10, Effect(gift, "account/buffer", "account/pot:gifts", before.ToDecimal()).Book.Ledger.Movements[^1].Date);
        Book later = Effect(gift, "account/buffer", "account/pot:gifts", before.ToDecimal() + 1).Book;
        Assert.Equal((Friday13March, Tuesday10), (later.Ledger.Movements[^1].Date, later.Weeks.Moves[0].Date));
    }

    [Fact]
    public void Enter_OnTheHouseholdsFirstDay_IsTheEarliest()
    {
        MoveEntry entry = Entry("account/pot:gifts", "account/buffer", 5);

        Assert.True(Moving.Enter(Home, entry with { Date = Friday6March }).Ok);
        Assert.Equal(new MoveFault.BeforeStart(new(2026, 3, 5), Friday6March), Moving.Enter(Home, entry with { Date = new(2026, 3, 5) }).Fault);
    }

    // The ledger's list says what each movement was.
    [Theory]
    [InlineData(" clutch ", "moved: clutch")]
    [InlineData(" ", "moved")]
    public void Enter_ItsMovement_SaysWhy(string why, string reason)
    {
        Book moved = MoveEffect.Of(Home, Entry("account/pot:gifts", "account/buffer", 5) with { Why = why }).Value!.Book;

        Assert.Equal(reason, moved.Ledger.Movements[^1].Reason);
        Assert.Equal("move undone", Moving.Undo(moved, 1, Tuesday10).Value!.Ledger.Movements[^1].Reason);
    }

    // 1,000 came on 300 below zero: the buffer has 1,000 where the account has 700 and may go 50 below.
    [Theory]
    [InlineData(750, true)]
    [InlineData(755, false)]
    public void Enter_FetchedFromAnAccountWithAnOverdraft_IsHeldToWhatItCanGive(int amount, bool fits)
    {
        Book below = Book.Begin(Bare with { Opening = Bare.Opening with { Account = Usd(-300) }, Settings = Bare.Settings with { Overdraft = Usd(50) } });
        Book home = Entering.Enter(below, new EntryWish(Friday6March, EntryKind.Gift, MoveEnds.Buffer, Usd(1000), "gift")).Value!;
        MoveEntry entry = Entry("account/buffer", "cash/buffer", amount, (5, amount / 5));

        Assert.Equal(fits ? null : new MoveFault.AccountHasLess(Usd(750), Usd(amount)), Moving.Enter(home, entry).Fault);
        Assert.Equal(new MoveFault.HasLess(MoveEnds.Buffer, null, Usd(1000), Usd(1005)), Moving.Enter(home, Entry("account/buffer", "cash/buffer", 1005, (5, 201))).Fault);
    }

    // The emergency of a Tuesday: notes out of an envelope that was never opened are known.
    [Fact]
    public void Enter_FromAnEnvelopeAtHome_NotesAreKnownWhereTheyAreNamed()
    {
        Notes boots = PotNotes.Of(Home).AtHome(new PotId("boots"))!;
        Book all = Effect(Home, "cash/pot:boots", "cash/pot:food", boots.Worth(Dollars).ToDecimal()).Book;

        Assert.Equal(Core.Cash.Notes.None, PotNotes.Of(all).AtHome(new PotId("boots")));
        Assert.Equal(boots, PotNotes.Of(all).InWallet(new PotId("food")));
        Assert.Null(PotNotes.Of(Effect(Home, "cash/pot:boots", "cash/pot:food", 10).Book).AtHome(new PotId("boots")));
    }

    [Theory]
    [InlineData("account/pot:gifts", "account/pot:gifts", 5, "Both are the same; choose another one to move it to.")]
    [InlineData("account/pot:gifts", "account/buffer", 0, "Write an amount above zero.")]
    [InlineData("account/pot:gifts", "account/buffer", 15.01, "Gifts has 15.00, less than 15.01; write that much at most.")]
    [InlineData("cash/pot:food", "cash/pot:fares", 121, "Food has 120.00, less than 121.00; write that much at most.")]
    [InlineData("account/buffer", "owed/card", 6400, "5940.00 is owed on Card, less than 6400.00; move that much at most.")]
    [InlineData("account/buffer", "cash/buffer", 40, "Say which notes are fetched: loose ones are known by their values.")]
    [InlineData("owed/card", "account/buffer", 40, "Nothing can be moved from there; choose a pot, a bill, the buffer or the loose notes.")]
    [InlineData("account/buffer", "cash/pot:gifts", 40, "Nothing can be moved there; choose a pot, a bill, a debt, the buffer or the loose notes.")]
    [InlineData("account/buffer", "account/left-to-place", 40, "Nothing can be moved there; choose a pot, a bill, a debt, the buffer or the loose notes.")]
    public void Enter_WhatCannotBe_IsRefused(string from, string to, decimal amount, string fault) => Assert.Equal(
        fault, Moving.Enter(Home, Entry(from, to, amount)).Fault.Said(NumberStyle.Plain));

    [Fact]
    public void Enter_NotesThatCannotBe_AreRefused()
    {
        Assert.Equal("The notes come to 20.00, not 40.00.", Said("account/buffer", "cash/pot:food", 40, (20, 1)));
        Assert.Equal("No notes change hands by this; leave them out.", Said("account/buffer", "account/pot:gifts", 40, (20, 2)));
        Assert.Equal("No notes change hands by this; leave them out.", Said("cash/pot:food", "account/buffer", 40, (20, 2)));
        Assert.Equal("Those notes aren't among the loose ones; name others.", Moving.Enter(WithLoose, Entry("cash/buffer", "cash/pot:food", 50, (50, 1))).Fault.Said());
        Assert.Equal("The loose notes can't make 2.00 exactly; write an amount that they make.", Moving.Enter(WithLoose, Entry("cash/buffer", "cash/pot:food", 2)).Fault.Said());
        Assert.Equal("Those notes aren't in Boots; name others, or count it by notes first.", Said("cash/pot:boots", "cash/pot:food", 20, (20, 1)));
    }

    [Fact]
    public void Undo_WhatCannotBe_SaysWhatComesFirst()
    {
        Book moved = Effect(Home, "account/buffer", "account/pot:gifts", 40).Book;
        Book spent = moved.Spend("gifts", 50, Tuesday10);
        Book counted = Effect(Home, "cash/pot:food", "cash/pot:fares", 10).Book.Count(new(2026, 3, 12), "fares", 30);

        Assert.Equal("The money of move 1 has gone on since, to card purchase 1; take that back first.", Moving.Undo(spent, 1, Tuesday10).Fault.Said());
        Assert.Equal("Fares was counted on 12 Mar 2026 with move 1 in it; take that count back first.", Moving.Undo(counted, 1, Friday13March).Fault.Said());
        Assert.Equal("There is no move 2.", Moving.Undo(moved, 2, Tuesday10).Fault.Said());
        Assert.Equal("Move 1 is undone already.", Moving.Undo(Moving.Undo(moved, 1, Tuesday10).Value!, 1, Tuesday10).Fault.Said());
    }

    // The loose notes stay at home when the payday is closed.
    private static readonly Book WithLoose = Book.Begin(House with { Opening = House.Opening with { LooseNotes = Notes((5, 6), (10, 2)) } });

    private static string? Said(string from, string to, decimal amount, params (long, int)[] notes) => Moving.Enter(Home, Entry(from, to, amount, notes)).Fault.Said();

    private static MoveEffect Effect(Book book, string from, string to, decimal amount, params (long, int)[] notes)
    {
        Result<MoveEffect> effect = MoveEffect.Of(book, Entry(from, to, amount, notes));
        Assert.True(effect.Ok, effect.Fault.Said());
        return effect.Value;
    }

    private static MoveEntry Entry(string from, string to, decimal amount, params (long, int)[] notes) =>
        new(Tuesday10, LedgerEnd.FromKey(from), LedgerEnd.FromKey(to), Usd(amount), "clutch", notes.Length == 0 ? null : Notes(notes));
}
