using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.NotesAtHome;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.AccountEntries;

/// <summary>Rule (design, 13): money that comes in or goes out outside a payday. The figures are worked out by hand.</summary>
public class EnteringTests
{
    private static readonly LocalDate Tuesday10 = new(2026, 3, 10);

    private static readonly Book Home = Close(Book.Begin(House with { Bills = [Bill("Rent", 310, new(2026, 3, 25), essential: true)] }), Friday6March);
    private static readonly Book WithLoose = Book.Begin(House with { Opening = House.Opening with { LooseNotes = Notes((5, 6), (10, 2)) } });

    // What it is, what it is for, how much; which end of the ledger it changes by how much, and the account by how much.
    [Theory]
    [InlineData(EntryKind.Interest, "account/buffer", 1.12, "account/buffer", 1.12, 1.12)]
    [InlineData(EntryKind.Fee, "account/buffer", -12.50, "outside/entry:fee", 12.50, -12.50)]
    [InlineData(EntryKind.Gift, "account/left-to-place", 50, "account/left-to-place", 50, 50)]
    [InlineData(EntryKind.Gift, "cash/pot:food", 50, "account/kept-back:food", 50, 50)]
    [InlineData(EntryKind.Transfer, "account/pot:gifts", 30, "account/pot:gifts", 30, 30)]
    [InlineData(EntryKind.Transfer, "account/buffer", -30, "account/buffer", -30, -30)]
    [InlineData(EntryKind.Payment, "account/pot:gifts", -15, "outside/spending:gifts", 15, -15)]
    [InlineData(EntryKind.Refund, "account/set-aside:rent", 20, "account/set-aside:rent", 20, 20)]
    [InlineData(EntryKind.Borrowing, "owed/card", 200, "account/left-to-place", 200, 200)]
    [InlineData(EntryKind.Fee, "owed/card", -25, "owed/card", -25, 0)]
    [InlineData(EntryKind.Interest, "owed/card", -7.31, "outside/interest:card", 7.31, 0)]
    [InlineData(EntryKind.Refund, "cash/pot:food", 4, "account/kept-back:food", 4, 4)]
    public void Enter_ChangesWhatItIsFor_AndUndoTakesItBack(EntryKind kind, string key, decimal amount, string end, decimal more, decimal inAccount)
    {
        Book entered = Enter(Home, kind, key, amount);

        Assert.Equal(Home.Has(end) + Usd(more), entered.Has(end));
        Assert.Equal(Home.Ledger.Balances.In(Place.Account) + Usd(inAccount), entered.Ledger.Balances.In(Place.Account));
        Assert.Equal(Home.Ledger.Balances.In(Place.Cash), entered.Ledger.Balances.In(Place.Cash));
        AssertSound(entered);
        bool isPurchase = kind == EntryKind.Refund && key.StartsWith("cash", StringComparison.Ordinal);
        Assert.Equal(isPurchase ? (0, 1) : (1, 0), (entered.Weeks.Entries.Length, entered.Weeks.Purchases.Count));
        if (isPurchase)
        {
            return;
        }

        Assert.Equal(Home.Ledger.Balances.All.OrderBy(pair => pair.Key.Key), Entering.Undo(entered, 1, Tuesday10).Value!.Ledger.Balances.All.OrderBy(pair => pair.Key.Key));
    }

    [Fact]
    public void Enter_PayOfASourceOnADayOfItsOwn_IsPlacedByTheNextPayday()
    {
        Book paid = Entering.Enter(Home, Wish(EntryKind.Income, "account/left-to-place", 300) with { Source = new SourceId("wage") }).Value!;
        RoutinePlan plan = Routine.Plan(paid, new RoutineDraft(Routine.Next(paid).Value)).Value!;

        Assert.Equal(Usd(300), plan.Income.CarriedOver);
        Assert.Equal(Usd(-1300), paid.Has("outside/source:wage"));
        Assert.True(Closing.Of(plan).Ok);
    }

    [Fact]
    public void Enter_CashGifts_GoInAsNotes()
    {
        Book gift = Enter(Home, EntryKind.Gift, "cash/buffer", 30, cash: true, notes: [(20, 1), (10, 1)]);
        Book food = Enter(Home, EntryKind.Gift, "cash/pot:boots", 20, cash: true, notes: [(20, 1)]);

        Assert.Equal(PotNotes.Of(Home).Loose.Plus(Notes((20, 1), (10, 1))), PotNotes.Of(gift).Loose);
        Assert.Equal(PotNotes.Of(Home).AtHome(new PotId("boots"))!.Plus(Notes((20, 1))), PotNotes.Of(food).AtHome(new PotId("boots")));
        Assert.Equal(Home.Ledger.Balances.In(Place.Cash) + Usd(30), gift.Ledger.Balances.In(Place.Cash));
    }

    [Fact]
    public void Enter_CashLost_IsANamedLoss()
    {
        Book lost = Enter(Home, EntryKind.Loss, "cash/pot:food", -20, cash: true);

        Assert.Equal((Usd(20), Home.Ledger.Balances.In(Place.Cash) - Usd(20)), (lost.Has("outside/entry:loss"), lost.Ledger.Balances.In(Place.Cash)));
        Assert.Equal("lost: what", lost.Ledger.Movements[^1].Reason);
        Assert.Equal("Say what it was: a loss goes by its name.", Entering.Enter(Home, Wish(EntryKind.Loss, "cash/pot:food", -20) with { IsCash = true, What = " " }).Fault.Said());
    }

    // Two twenties that became a twenty and two tens, and five that nobody can find.
    [Fact]
    public void CountLoose_StandsAsItWasFound()
    {
        Book counted = Entering.CountLoose(WithLoose, Tuesday10, Notes((20, 1), (10, 1), (5, 3)), "coffee").Value!;

        Assert.Equal(Notes((20, 1), (10, 1), (5, 3)), PotNotes.Of(counted).Loose);
        Assert.Equal((Usd(45), Usd(5), Usd(-5)), (counted.Has("cash/buffer"), counted.Has("outside/entry:loss"), counted.Weeks.Entries[0].Amount));
        Book changed = Entering.CountLoose(WithLoose, Tuesday10, Notes((50, 1)), "").Value!;
        Assert.Equal((Notes((50, 1)), 0), (PotNotes.Of(changed).Loose, changed.Ledger.Movements.Count - WithLoose.Ledger.Movements.Count));
        Assert.Equal("The loose notes are just what they are known to be; there is nothing to write.", Entering.CountLoose(WithLoose, Tuesday10, Notes((5, 6), (10, 2)), "").Fault.Said());
        Assert.Equal(PotNotes.Of(WithLoose).Loose, PotNotes.Of(Entering.Undo(changed, 1, Tuesday10).Value!).Loose);
    }

    // What was counted can't change under the count.
    [Fact]
    public void CountLoose_KeepsWhatMovedThemBefore()
    {
        Book moved = Core.Moves.Moving.Enter(WithLoose, new Core.Moves.MoveEntry(Tuesday10, LedgerEnd.FromKey("cash/buffer"), LedgerEnd.FromKey("cash/pot:boots"), Usd(10), "")).Value!;
        Book counted = Entering.CountLoose(moved, Tuesday10, Notes((20, 2)), "").Value!;

        Assert.Equal("The loose notes were counted on 10 Mar 2026 with move 1 in it; take that count back first.", Core.Moves.Moving.Undo(counted, 1, Tuesday10).Fault.Said());
        Book spent = Core.Moves.Moving.Enter(counted, new Core.Moves.MoveEntry(Tuesday10, LedgerEnd.FromKey("cash/buffer"), LedgerEnd.FromKey("cash/pot:boots"), Usd(20), "")).Value!;
        Assert.Equal("The money of the count of the loose notes on 10 Mar 2026 has gone on since, to move 2; take that back first.", Entering.Undo(spent, 1, Tuesday10).Fault.Said());
    }

    [Theory]
    [InlineData(EntryKind.Fee, "account/buffer", 0, "Write an amount above zero.")]
    [InlineData(EntryKind.Fee, "account/buffer", 5, "A fee never comes in; choose another kind.")]
    [InlineData(EntryKind.Income, "account/buffer", -5, "Income never goes out; choose another kind.")]
    [InlineData(EntryKind.Borrowing, "account/buffer", 5, "What is borrowed comes in for a debt; choose the debt.")]
    [InlineData(EntryKind.Loss, "account/buffer", -5, "Only cash is lost; choose a pot in cash or the loose notes.")]
    [InlineData(EntryKind.Gift, "owed/card", 5, "A gift isn't for a debt: there a fee or interest goes out, and what is borrowed comes in.")]
    [InlineData(EntryKind.Payment, "cash/pot:food", -5, "Food is in cash: what the account paid for it is a card purchase, and cash that was spent is found by its count.")]
    [InlineData(EntryKind.Payment, "account/pot:gifts", -15.01, "Gifts has 15.00, less than 15.01; write that much at most.")]
    [InlineData(EntryKind.Payment, "account/left-to-place", -5, "A payment isn't for that; choose another kind, or what it is for.")]
    [InlineData(EntryKind.Gift, "cash/buffer", 5, "Say which notes came: loose ones are known by their values.")]
    [InlineData(EntryKind.Gift, "account/pot:none", 5, "A gift isn't for that; choose another kind, or what it is for.")]
    public void Enter_WhatCannotBe_IsRefused(EntryKind kind, string key, decimal amount, string fault) =>
        Assert.Equal(fault, Entering.Enter(Home, Wish(kind, key, amount)).Fault.Said(NumberStyle.Plain));

    [Fact]
    public void Enter_ChequesAndNotesWhereNoneAre_AreRefused()
    {
        Assert.Equal("A cheque goes out of the account; leave its number out.", Entering.Enter(Home, Wish(EntryKind.Gift, "account/buffer", 5) with { Cheque = 118 }).Fault.Said());
        Assert.Equal("Notes are of cash; leave them out for money of the account.", Entering.Enter(Home, Wish(EntryKind.Gift, "account/buffer", 5) with { Notes = Notes((5, 1)) }).Fault.Said());
        Assert.Equal("cheque 118: what", Entering.Enter(Home, Wish(EntryKind.Payment, "account/pot:gifts", -5) with { Cheque = 118 }).Value!.Ledger.Movements[^1].Reason);
    }

    // The ledger's list says what each was, with its words where it has any.
    [Theory]
    [InlineData(EntryKind.Interest, "account/buffer", 1, "interest")]
    [InlineData(EntryKind.Fee, "account/buffer", -1, "fee")]
    [InlineData(EntryKind.Gift, "account/buffer", 1, "gift")]
    [InlineData(EntryKind.Transfer, "account/buffer", -1, "transfer")]
    [InlineData(EntryKind.Payment, "account/pot:gifts", -1, "payment")]
    [InlineData(EntryKind.Refund, "account/set-aside:rent", 1, "refund")]
    [InlineData(EntryKind.Income, "account/buffer", 1, "income")]
    [InlineData(EntryKind.Borrowing, "owed/card", 1, "borrowed")]
    public void Enter_ItsMovement_SaysWhatItWas(EntryKind kind, string key, decimal amount, string said)
    {
        Book named = Entering.Enter(Home, Wish(kind, key, amount) with { What = " shed " }).Value!;

        Assert.Equal(($"{said}: shed", "shed"), (named.Ledger.Movements[^1].Reason, named.Weeks.Entries[0].What));
        Assert.Equal("entry undone", Entering.Undo(named, 1, Tuesday10).Value!.Ledger.Movements[^1].Reason);
        if (kind != EntryKind.Income)
        {
            Assert.Equal(said, Entering.Enter(Home, Wish(kind, key, amount) with { What = " " }).Value!.Ledger.Movements[^1].Reason);
        }
    }

    // Of a source without one, what it was is all that is known of it.
    [Fact]
    public void Enter_IncomeOfNoSource_NeedsAName()
    {
        EntryWish wish = Wish(EntryKind.Income, "account/buffer", 30);

        Assert.Equal(new EntryFault.NameNeeded(EntryKind.Income), Entering.Enter(Home, wish with { What = " " }).Fault);
        Assert.Equal(LedgerEnd.OneOff("what"), Entering.Enter(Home, wish).Value!.Ledger.Movements[^1].From);
        Assert.True(Entering.Enter(Home, wish with { What = "", Source = new SourceId("wage") }).Ok);
    }

    [Fact]
    public void Enter_OnTheHouseholdsFirstDay_IsTheEarliest()
    {
        EntryWish wish = Wish(EntryKind.Fee, "account/buffer", -5);

        Assert.True(Entering.Enter(Home, wish with { Date = Friday6March }).Ok);
        Assert.Equal(new EntryFault.BeforeStart(new(2026, 3, 5), Friday6March), Entering.Enter(Home, wish with { Date = new(2026, 3, 5) }).Fault);
        Assert.True(Entering.CountLoose(WithLoose, Friday6March, Notes((50, 1)), "").Ok);
        Assert.Equal(new EntryFault.BeforeStart(new(2026, 3, 5), Friday6March), Entering.CountLoose(WithLoose, new(2026, 3, 5), Notes((50, 1)), "").Fault);
    }

    // A cheque is written on the account, for what goes out of it.
    [Theory]
    [InlineData(EntryKind.Payment, "account/pot:gifts", -5, false, true)]
    [InlineData(EntryKind.Gift, "account/pot:gifts", 5, false, false)]
    [InlineData(EntryKind.Loss, "cash/pot:food", -5, true, false)]
    [InlineData(EntryKind.Loss, "cash/buffer", -5, false, false)]
    [InlineData(EntryKind.Fee, "owed/card", -5, false, false)]
    public void Enter_ByCheque_IsWhereItGoesOut(EntryKind kind, string key, decimal amount, bool isCash, bool goes) =>
        Assert.Equal(goes ? null : new EntryFault.NoCheque(), Entering.Enter(WithLooseHome, Wish(kind, key, amount) with { Cheque = 118, IsCash = isCash }).Fault);

    // 50 lie loose in six fives and two tens: all can go, by name or not, and nothing that isn't there.
    [Fact]
    public void Enter_LooseNotesLost_AreThoseThatAreThere()
    {
        EntryWish wish = Wish(EntryKind.Loss, "cash/buffer", -50);

        Assert.Equal(Notes((5, 6), (10, 2)), Entering.Enter(WithLoose, wish).Value!.Weeks.Entries[0].Notes);
        Assert.Equal(Usd(0), Entering.Enter(WithLoose, wish with { Notes = Notes((5, 6), (10, 2)) }).Value!.Has("cash/buffer"));
        Assert.Equal(new EntryFault.HasLess(LedgerEnd.InCash(Purpose.Buffer), null, Usd(50), Usd(55)), Entering.Enter(WithLoose, wish with { Amount = Usd(-55) }).Fault);
        Assert.Equal(new EntryFault.NotInNotes(Usd(2)), Entering.Enter(WithLoose, wish with { Amount = Usd(-2) }).Fault);
        Assert.Equal(new EntryFault.NotesNotThere(), Entering.Enter(WithLoose, wish with { Notes = Notes((50, 1)) }).Fault);
        Assert.Equal(new EntryFault.NotesDiffer(Usd(45), Usd(50)), Entering.Enter(WithLoose, wish with { Notes = Notes((5, 9)) }).Fault);

        // What comes in need not be there before.
        Assert.True(Entering.Enter(WithLoose, Wish(EntryKind.Gift, "cash/buffer", 50) with { Notes = Notes((50, 1)) }).Ok);
    }

    // Cash that is given away or found; the wallet's fills up to that day count as done.
    [Fact]
    public void Enter_CashOfAPot_IsOutOfItsWallet()
    {
        Book given = Enter(Home, EntryKind.Gift, "cash/pot:food", -20, cash: true);
        Assert.Equal((Usd(40), Usd(60), Usd(20)), (given.Has("cash/wallet:food"), given.Has("cash/pot:food"), given.Has("outside/entry:gift")));
        Assert.Equal([Friday6March], given.Weeks.Fills.Select(fill => fill.Key.Day));
        Assert.Empty(Entering.Undo(given, 1, Tuesday10).Value!.Weeks.Fills);

        Book found = Enter(Home, EntryKind.Loss, "cash/pot:food", 20, cash: true);
        Assert.Equal((Usd(20), Usd(-20), "found: what"), (found.Has("cash/wallet:food"), found.Has("outside/entry:loss"), found.Ledger.Movements[^1].Reason));
        Assert.Equal(new EntryFault.HasLess(LedgerEnd.FromKey("cash/pot:food"), "Food", Usd(120), Usd(121)), Entering.Enter(Home, Wish(EntryKind.Loss, "cash/pot:food", -121) with { IsCash = true }).Fault);
        Assert.Equal(Usd(0), Enter(Home, EntryKind.Loss, "cash/pot:food", -120, cash: true).Has("cash/pot:food"));
    }

    // No more can be taken from what is to be placed than is there.
    [Fact]
    public void Enter_OutOfWhatIsToBePlaced_IsHeldToThat()
    {
        Book gift = Enter(Home, EntryKind.Gift, "account/left-to-place", 50);

        Assert.Equal(Usd(0), Enter(gift, EntryKind.Fee, "account/left-to-place", -50).Has("account/left-to-place"));
        Assert.IsType<EntryFault.HasLess>(Entering.Enter(gift, Wish(EntryKind.Fee, "account/left-to-place", -50.01m)).Fault);
    }

    // What came on the 13th can't have gone out on the 10th.
    [Fact]
    public void Enter_BeforeTheMoneyWasThere_IsDatedAsItCame()
    {
        Book gift = Entering.Enter(Home, Wish(EntryKind.Gift, "account/pot:gifts", 100) with { Date = Friday13March }).Value!;

        Assert.Equal(Tuesday10, Enter(gift, EntryKind.Payment, "account/pot:gifts", -15).Ledger.Movements[^1].Date);
        Book late = Enter(gift, EntryKind.Payment, "account/pot:gifts", -16);
        Assert.Equal((Friday13March, Tuesday10), (late.Ledger.Movements[^1].Date, late.Weeks.Entries[^1].Date));
    }

    // More is there than was known: it was found.
    [Fact]
    public void CountLoose_MoreThanWasKnown_IsFound()
    {
        Book counted = Entering.CountLoose(WithLoose, Tuesday10, Notes((20, 3)), "drawer").Value!;

        Assert.Equal((Usd(60), Usd(-10), "found: drawer"), (counted.Has("cash/buffer"), counted.Has("outside/entry:loss"), counted.Ledger.Movements[^1].Reason));
        Assert.Equal(new EntryFault.NameNeeded(EntryKind.Loss), Entering.CountLoose(WithLoose, Tuesday10, Notes((20, 3)), " ").Fault);
        Assert.Equal(Usd(0), Entering.CountLoose(WithLoose, Tuesday10, Core.Cash.Notes.None, "all gone").Value!.Has("cash/buffer"));
        Assert.Equal(PotNotes.Of(WithLoose).Loose, PotNotes.Of(Entering.Undo(counted, 1, Tuesday10).Value!).Loose);
    }

    [Theory]
    [InlineData(EntryKind.Refund, -5)]
    [InlineData(EntryKind.Income, -5)]
    [InlineData(EntryKind.Fee, 5)]
    [InlineData(EntryKind.Payment, 5)]
    public void Enter_TheWrongWay_IsRefused(EntryKind kind, decimal amount) =>
        Assert.Equal(new EntryFault.WrongWay(kind, amount > 0), Entering.Enter(Home, Wish(kind, "account/set-aside:rent", amount)).Fault);

    // The bill has its own again, or pays for it; what no one is paid for can't be.
    [Theory]
    [InlineData(EntryKind.Payment, "account/set-aside:rent", -5, "outside/bill:rent")]
    [InlineData(EntryKind.Refund, "account/set-aside:rent", 5, "outside/bill:rent")]
    [InlineData(EntryKind.Payment, "account/buffer", -5, "outside/spending")]
    [InlineData(EntryKind.Refund, "account/left-to-place", 5, null)]
    [InlineData(EntryKind.Loss, "owed/card", -5, null)]
    [InlineData(EntryKind.Borrowing, "owed/card", -5, null)]
    [InlineData(EntryKind.Fee, "owed/card", 5, null)]
    [InlineData(EntryKind.Interest, "owed/card", 5, null)]
    public void Enter_ForAnEnd_ComesFromOrGoesToItsOther(EntryKind kind, string key, decimal amount, string? other)
    {
        Result<Book> entered = Entering.Enter(Home, Wish(kind, key, amount));

        Assert.Equal(other is null ? new EntryFault.NotFor(kind, LedgerEnd.FromKey(key), key == "owed/card" ? "Card" : null) : null, entered.Fault);
        Assert.Equal(other, entered.Ok ? (amount < 0 ? entered.Value.Ledger.Movements[^1].To : entered.Value.Ledger.Movements[^1].From).Key : null);
    }

    [Theory]
    [InlineData("account/pot:gifts", EntryKind.Gift)]
    [InlineData("cash/pot:food", EntryKind.Payment)]
    [InlineData("cash/pot:food", EntryKind.Refund)]
    [InlineData("account/buffer", EntryKind.Refund)]
    public void Enter_CashWhereThereIsNone_IsRefused(string key, EntryKind kind) => Assert.IsType<EntryFault.NotFor>(
        Entering.Enter(Home, Wish(kind, key, kind == EntryKind.Payment ? -5 : 5) with { IsCash = true }).Fault);

    // A refund in loose notes is none of a card purchase: which notes came has to be said.
    [Fact]
    public void Enter_ARefundInLooseNotes_NeedsThem() => Assert.Equal(
        new EntryFault.NotesNeeded(), Entering.Enter(Home, Wish(EntryKind.Refund, "cash/buffer", 5)).Fault);

    [Fact]
    public void Undo_WhatCannotBe_SaysWhatComesFirst()
    {
        Book spent = Enter(Home, EntryKind.Transfer, "account/pot:gifts", 30).Spend("gifts", 40, Tuesday10);

        Assert.Equal("The money of the transfer of 10 Mar 2026 (account entry 1) has gone on since, to card purchase 1; take that back first.", Entering.Undo(spent, 1, Tuesday10).Fault.Said());
        Assert.Equal("There is no account entry 2.", Entering.Undo(spent, 2, Tuesday10).Fault.Said());
        Book undone = Entering.Undo(Enter(Home, EntryKind.Transfer, "account/pot:gifts", 30), 1, Tuesday10).Value!;
        Assert.IsType<Core.Undo.Obstacle.UndoneAlready>(Entering.InTheWay(undone, 1));
    }

    // As Home, with the loose notes of the other.
    private static Book WithLooseHome { get; } = Entering.Enter(Home, Wish(EntryKind.Gift, "cash/buffer", 50) with { Notes = Notes((5, 6), (10, 2)) }).Value!;

    private static Book Enter(Book book, EntryKind kind, string key, decimal amount, bool cash = false, (long, int)[]? notes = null)
    {
        Result<Book> entered = Entering.Enter(book, Wish(kind, key, amount) with { IsCash = cash, Notes = notes is null ? null : Notes(notes) });
        Assert.True(entered.Ok, entered.Fault.Said());
        return entered.Value;
    }

    private static EntryWish Wish(EntryKind kind, string key, decimal amount) => new(Tuesday10, kind, LedgerEnd.FromKey(key), Usd(amount), "what");
}
