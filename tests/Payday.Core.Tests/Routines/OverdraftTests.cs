using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.HouseholdChanges;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Outlooks;
using Payday.Core.Reconciling;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

/// <summary>An account that begins below zero: what comes in pays it off first, as a proposal.</summary>
public sealed class OverdraftTests
{
    private static readonly LedgerEnd Overdraft = LedgerEnd.InAccount(Purpose.Overdraft);

    private static readonly Household Below = Bare with { Opening = Bare.Opening with { Account = Usd(-300) } };

    [Fact]
    public void Begin_AccountBelowZero_IsAnOverdraftAndNothingElse()
    {
        Balances balances = Book.Begin(Below).Ledger.Balances;

        Assert.Equal([new KeyValuePair<LedgerEnd, Money>(Overdraft, Usd(-300))], balances.All.Where(end => end.Key is LedgerEnd.At));
        Assert.Equal((Usd(-300), Usd(300)), (balances.In(Place.Account), balances.Overdrawn));
        Assert.Empty(LedgerCheck.Faults(balances));
    }

    [Fact]
    public void Plan_WhatComesIn_PaysItOffFirst()
    {
        RoutinePlan plan = Plan(Below with { Bills = [Bill("Rent", 600, new(2026, 3, 10))], Pots = [AccountPot("Phone", 30)] });
        Book closed = Closing.Of(plan).Value!;

        Assert.Equal(new OverdraftPayoff(Usd(300), Usd(300), Usd(300), false), plan.Income.Overdraft);
        Assert.Equal((Usd(1000), Usd(700), Usd(700)), (plan.Income.Own, plan.Income.Free, plan.Income.ToPlace));
        Assert.Equal(Usd(0), closed.Ledger.Balances.Overdrawn);
        Assert.Equal(Usd(700), closed.Ledger.Balances.In(Place.Account));
        Movement paid = Assert.Single(closed.Ledger.Movements, movement => movement.To == Overdraft);
        Assert.Equal((Usd(300), "pays off the overdraft", Friday6March), (paid.Amount, paid.Reason, paid.Payday));
        Assert.True(WithdrawalRoom.Of(plan) is null);
    }

    [Fact]
    public void Plan_MoreThanComesIn_IsPaidOffOverSeveralPaydays()
    {
        Book first = WeekHomes.Close(Book.Begin(Bare with { Opening = Bare.Opening with { Account = Usd(-2300) } }), Friday6March);
        Book second = WeekHomes.Close(first, Friday6March.PlusWeeks(2));
        Book third = WeekHomes.Close(second, Friday6March.PlusWeeks(4));

        Assert.Equal([Usd(1300), Usd(300), Usd(0)], [first.Ledger.Balances.Overdrawn, second.Ledger.Balances.Overdrawn, third.Ledger.Balances.Overdrawn]);
        Assert.Equal(Usd(700), third.Ledger.Balances.In(Place.Account));
        Assert.Equal([Usd(-1300), Usd(-300), Usd(700)], Outlook.Of(Book.Begin(Bare with { Opening = Bare.Opening with { Account = Usd(-2300) } }), 3).Value!.Paydays.Select(payday => payday.AccountAfter));
    }

    [Fact]
    public void Plan_LessByHand_LeavesTheRestAndIsPlaced()
    {
        RoutinePlan plan = Plan(Below, draft => draft with { ToOverdraft = Usd(50) });
        Book closed = Closing.Of(plan).Value!;

        Assert.Equal((new OverdraftPayoff(Usd(300), Usd(300), Usd(50), true), Usd(950), Usd(250)), (plan.Income.Overdraft, plan.Income.ToPlace, closed.Ledger.Balances.Overdrawn));
        Assert.Equal(Usd(700), closed.Ledger.Balances.In(Place.Account));
        Assert.Equal(Usd(250), Routine.Plan(closed, new RoutineDraft(Friday6March.PlusWeeks(2))).Value!.Income.Overdraft.Amount);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(120)]
    public void Plan_LessCameInThanWasDecided_PaysOffNoMoreThanThat(decimal came)
    {
        RoutinePlan plan = Plan(Below, draft => draft with { ToOverdraft = Usd(200), Incomes = SourceSums(("wage", came)) });

        Assert.Equal((Usd(came), Usd(0)), (plan.Income.Overdraft.Amount, plan.Income.ToPlace));
        Assert.True(Closing.Of(plan).Ok);
    }

    [Fact]
    public void Plan_WhereItFallsShort_TheBufferHelpsAndTheOverdraftStaysPaid()
    {
        Household home = Below with { Settings = Below.Settings with { BufferKeeps = Usd(0) }, Bills = [Bill("Rent", 900, new(2026, 3, 8), essential: true)] };
        Book book = Book.Begin(home);
        Book gift = Entering.Enter(book, new EntryWish(Friday6March, EntryKind.Gift, MoveEnds.Buffer, Usd(200), "gift")).Value!;

        Assert.Equal((Usd(200), Usd(200)), (Plan(book).Unpayable.Single().Short, Plan(book).Income.Buffer.Short));
        RoutinePlan helped = Routine.Plan(gift, new RoutineDraft(Friday6March)).Value!;
        Assert.Equal((Usd(300), Usd(200)), (helped.Income.Overdraft.Amount, helped.Income.Buffer.Amount));
        Assert.True(Closing.Of(helped).Ok);
    }

    // Level set-asides go by what the paydays to come really have: the rest of the overdraft comes off them first.
    [Fact]
    public void Plan_SetAsides_TakeTheRestOfTheOverdraftOffThePaydaysToCome()
    {
        Household home = Bare with { Opening = Bare.Opening with { Account = Usd(-1900) }, Bills = [Bill("Rent", 700, new(2026, 3, 25), months: 12)] };

        // 1,000 go to the overdraft now and 900 of the next 1,000, which leaves 100 by the 25th.
        Assert.Equal([Usd(600)], Plan(home).Bills.Late.Select(late => late.Short));
        Assert.Empty(Plan(home, draft => draft with { ToOverdraft = Usd(0) }).Bills.Dues);
    }

    [Fact]
    public void Of_MoreCashThanTheAccountHas_IsNotClosed()
    {
        Household home = Below with { Pots = [CashPot("Food", 400)], Bills = [Bill("Rent", 150, Friday6March)] };
        RoutinePlan plan = Plan(home, draft => draft with { ToOverdraft = Usd(0) });

        // 1,000 in on -300, 150 paid: 550 is there, and 800 is asked for.
        Assert.Equal(new WithdrawalRoom(Usd(800), Usd(550)), WithdrawalRoom.Of(plan));
        Assert.Equal(
            "800.00 is withdrawn, and with what is left of the overdraft the account gives 550.00 in cash at most; pay off more of it, lower a cash pot, "
            + "or enter in the household how far below zero the bank lets the account go.",
            Closing.Of(plan).Faults.Said());
    }

    [Theory]
    [InlineData(249, false)]
    [InlineData(250, true)]
    public void Of_MoreCashThanTheAccountHas_IsClosedAsFarAsTheBankLetsIt(decimal limit, bool closes)
    {
        Household home = Below with { Settings = Below.Settings with { Overdraft = Usd(limit) }, Pots = [CashPot("Food", 400)], Bills = [Bill("Rent", 150, Friday6March)] };
        Result<Book> closed = Closing.Of(Plan(home, draft => draft with { ToOverdraft = Usd(0) }));

        Assert.Equal(closes, closed.Ok);
        Assert.Equal(closes ? Usd(-250) : null, closed.Value?.Ledger.Balances.In(Place.Account));
    }

    [Fact]
    public void Enter_AMoveThatFetchesMoreThanTheAccountHas_IsRefused()
    {
        Book closed = Closing.Of(Plan(Below with { Opening = Bare.Opening with { Account = Usd(-900) } }, draft => draft with { ToOverdraft = Usd(50) })).Value!;
        Result<Book> Fetched(decimal amount, int tens) => Moving.Enter(closed, new MoveEntry(Friday6March, MoveEnds.Buffer, MoveEnds.Loose, Usd(amount), "") { Notes = Notes.None.With(1000, tens) });

        // 950 in the buffer, 100 in the account.
        Assert.Equal(new MoveFault.AccountHasLess(Usd(100), Usd(110)), Fetched(110, 11).Fault);
        Assert.True(Fetched(100, 10).Ok);
        Assert.Equal(Usd(100), CashRoom.Of(closed));
        Assert.Null(CashRoom.Of(WeekHomes.Closed));
    }

    [Fact]
    public void Reopen_AndUndo_LeaveTheOverdraftAsItWas()
    {
        Book closed = Closing.Of(Plan(Below, draft => draft with { ToOverdraft = Usd(120) })).Value!;
        Book reopened = Reopening.Of(closed, Friday6March.PlusDays(2)).Value!;
        Book again = Closing.Of(Routine.Plan(reopened, reopened.Draft!).Value!).Value!;

        Assert.Equal((Usd(300), Usd(120)), (reopened.Ledger.Balances.Overdrawn, reopened.Draft!.ToOverdraft));
        Assert.Equal(closed.Ledger.Balances.All.ToHashSet(), again.Ledger.Balances.All.ToHashSet());

        Book undone = Undoing.Of(closed, closed.Ledger.Movements.Single(movement => movement.To == Overdraft).Number, Friday6March.PlusDays(3), "not yet").Value!;
        Assert.Equal((Usd(300), Usd(120)), (undone.Ledger.Balances.Overdrawn, undone.Ledger.Balances[LedgerEnd.InAccount(Purpose.LeftToPlace)]));
        Assert.Equal(Usd(300), Routine.Plan(undone, new RoutineDraft(Friday6March.PlusWeeks(2))).Value!.Income.Overdraft.Amount);
    }

    // At the bank it is below zero as well, and paying it off is no line: what came in is.
    [Fact]
    public void Reconcile_BelowZero_AgreesWithTheBank()
    {
        Book book = Book.Begin(Below);
        Book closed = WeekHomes.Close(book, Friday6March);
        ReconciliationPlan before = ReconciliationPlan.Of(book, new ReconciliationDraft(Friday6March, Usd(-300), []));

        Assert.Empty(AccountLines.Of(book).All);
        Assert.Equal((Usd(-300), Usd(0)), (before.Expected, before.Difference));
        Assert.Equal([Usd(1000)], AccountLines.Of(closed).All.Select(line => line.Amount));
        Assert.Equal(Usd(-300), ReconciliationPlan.Of(closed, new ReconciliationDraft(Friday6March, Usd(-300), [])).Expected);
    }

    [Fact]
    public void Of_AnOpeningThatIsCorrected_IsWrittenAnew()
    {
        Book book = Book.Begin(Below);
        Book better = HouseholdChange.Of(book, Below with { Opening = Below.Opening with { Account = Usd(40) } }).Value!;
        Book worse = HouseholdChange.Of(better, Below with { Opening = Below.Opening with { Account = Usd(-70) } }).Value!;

        Assert.Equal((Usd(40), Usd(0)), (better.Ledger.Balances.In(Place.Account), better.Ledger.Balances.Overdrawn));
        Assert.Equal((Usd(-70), Usd(70)), (worse.Ledger.Balances.In(Place.Account), worse.Ledger.Balances.Overdrawn));
        Assert.Equal(new ChangeFault.OtherOpening(), HouseholdChange.Of(WeekHomes.Close(book, Friday6March), better.Household).Fault);
    }

    [Fact]
    public void OfYear_PayingItOff_IsNeitherIncomeNorSpending()
    {
        MonthSummary march = MonthSummary.OfYear(WeekHomes.Close(Book.Begin(Below), Friday6March).Ledger, 2026)[2];

        Assert.Equal((Usd(1000), Usd(0), Usd(0), Usd(0), Usd(0)), (march.CameIn, march.Spent, march.Fills, march.Bills, march.DebtPayments));
    }

    /// <summary>By pencil: the account is what it was, plus what came in, less what left it; the overdraft falls by what pays it off, and never rises.</summary>
    [Fact]
    public void Close_SomePaydays_AddUpAndNeverOwesMore() => Gen.Select(Gen.Int[-4000, 200], Gen.Int[0, 900], Gen.Int[0, 1200].Array[1, 6], Gen.Int[-300, 1500].Array[6]).Sample((opening, rent, incomes, decided) =>
    {
        Book book = Book.Begin(Bare with { Opening = Bare.Opening with { Account = Usd(opening) }, Bills = [Bill("Rent", rent, new(2026, 3, 10))] });
        Money overdrawn = Usd(Math.Max(0, -opening));
        for (int i = 0; i < incomes.Length; i++)
        {
            var draft = new RoutineDraft(Friday6March.PlusWeeks(2 * i)) { Incomes = SourceSums(("wage", incomes[i])), ToOverdraft = decided[i] < 0 ? null : Usd(decided[i]) };
            RoutinePlan plan = Routine.Plan(book, draft).Value!;
            Money own = Usd(incomes[i]) + plan.Income.CarriedOver;
            Assert.Equal(Money.Min(Money.Min(overdrawn, own), Usd(decided[i] < 0 ? 1_000_000 : decided[i])), plan.Income.Overdraft.Amount);
            if (Closing.Of(plan) is not { Ok: true } closed)
            {
                return;
            }

            Money leaves = Money.Sum(plan.Bills.Dues.Where(due => due.Paid).Select(due => due.Amount), Dollars);
            overdrawn -= plan.Income.Overdraft.Amount;
            Assert.Equal(book.Ledger.Balances.In(Place.Account) + Usd(incomes[i]) - leaves, closed.Value.Ledger.Balances.In(Place.Account));
            Assert.Equal(overdrawn, closed.Value.Ledger.Balances.Overdrawn);
            Assert.Empty(LedgerCheck.Faults(closed.Value.Ledger.Balances));
            book = closed.Value;
        }
    });

    private static RoutinePlan Plan(Household home, Func<RoutineDraft, RoutineDraft>? decide = null) => Plan(Book.Begin(home), decide);

    private static RoutinePlan Plan(Book book, Func<RoutineDraft, RoutineDraft>? decide = null)
    {
        var draft = new RoutineDraft(Friday6March);
        return Routine.Plan(book, decide is null ? draft : decide(draft)).Value!;
    }
}
