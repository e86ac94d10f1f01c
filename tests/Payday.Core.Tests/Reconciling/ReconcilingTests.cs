using System.Collections.Immutable;
using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Reconciling;
using Payday.Core.Status;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Reconciling;

/// <summary>Rule (design, 14); where to look for a difference is common practice, no source.</summary>
public class ReconcilingTests
{
    // 500 at the start, 1,000 of pay, less what was fetched and paid by card.
    private static readonly Book Bought = Closed.Spend("gifts", 12.34m, Friday6March.PlusDays(1), "book").Spend("food", 17.25m, Friday6March.PlusDays(2));

    [Fact]
    public void Plan_WithNothingTicked_ExpectsTheOpening()
    {
        ReconciliationPlan plan = Plan(Bought);
        Assert.Equal((Usd(500), Usd(0)), (plan.Expected, plan.With(plan.Draft with { Balance = Usd(500) }).Difference!.Value));
    }

    [Fact]
    public void Accept_WithAllTicked_LeavesNothingOpen()
    {
        Book done = Ticked(Bought).Accept().Value!;
        Assert.Empty(ReconciliationPlan.Of(done, Friday13March).Lines);
        Assert.Equal(new BankAgreement(Friday13March, Usd(0), "", IsExplained: true), BookStatus.Of(done, Friday13March).Bank);
        Assert.Null(done.Weeks.Reconciling);
    }

    [Fact]
    public void Accept_WithADifference_KeepsItInView()
    {
        ReconciliationPlan plan = Ticked(Bought);
        Book done = plan.With(plan.Draft with { Balance = plan.Expected - Usd(4.50m) }).Accept().Value!;
        Assert.Equal(Usd(-4.50m), BookStatus.Of(done, Friday13March).Bank!.Difference);
        ReconciliationPlan next = ReconciliationPlan.Of(done, new ReconciliationDraft(Friday13March, plan.Expected - Usd(4.50m), []));
        Assert.Equal(Usd(-4.50m), next.Difference);
    }

    // A fee of 4.50 that isn't entered: named, and in view until it is.
    [Fact]
    public void Accept_WithAName_KeepsItWhileTheDifferenceStays()
    {
        Book named = OffBy("a fee?");
        Assert.Equal(new BankAgreement(Friday13March, Usd(-4.50m), "a fee?", IsExplained: false), BankAgreement.Of(named));

        ReconciliationPlan same = ReconciliationPlan.Of(named, new ReconciliationDraft(Friday13March.PlusDays(1), named.Weeks.Reconciliations[0].Balance, []));
        Assert.Equal("a fee?", BankAgreement.Of(same.Accept().Value!)!.Name);
        Assert.Equal(("", ""), (Off(same, 1).Name, Off(same, 4.50m).Name));
        Assert.Equal("two fees", same.With(same.Draft with { Name = " two fees " }).Accept().Value!.Weeks.Reconciliations[1].Name);

        Book back = ReconciliationUndo.Of(named, ReconciliationUndo.Last(named)!).Value!;
        Assert.Equal(("a fee?", null), (back.Weeks.Reconciling!.Name, BankAgreement.Of(back)));
    }

    // A name taken back with its difference is that difference's: another has none yet.
    [Fact]
    public void WithBalance_Another_LetsTheNameGo()
    {
        Book named = OffBy("a fee?");
        ReconciliationPlan back = ReconciliationPlan.Of(ReconciliationUndo.Of(named, ReconciliationUndo.Last(named)!).Value!, Friday13March);
        Assert.Equal("a fee?", back.With(back.Draft with { Date = back.Draft.Date.PlusDays(1) }).Name);
        Money balance = back.Draft.Balance!.Value;
        Assert.Equal(("a fee?", ""), (back.WithBalance(balance).Name, back.WithBalance(balance + Usd(100)).Name));
    }

    // Of that day or before, alone or all together; what comes a day later can't have been in that balance.
    [Theory]
    [InlineData(true, 0, -4.50)]
    [InlineData(true, -3, -4.50)]
    [InlineData(true, 0, -3.10, -1.40)]
    [InlineData(true, 0, -4.50, -7.0)]
    [InlineData(false, 1, -4.50)]
    [InlineData(false, 0, 4.50)]
    [InlineData(false, 0, -3.10)]
    [InlineData(false, 0, -3.10, -1.40, -2.0)]
    public void Difference_OfWhatWasEnteredSince_IsExplained(bool explained, int days, params double[] entered)
    {
        Book named = OffBy("a fee?");
        Book since = entered.Aggregate(named, (book, amount) => Fee(book, Friday13March.PlusDays(days), (decimal)amount));
        Assert.Equal(explained, BankAgreement.Of(since)!.IsExplained);
        Book undone = entered.Aggregate(since, (book, _) => Entering.Undo(book, book.Weeks.StandingEntries.Last().Number, Friday13March).Value!);
        Assert.False(BankAgreement.Of(undone)!.IsExplained);
    }

    // What was there and on its way then explains nothing by itself.
    [Fact]
    public void Difference_OfALineThatWasThere_StaysOpen()
    {
        Book there = Fee(Bought, Friday13March, -4.50m);
        ReconciliationPlan plan = Ticked(there);
        plan = plan.Tick(Line(plan, -4.50m).Number).Value!;
        Book done = plan.With(plan.Draft with { Balance = plan.Expected - Usd(4.50m) }).Accept().Value!;
        Assert.False(BankAgreement.Of(done)!.IsExplained);
        Assert.False(BankAgreement.Of(done with { Weeks = done.Weeks with { Reconciliations = [done.Weeks.Reconciliations[0] with { LastMovement = null }] } })!.IsExplained);
        Assert.True(BankAgreement.Of(Ticked(done).Accept().Value!)!.IsExplained);
    }

    [Fact]
    public void Accept_WithoutABalance_OrBeforeTheLast_IsRefused()
    {
        ReconciliationPlan plan = Plan(Bought);
        Assert.Equal("The bank's balance is missing; give it first.", plan.Accept().Fault.Said());
        Book done = Ticked(Bought).Accept().Value!;
        Assert.Contains("compared with the bank on 13 Mar", ReconciliationPlan.Of(done, new ReconciliationDraft(Friday6March, Usd(1), [])).Accept().Fault.Said(), StringComparison.Ordinal);
        Assert.Contains("before the household's first day", Plan(Bought).With(new ReconciliationDraft(Friday6March.PlusDays(-1), Usd(1), [])).Accept().Fault.Said(), StringComparison.Ordinal);
    }

    [Fact]
    public void Tick_OfALineThatIsNone_IsRefused() => Assert.Equal("There is no line 4711 that the bank has yet to show.", Plan(Bought).Tick(4711).Fault.Said());

    // A forgotten fee: nothing here explains it.
    [Fact]
    public void Culprits_OfAForgottenFee_AreNothingHere() => Assert.Equal(new Culprit.NotEntered(Usd(-3.10m)), Assert.Single(Off(Ticked(Bought), -3.10m).Culprits));

    [Fact]
    public void Culprits_OfALineNotTicked_NameIt()
    {
        ReconciliationPlan plan = Ticked(Bought);
        AccountLine food = Line(plan, -17.25m);
        Assert.Equal(new Culprit.NotTicked(food), Assert.Single(plan.Tick(food.Number).Value!.Culprits));
    }

    [Fact]
    public void Culprits_OfALineThatIsNotThere_NameIt()
    {
        ReconciliationPlan plan = Ticked(Bought);
        Assert.Equal(new Culprit.NotThere(Line(plan, -17.25m)), Assert.Single(Off(plan, 17.25m).Culprits));
    }

    // 17.25 entered as a payment that came in at the bank: twice its amount.
    [Fact]
    public void Culprits_OfAWrongSign_NameTheLine()
    {
        ReconciliationPlan plan = Ticked(Bought);
        Assert.Equal(new Culprit.WrongSign(Line(plan, -17.25m)), Assert.Single(Off(plan, 34.50m).Culprits));
    }

    // The bank has 12.43 for 12.34, which is 9 minor units more; a difference of 9 that no swap gives names nothing.
    [Theory]
    [InlineData(-0.09, true)]
    [InlineData(0.09, false)]
    [InlineData(-0.90, true)]
    [InlineData(-9.00, true)]
    [InlineData(-0.18, false)]
    public void Culprits_OfSwappedDigits_NameTheLineWhereASwapGivesIt(double off, bool isSwapped)
    {
        ReconciliationPlan plan = Ticked(Bought);
        Culprit culprit = Assert.Single(Off(plan, (decimal)off).Culprits);
        Assert.Equal(isSwapped ? new Culprit.Swapped(Line(plan, -12.34m), Usd(-12.34m + (decimal)off)) : new Culprit.NotEntered(Usd((decimal)off)), culprit);
    }

    [Fact]
    public void Culprits_OfSwappedDigitsInALineNotTicked_NameIt()
    {
        ReconciliationPlan plan = Ticked(Bought);
        AccountLine book = Line(plan, -12.34m);
        Assert.Contains(new Culprit.Swapped(book, Usd(-12.43m)), Off(plan.Tick(book.Number).Value!, -12.43m + 12.34m).Culprits);
    }

    [Fact]
    public void Culprits_OfAPaymentEnteredTwice_NameBoth()
    {
        ReconciliationPlan plan = Ticked(Bought.Spend("food", 17.25m, Friday6March.PlusDays(3)));
        AccountLine[] twins = [.. plan.Lines.Where(line => line.Amount == Usd(-17.25m))];
        Assert.Equal(new Culprit.Twice(twins[1], twins[0]), Assert.Single(Off(plan, 17.25m).Culprits));
    }

    [Fact]
    public void Culprits_OfTwoLinesTogether_NameBoth()
    {
        ReconciliationPlan plan = Ticked(Bought);
        AccountLine[] two = [Line(plan, -12.34m), Line(plan, -17.25m)];
        var together = Assert.IsType<Culprit.Together>(Assert.Single(two.Aggregate(plan, (all, line) => all.Tick(line.Number).Value!).Culprits));
        Assert.Equal(two, together.Lines);
        Assert.Equal(two, Assert.IsType<Culprit.Together>(Assert.Single(Off(plan, 29.59m).Culprits)).Lines);
    }

    [Fact]
    public void Culprits_OfThreeLinesTogether_NameThem()
    {
        ReconciliationPlan plan = Ticked(Bought.Spend("food", 3.13m, Friday6March.PlusDays(3)));
        Assert.Equal(3, Assert.IsType<Culprit.Together>(Assert.Single(Off(plan, 12.34m + 17.25m + 3.13m).Culprits)).Lines.Length);
    }

    // Swapping by hand, against the sum: all pairs of up to four digits.
    [Fact]
    public void IsSwapped_OfAllSmallAmounts_IsWhatSwappingTheTextGives()
    {
        for (int here = 1; here < 2000; here++)
        {
            string text = $"{here:0000}";
            HashSet<int> swaps = [.. Enumerable.Range(0, 3).Select(i => int.Parse(text[..i] + text[i + 1] + text[i] + text[(i + 2)..], System.Globalization.CultureInfo.InvariantCulture)).Where(other => other != here)];
            for (int bank = 1; bank < 9999; bank += 7)
            {
                Assert.Equal(swaps.Contains(bank), Culprits.IsSwapped(-here, -bank));
            }
        }
    }

    // A movement from cash to a debt crosses the account: the deposit comes, and the payment goes.
    [Fact]
    public void Lines_OfCashThatWasPromisedToADebt_AreADepositAndAPayment()
    {
        Book counted = Closed.Count(Friday13March, "food", new CountEntry(Usd(20)) { Then = new CountThen(MoveTarget.Debt(new DebtId("card"))) });
        Book back = ReturnPlan.Of(counted, ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;
        AccountLine[] lines = [.. AccountLines.Of(back).All.TakeLast(2)];
        Assert.Equal([(AccountLineKind.Deposit, Usd(20)), (AccountLineKind.Payment, Usd(-20))], lines.Select(line => (line.Kind, line.Amount)));
        Assert.Equal(counted.Has("account/for-debt:card"), back.Has("account/for-debt:card"));
    }

    [Fact]
    public void Undo_OfAPurchaseAtTheBank_AsksForTheReconciliationFirst()
    {
        Book done = Ticked(Bought).Accept().Value!;
        Result<Book> undone = Purchasing.Undo(done, 2, Friday13March);
        Assert.Equal("Card purchase 2 is at the bank by the reconciliation of 13 Mar 2026; take that back first.", undone.Fault.Said());
        Assert.Equal(new BookEntry.Reconciliation(1, Friday13March), ((Obstacle)undone.Fault!).First);
        Book open = ReconciliationUndo.Of(done, ReconciliationUndo.Last(done)!).Value!;
        Assert.True(Purchasing.Undo(open, 2, Friday13March).Ok);
        Assert.Equal(done.Weeks.Reconciliations[0].AtBank, open.Weeks.Reconciling!.AtBank.Order());
    }

    [Fact]
    public void Undo_OfAPurchaseOnItsWay_IsFree()
    {
        ReconciliationPlan plan = Ticked(Bought);
        AccountLine food = Line(plan, -17.25m);
        Book done = plan.Tick(food.Number).Value!.Accept().Value!;
        Assert.True(Purchasing.Undo(done, 2, Friday13March).Ok);
        Assert.False(Purchasing.Undo(done, 1, Friday13March).Ok);
    }

    [Fact]
    public void Reopen_OfAPaydayAtTheBank_AsksForTheReconciliationFirst()
    {
        Book done = Ticked(Closed).Accept().Value!;
        Assert.IsType<Obstacle.AtBank>(Reopening.Of(done, Friday13March).Fault);
        Assert.IsType<Obstacle.AtBank>(Undoing.Of(done, AccountLines.Of(done).All[0].Number, Friday13March, "wrong").Fault);
        Assert.True(Reopening.Of(ReconciliationUndo.Of(done, ReconciliationUndo.Last(done)!).Value!, Friday13March).Ok);
    }

    [Fact]
    public void Undo_OfAnEarlierReconciliation_AsksForTheLaterFirst()
    {
        Book first = Ticked(Bought).Accept().Value!;
        Book second = Ticked(first.Spend("food", 3, Friday13March)).Accept().Value!;
        Assert.IsType<Obstacle.ReconciledSince>(ReconciliationUndo.Of(second, second.Weeks.Reconciliations[0]).Fault);
    }

    [Fact]
    public void Lines_OfACheque_StayOnTheirWayUntilTicked()
    {
        LedgerEnd buffer = LedgerEnd.InAccount(Purpose.Buffer);
        Book book = Closed with { Ledger = Closed.Ledger.Add([new Movement(0, Friday13March, buffer, LedgerEnd.Entered(EntryKind.Payment), Usd(20), "payment")]) };
        long number = book.Ledger.Movements.Count;
        book = book with { Weeks = book.Weeks with { Entries = [new AccountEntry(1, Friday13March, EntryKind.Payment, buffer, Usd(-20), "plumber", 17, null, number, number)] } };
        AccountLine cheque = AccountLines.Of(book).All[^1];
        Assert.Equal((17L, "plumber"), (cheque.Cheque, cheque.What));
        Book others = Ticked(Closed).Draft is var draft ? ReconciliationPlan.Of(book, draft).Accept().Value! : book;
        Assert.Equal([cheque.Number], ReconciliationPlan.Of(others, Friday13March).Lines.Select(line => line.Number));
    }

    private static ReconciliationPlan Plan(Book book) => ReconciliationPlan.Of(book, new ReconciliationDraft(Friday13March, null, []));

    // All ticked, and the bank's balance as it should be.
    private static ReconciliationPlan Ticked(Book book)
    {
        ReconciliationPlan plan = Plan(book);
        plan = plan.Lines.Aggregate(plan, (all, line) => all.Tick(line.Number).Value!);
        return plan.With(plan.Draft with { Balance = plan.Expected });
    }

    private static ReconciliationPlan Off(ReconciliationPlan plan, decimal by) => plan.With(plan.Draft with { Balance = plan.Draft.Balance!.Value + Usd(by) });

    private static Book OffBy(string name)
    {
        ReconciliationPlan plan = Off(Ticked(Bought), -4.50m);
        return plan.With(plan.Draft with { Name = name }).Accept().Value!;
    }

    private static Book Fee(Book book, LocalDate date, decimal amount) =>
        Entering.Enter(book, new EntryWish(date, amount < 0 ? EntryKind.Fee : EntryKind.Interest, LedgerEnd.InAccount(Purpose.Buffer), Usd(amount), "fee")).Value!;

    private static AccountLine Line(ReconciliationPlan plan, decimal amount) => plan.Lines.Single(line => line.Amount == Usd(amount));
}
