using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Cash;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.NotesAtHome;
using Payday.Core.StatementTaking;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using Payday.Statements.Lines;
using Payday.Statements.Taking;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.StatementTaking;

/// <summary>Cash that a statement shows and the book doesn't know: fetched between paydays, brought, what was owed back; and moves to debts and other accounts.</summary>
public class CashLineTests
{
    private static readonly LocalDate Today = new(2026, 4, 2);

    private static readonly Household Home = House with
    {
        Opening = House.Opening with { Account = Usd(1500) },
    };

    // With three loose tens.
    private static readonly Book Book = Entering.Enter(
        Close(Core.Books.Book.Begin(Home), Friday6March), new EntryWish(Day(6), EntryKind.Gift, MoveEnds.Loose, Usd(30), "aunt") { Notes = Notes((10, 3)) }).Value!;

    private static readonly LedgerEnd Food = LedgerEnd.InCash(Purpose.Pot(new PotId("food")));
    private static readonly LedgerEnd Gifts = LedgerEnd.InAccount(Purpose.Pot(new PotId("gifts")));
    private static readonly LedgerEnd KeptForFood = LedgerEnd.InAccount(Purpose.KeptBack(new PotId("food")));

    [Fact]
    public void Fetched_ForAPot_IsInItsCash_OutOfTheBuffer_AndOneLineAtTheBank()
    {
        Book after = Take(Line(9, -40, "ATM 12"), new LineTarget(LineUse.Cash, Food));
        Assert.Equal(MoveEnds.Has(Book, Food) + Usd(40), MoveEnds.Has(after, Food));
        Assert.Equal(Book.Ledger.Balances[MoveEnds.Buffer] - Usd(40), after.Ledger.Balances[MoveEnds.Buffer]);
        Move move = after.Weeks.Moves[^1];
        Assert.Equal((MoveEnds.Buffer, Food, Day(9), "ATM 12"), (move.From, move.To, move.Date, move.Why));
        Assert.Equal(Notes((20, 2)), move.Notes);
        AccountLine line = AccountLines.Of(after).All.Single(one => one.Amount == Usd(-40));
        Assert.Equal(AccountLineKind.Withdrawal, line.Kind);
        Assert.Contains(line.Number, AccountLines.AtBank(after));
        Assert.Equal(new WrittenRecord(WrittenKind.Move, move.Number), after.Weeks.Takings[^1].Lines[^1].Wrote);
        Assert.Equal(0, after.Weeks.Reconciliations[^1].Difference.MinorUnits);
    }

    [Theory]
    [InlineData(20, true)]
    [InlineData(19, false)]
    public void Fetched_ForAPot_TakesWhatWaitsForItWhereThatIsEnough(decimal waits, bool comesOfIt)
    {
        Book book = Moving.Enter(Book, new MoveEntry(Day(7), MoveEnds.Buffer, Food, Usd(waits), "")).Value!;
        Money before = book.Ledger.Balances[KeptForFood];
        Assert.True(before < Usd(21));
        Book after = Take(book, Line(9, -20, "ATM"), new LineTarget(LineUse.Cash, Food));
        Assert.Equal(comesOfIt ? before - Usd(20) : before, after.Ledger.Balances[KeptForFood]);
    }

    [Fact]
    public void Fetched_AsLooseNotes_LiesThereByValue_FromThePurposeThatIsNamed()
    {
        Money had = Book.Ledger.Balances[Gifts];
        Book after = Take(Line(9, -15, "ATM"), new LineTarget(LineUse.Cash, MoveEnds.Loose) { Other = Gifts });
        Assert.Equal(had - Usd(15), after.Ledger.Balances[Gifts]);
        Assert.Equal(PotNotes.Of(Book).Loose.Plus(Notes((10, 1), (5, 1))), PotNotes.Of(after).Loose);
        Book named = Take(Book, Line(9, -15, "ATM"), new LineTarget(LineUse.Cash, MoveEnds.Loose) { Other = Gifts }, Notes((5, 3)));
        Assert.Equal(PotNotes.Of(Book).Loose.Plus(Notes((5, 3))), PotNotes.Of(named).Loose);
    }

    // No note makes 12.50: a pot's are then not known, and the loose ones always are.
    [Fact]
    public void Fetched_InNoNotes_IsForAPotOnly()
    {
        Book after = Take(Line(9, -12.5m, "ATM"), new LineTarget(LineUse.Cash, Food));
        Assert.Null(after.Weeks.Moves[^1].Notes);
        Assert.Equal(MoveEnds.Has(Book, Food) + Usd(12.5m), MoveEnds.Has(after, Food));
        Assert.IsType<MoveFault.NotInNotes>(Refused(Book, Line(9, -12.5m, "ATM"), new LineTarget(LineUse.Cash, MoveEnds.Loose)));
    }

    [Fact]
    public void Fetched_FromAMachine_IsInItsNotesWhereItGivesTheAmount()
    {
        Household machine = Home with { Settings = Home.Settings with { Bank = new CashSource.Machine([Usd(20)], Usd(40)) } };
        Assert.Equal(Notes((20, 3)), CashLine.Fewest(machine, Usd(60)));
        Assert.Equal(Notes((20, 1), (10, 1)), CashLine.Fewest(machine, Usd(30)));
        Assert.Null(CashLine.Fewest(machine, Usd(0.5m)));
    }

    [Fact]
    public void Brought_FromLooseNotesOrAPot_IsInTheAccountAtOnce()
    {
        Book loose = Take(Line(9, 20, "DEPOSIT"), new LineTarget(LineUse.Cash, MoveEnds.Loose));
        Assert.Equal(Book.Ledger.Balances[MoveEnds.Loose] - Usd(20), loose.Ledger.Balances[MoveEnds.Loose]);
        Assert.Equal(Book.Ledger.Balances[MoveEnds.Buffer] + Usd(20), loose.Ledger.Balances[MoveEnds.Buffer]);

        Book pot = Take(Line(9, 20, "DEPOSIT"), new LineTarget(LineUse.Cash, Food) { Other = Gifts });
        Assert.Equal(MoveEnds.Has(Book, Food) - Usd(20), MoveEnds.Has(pot, Food));
        Assert.Equal(Book.Ledger.Balances[Gifts] + Usd(20), pot.Ledger.Balances[Gifts]);
        Assert.Empty(OwedItems.Of(pot));
        AccountLine line = AccountLines.Of(pot).All.Single(one => one.Amount == Usd(20));
        Assert.Equal((AccountLineKind.Deposit, true), (line.Kind, AccountLines.AtBank(pot).Contains(line.Number)));
    }

    [Fact]
    public void Brought_MoreThanThere_IsRefused() =>
        Assert.IsType<MoveFault.HasLess>(Refused(Book, Line(9, 2000, "DEPOSIT"), new LineTarget(LineUse.Cash, MoveEnds.Loose)));

    [Fact]
    public void Return_OfAllThatIsOwed_OrOfTheOnlyPotsThatComeToIt()
    {
        Book owed = Book.Spend("food", 12, Day(8)).Spend("fares", 5, Day(8));
        Money all = ReturnPlan.Of(owed, ReturnDraft.AsPlanned).Total;
        Assert.Equal(Usd(20), all);
        Book whole = Take(owed, Line(9, 20, "DEPOSIT"), new LineTarget(LineUse.Return));
        Assert.Empty(OwedItems.Of(whole));
        Assert.Equal(WrittenKind.Return, whole.Weeks.Takings[^1].Lines[^1].Wrote!.Kind);
        Book part = Take(owed, Line(9, 15, "DEPOSIT"), new LineTarget(LineUse.Return));
        Assert.Equal(new PotId("fares"), Assert.Single(OwedItems.Of(part)).PotId);
        Assert.IsType<TakingFault.OtherAmount>(Refused(owed, Line(9, 10, "DEPOSIT"), new LineTarget(LineUse.Return)));
        Assert.IsType<TakingFault.OtherAmount>(Refused(Book, Line(9, 10, "DEPOSIT"), new LineTarget(LineUse.Return)));
    }

    // What the return pays on a debt is a line of its own, which the bank hasn't shown.
    [Fact]
    public void Return_ThatPaysADebt_IsTheDepositAlone()
    {
        Book owed = Moving.Enter(Book, new MoveEntry(Day(8), Food, new LedgerEnd.Owed(new DebtId("card")), Usd(10), "")).Value!;
        Book after = Take(owed, Line(9, 10, "DEPOSIT"), new LineTarget(LineUse.Return));
        long ticked = Assert.Single(after.Weeks.Takings[^1].Lines[^1].Lines);
        Assert.Equal(Usd(10), AccountLines.Of(after)[ticked]!.Amount);
        Assert.DoesNotContain(AccountLines.Of(after).All.Single(line => line.Other is LedgerEnd.Owed && line.Date == Day(9)).Number, AccountLines.AtBank(after));
    }

    [Fact]
    public void Debt_AndTransfer_ComeFromThePurposeThatIsNamed()
    {
        Book paid = Take(Line(9, -10, "CARD CO"), new LineTarget(LineUse.For, new LedgerEnd.Owed(new DebtId("card"))) { Other = Gifts });
        Assert.Equal((WrittenKind.Move, Book.Ledger.Balances[Gifts] - Usd(10)), (paid.Weeks.Takings[^1].Lines[^1].Wrote!.Kind, paid.Ledger.Balances[Gifts]));
        Book saved = Take(Line(9, -10, "SAVINGS BANK"), new LineTarget(LineUse.Transfer) { Other = Gifts });
        Assert.Equal(Book.Ledger.Balances[Gifts] - Usd(10), saved.Ledger.Balances[Gifts]);
        Book back = Take(Line(9, 10, "SAVINGS BANK"), new LineTarget(LineUse.Transfer) { Other = Gifts });
        Assert.Equal(Book.Ledger.Balances[Gifts] + Usd(10), back.Ledger.Balances[Gifts]);
    }

    [Fact]
    public void Other_ThatIsGone_IsRefused() => Assert.IsType<TakingFault.Gone>(
        Refused(Book, Line(9, -10, "ATM"), new LineTarget(LineUse.Cash, Food) { Other = LedgerEnd.InAccount(Purpose.Pot(new PotId("gone"))) }));

    [Theory]
    [InlineData("ATM 0815 HIGH ST", LineKind.Other, true)]
    [InlineData("ATM 0815 HIGH ST", LineKind.Card, true)]
    [InlineData("BRANCH 3", LineKind.Cash, true)]
    [InlineData("CASH & CARRY", LineKind.Card, false)]
    [InlineData("PIER SHOP", LineKind.Other, false)]
    public void Machine_IsProposedAsCash_NotAsAPurchase(string text, LineKind kind, bool isCash)
    {
        Book bought = Purchasing.Enter(Book, new PurchaseEntry(Day(7), null, Usd(3), text)).Value!;
        Proposal? proposal = Assert.Single(Plan(bought, Sent(Line(12, -40, text) with { Kind = kind })).Others).Proposal;
        Assert.Equal(isCash, proposal is { Target.Use: LineUse.Cash, IsSure: false });
        if (isCash)
        {
            Assert.Equal(MoveEnds.Loose, proposal!.Target.End);
        }
    }

    [Fact]
    public void Machine_IsProposedForThePotThatMoneyWaitsFor_AndForTheOnlyOneInCash()
    {
        Book waits = Moving.Enter(Book, new MoveEntry(Day(7), MoveEnds.Buffer, Food, Usd(40), "")).Value!;
        Assert.Equal(Food, Assert.Single(Plan(waits, Sent(Line(12, -40, "ATM"))).Others).Proposal!.Target.End);
        Household one = Home with { Pots = [.. Home.Pots.Where(pot => pot.Place == Core.Ledgers.Place.Account || pot.Id == new PotId("food"))] };
        Assert.Equal(Food, Assert.Single(Plan(Core.Books.Book.Begin(one), Sent(Line(12, -40, "ATM"))).Others).Proposal!.Target.End);
    }

    [Fact]
    public void Deposit_IsProposedAsWhatIsOwed_ElseAsLooseNotes_ElseNot()
    {
        Book owed = Book.Spend("food", 12, Day(8));
        Assert.Equal(LineUse.Return, Assert.Single(Plan(owed, Sent(Line(12, 15, "CASH DEPOSIT"))).Others).Proposal!.Target.Use);
        Assert.Equal(new LineTarget(LineUse.Cash, MoveEnds.Loose), Assert.Single(Plan(owed, Sent(Line(12, 5, "CASH DEPOSIT"))).Others).Proposal!.Target);
        Assert.Null(Assert.Single(Plan(owed, Sent(Line(12, 5000, "CASH DEPOSIT"))).Others).Proposal);
    }

    [Fact]
    public void Habit_OfCash_IsKnownAgain_AndTheSlipsOwnIsNone()
    {
        Book once = Take(Line(9, -40, "ATM HIGH STREET"), new LineTarget(LineUse.Cash, Food));
        Proposal guess = Plan(once, Sent(Line(9, -40, "ATM HIGH STREET"), Line(16, -20, "ATM HIGH STREET"))).Others.Last().Proposal!;
        Assert.Equal((new LineTarget(LineUse.Cash, Food), ProposalReason.Before), (guess.Target, guess.Reason));
    }

    [Theory]
    [InlineData(-40)]
    [InlineData(20)]
    public void Undone_LeavesNoTrace_AndAloneIsInTheWay(decimal amount)
    {
        Book after = Take(Line(9, amount, "CASH"), new LineTarget(LineUse.Cash, Food));
        Assert.IsType<Obstacle.AtBank>(Moving.Undo(after, after.Weeks.Moves[^1].Number, Today).Fault);
        Book undone = TakingUndo.Of(after, after.Weeks.Takings[^1], Today).Value!;
        Assert.Equal(Answers.Of(Book, Friday6March, Today), Answers.Of(undone, Friday6March, Today));
    }

    private static Book Take(StatementLine line, LineTarget target) => Take(Book, line, target);

    private static Book Take(Book book, StatementLine line, LineTarget target, Notes? notes = null)
    {
        Result<Book> taken = Chosen(book, line, target, notes).Taken(Today);
        Assert.True(taken.Ok, taken.Fault.Said());
        AssertSound(taken.Value);
        return taken.Value;
    }

    private static Fault Refused(Book book, StatementLine line, LineTarget target) => Assert.IsType<TakingFault.AtLine>(Chosen(book, line, target, null).Taken(Today).Fault).Why;

    private static StatementPlan Chosen(Book book, StatementLine line, LineTarget target, Notes? notes)
    {
        StatementPlan plan = Plan(book, Sent(line));
        return plan.With(plan.Others.Last().Key, new Proposal(target, ProposalReason.Chosen, true) { Notes = notes });
    }

    private static StatementPlan Plan(Book book, Statement statement)
    {
        Result<StatementPlan> plan = StatementPlan.Of(book, [statement], new PlanOptions(), Today);
        Assert.True(plan.Ok, plan.Fault.Said());
        return plan.Value;
    }

    private static Statement Sent(params StatementLine[] lines) => new(StatementFormat.Camt053, Dollars)
    {
        Account = "77",
        From = Day(6),
        To = Day(31),
        Lines = [.. lines],
        Opening = new Balance(Usd(1500), Day(6), 1),
        Closing = new Balance(Usd(1500) + Money.Sum(lines.Select(line => line.Amount), Dollars), Day(31), 1),
    };

    private static StatementLine Line(int day, decimal amount, string text) => new(Day(day), Usd(amount)) { Text = text };

    private static LocalDate Day(int day) => new(2026, 3, day);
}
