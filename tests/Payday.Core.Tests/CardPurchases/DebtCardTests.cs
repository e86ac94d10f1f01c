using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Calendar;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
using Payday.Core.ClosedPaydays;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.HouseholdChanges;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.CardPurchases;

/// <summary>Bought with a card that is one of the debts: 5,630 are owed on it once 770 of surplus went there, and 25 are due on the 15th, covered on 6 March.</summary>
public class DebtCardTests
{
    private static readonly DebtId Card = new("card");
    private static readonly LocalDate Tenth = new(2026, 3, 10);
    private static readonly LocalDate Second = new(2026, 3, 20);

    [Fact]
    public void Enter_FromAnAccountPot_RaisesTheBalanceAndItsMoneyWaits()
    {
        Book book = Bought("gifts", 14.20m);

        Assert.Equal((Usd(-5644.20m), Usd(14.20m), Usd(0.80m)), (book.Has("owed/card"), book.Has("account/for-card:card"), book.Has("account/pot:gifts")));
        Assert.Equal(AccountLines.Of(Closed).All.Select(line => line.Number), AccountLines.Of(book).All.Select(line => line.Number));
    }

    [Fact]
    public void Enter_FromACashPot_OwesBackAndItsMoneyWaitsOnceItIsAtTheBank()
    {
        Book book = Bought("food", 54.20m);
        Assert.Equal((Usd(-5684.20m), Usd(55), Usd(0), Usd(0)), (book.Has("owed/card"), book.Has("cash/owed-back:food"), book.Has("account/owed-back:food"), book.Has("account/for-card:card")));

        Book back = Returned(book);
        Assert.Equal((Usd(0), Usd(54.20m), book.Has("account/buffer") + Usd(0.80m)), (back.Has("cash/owed-back:food"), back.Has("account/for-card:card"), back.Has("account/buffer")));
        AccountLine deposit = AccountLines.Of(back).All[^1];
        Assert.Equal((Usd(55), AccountLineKind.Deposit), (deposit.Amount, deposit.Kind));
    }

    // The next payday puts 795 of surplus on it too. The interest of 15 March is 1 % of what is owed then, 5,684.20.
    [Fact]
    public void Plan_NextPayday_PaysWhatWaitsBesideTheMinimum()
    {
        Book book = Returned(Bought("food", 54.20m));
        RoutinePlan plan = Routine.Plan(book, new RoutineDraft(Second)).Value!;

        DebtRow row = Assert.Single(plan.Debts.Rows);
        Assert.Equal((Usd(79.20m), Usd(25), Usd(54.20m), Usd(56.84m)), (row.Payment, row.Minimum, row.Bought, row.Interest));
        Assert.Equal((Usd(0), Usd(79.20m)), (plan.Debts.Total, plan.Debts.Due));

        Book closed = Closing.Of(plan).Value!;
        AssertSound(closed);
        Assert.Equal((Usd(0), Usd(0), Usd(-4866.84m)), (closed.Has("account/for-card:card"), closed.Has("account/for-debt:card"), closed.Has("owed/card")));
        Assert.Contains(AccountLines.Of(closed).All, line => line.Amount == Usd(-79.20m) && line.Date == new LocalDate(2026, 3, 15));
        Assert.Equal(Usd(79.20m), DueLines.Paid(closed, Tenth).Single(paid => paid.Key.Debt == Card).Amount);
    }

    // Two minimums paid on one payday are two payments, each with what was bought for it.
    [Fact]
    public void Close_TwoMinimumsOnOneDay_AreTwoLinesAtTheBank()
    {
        Book begun = Core.Books.Book.Begin(House with { Debts = [Debt("Card", 6400, 0.12m, 25, due: 15) with { Schedule = new Schedule.EveryWeeks(1, Friday6March.PlusDays(4)) }] });
        Book book = By("gifts", 5, Tenth, Close(begun, Friday6March));
        RoutineDraft draft = new(Second);
        draft = draft with { PaidMinimums = Routine.Plan(book, draft).Value!.Debts.Rows.Aggregate(draft.PaidMinimums, (ticks, row) => ticks.SetItem(row.Key!.Value, true)) };
        RoutinePlan plan = Routine.Plan(book, draft).Value!;

        Assert.Equal(
            plan.Debts.Rows.Select(row => -row.Payment).Append(-Money.Sum(plan.Surplus.Placements.Where(placement => placement.Target == MoveTarget.Debt(Card)).Select(placement => placement.Amount), Dollars)).Where(amount => !amount.IsZero).Order(),
            AccountLines.Of(Closing.Of(plan).Value!).All.Where(line => line.Payday == Second && line.Other == new LedgerEnd.Owed(Card)).Select(line => line.Amount).Order());
    }

    [Fact]
    public void Plan_BoughtAfterTheDueDate_WaitsForTheNext()
    {
        Book book = Bought("gifts", 14.20m, new LocalDate(2026, 3, 17));
        RoutinePlan plan = Routine.Plan(book, new RoutineDraft(Second)).Value!;

        Assert.Equal(Usd(25), Assert.Single(plan.Debts.Rows).Payment);
        Book closed = Closing.Of(plan).Value!;
        Assert.Equal(Usd(14.20m), closed.Has("account/for-card:card"));
        Assert.Equal(Usd(39.20m), Assert.Single(Routine.Plan(closed, new RoutineDraft(new LocalDate(2026, 4, 3))).Value!.Debts.Rows).Payment);
    }

    // What it is left unticked at one payday it is paid at the next, once.
    [Fact]
    public void Plan_UntickedMinimum_TakesItUpAgainWithWhatWasBoughtSince()
    {
        Book book = Bought("gifts", 10);
        RoutineDraft draft = new(Second) { PaidMinimums = DraftTicks(book, Second, false) };
        Book closed = Closing.Of(Routine.Plan(book, draft).Value!).Value!;
        Assert.Equal((Usd(25), Usd(10)), (closed.Has("account/for-debt:card"), closed.Has("account/for-card:card")));

        DebtRow row = Routine.Plan(closed, new RoutineDraft(new LocalDate(2026, 4, 3))).Value!.Debts.Rows[0];
        Assert.Equal((Usd(35), Usd(10)), (row.Payment, row.Bought));
    }

    [Fact]
    public void Plan_PaymentChangedByHand_TakesWhatIsAboveTheMinimumFromWhatWaits()
    {
        Book book = Bought("gifts", 14.20m);
        var key = Routine.Plan(book, new RoutineDraft(Second)).Value!.Debts.Rows[0].Key!.Value;

        (Money Bought, Money Total) Paying(decimal amount)
        {
            RoutinePlan plan = Routine.Plan(book, new RoutineDraft(Second) { Minimums = new RoutineDraft(Second).Minimums.SetItem(key, Usd(amount)) }).Value!;
            return (plan.Debts.Rows[0].Bought, plan.Debts.Total);
        }

        Assert.Equal((Usd(0), Usd(0)), Paying(25));
        Assert.Equal((Usd(5), Usd(0)), Paying(30));
        Assert.Equal((Usd(14.20m), Usd(10.80m)), Paying(50));
    }

    // A card that is paid in full each month: of today's pay no more is needed than the interest, and no surplus is put on it.
    [Fact]
    public void Plan_OnlyWhatWasBoughtIsOwed_IsPaidByWhatWaits()
    {
        Book begun = Close(Core.Books.Book.Begin(House with { Debts = [Debt("Card", 0, 0.12m, 25, due: 15)], Settings = House.Settings with { BufferKeeps = Usd(0) } }), Friday6March);
        Book book = By("gifts", 14.20m, Tenth, begun);
        Assert.Equal([(Usd(14.34m), Usd(14.20m))], DueLines.Of(book, Second).Select(due => (due.Rest, due.Has)));

        RoutinePlan plan = Routine.Plan(book, new RoutineDraft(Second)).Value!;
        Assert.Equal((Usd(14.34m), Usd(0.14m)), (plan.Debts.Rows[0].Payment, plan.Debts.Total));

        // Bought after the due date: it isn't asked for a minimum of days on which nothing was owed.
        Book later = By("gifts", 14.20m, new LocalDate(2026, 3, 17), begun);
        Assert.DoesNotContain(DueLines.Of(later, Second), due => due.Key.Debt is not null);
        RoutinePlan rests = Routine.Plan(later, new RoutineDraft(Second)).Value!;
        Assert.Equal(Usd(0), rests.Debts.Total);
        Assert.DoesNotContain(rests.Surplus.Placements, placement => placement.Target == MoveTarget.Debt(Card));
        Assert.Equal(Usd(14.20m), Closing.Of(rests).Value!.Has("account/for-card:card"));
    }

    [Fact]
    public void Plan_CardPaidOffOtherwise_GivesBackWhatWaits()
    {
        Book begun = Close(Core.Books.Book.Begin(House with { Debts = [Debt("Card", 0, 0.12m, 25, due: 15)] }), Friday6March);
        Book book = By("gifts", 14.20m, Tenth, begun);
        Book paid = Core.Moves.Moving.Enter(book, new(Tenth, Core.Moves.MoveEnds.Buffer, new LedgerEnd.Owed(Card), Usd(14.20m), "", null)).Value!;

        RoutinePlan plan = Routine.Plan(paid, new RoutineDraft(Second)).Value!;
        Assert.Equal(Usd(-14.20m), plan.Debts.Total);
        Book closed = Closing.Of(plan).Value!;
        AssertSound(closed);
        Assert.Equal(Usd(0), closed.Has("account/for-card:card"));
    }

    [Theory]
    [InlineData(null, 0, 0)]
    [InlineData(25, 0, 14.20)]
    [InlineData(30, 0, 9.20)]
    [InlineData(10, 15, 14.20)]
    public void Pay_TheDue_TakesItsOwnFirstAndThenWhatWaits(int? amount, int held, decimal waits)
    {
        Book book = Bought("gifts", 14.20m);
        DueLine due = DueLines.Of(book, Second).Single(line => line.Key.Debt is not null);
        Assert.Equal((Usd(39.20m), Usd(39.20m), Usd(14.20m)), (due.Rest, due.Has, due.Bought));

        Book paid = Said(Paying.Enter(book, new DueEntry(due.Key, new LocalDate(2026, 3, 15), amount is { } typed ? Usd(typed) : null), new LocalDate(2026, 3, 16)));
        Assert.Equal((Usd(held), Usd(waits)), (paid.Has("account/for-debt:card"), paid.Has("account/for-card:card")));
        Assert.Equal(amount == 10, DueLines.Of(paid, Second).Any(line => line.Key == due.Key));
    }

    [Fact]
    public void Pay_Freed_LeavesWhatWasBoughtWaiting()
    {
        Book book = Bought("gifts", 14.20m);
        DueLine due = DueLines.Of(book, Second).Single(line => line.Key.Debt is not null);

        Book waived = Said(Paying.Enter(book, new DueEntry(due.Key, Tenth, Usd(0), FreesRest: true), Tenth));
        Assert.Equal((Usd(25), Usd(14.20m)), (waived.Has("account/left-to-place") - book.Has("account/left-to-place"), waived.Has("account/for-card:card")));
    }

    [Fact]
    public void Refund_ToTheCard_LowersTheBalanceAndWhatWaits()
    {
        Book owed = By("food", -20, Tenth, Bought("food", 54.20m));
        Assert.Equal((Usd(-5664.20m), Usd(35), Usd(25)), (owed.Has("owed/card"), owed.Has("cash/owed-back:food"), owed.Has("cash/wallet:food")));

        Book waits = By("gifts", -4, Tenth, Bought("gifts", 14.20m));
        Assert.Equal((Usd(-5640.20m), Usd(10.20m), Usd(4.80m)), (waits.Has("owed/card"), waits.Has("account/for-card:card"), waits.Has("account/pot:gifts")));

        // Paid on the debt already: it is less now, and nothing is left that could go back.
        Book paid = By("gifts", -4, Second, Closing.Of(Routine.Plan(Bought("gifts", 14.20m), new RoutineDraft(Second)).Value!).Value!);
        Assert.Equal((Usd(0), Usd(15.80m)), (paid.Has("account/for-card:card"), paid.Has("account/pot:gifts")));
    }

    // What waits for the card came with the cash return of the 12th, so a refund of the 10th gives it back from then on.
    [Fact]
    public void Refund_BeforeWhatWaitsWasThere_IsDatedAsItCame()
    {
        Book book = By("food", -20, Tenth, Returned(Bought("food", 54.20m)));

        Assert.Equal((new LocalDate(2026, 3, 12), "doesn't wait for the card any more"), (book.Ledger.Movements[^1].Date, book.Ledger.Movements[^1].Reason));
        Assert.Equal((Usd(34.20m), Usd(20)), (book.Has("account/for-card:card"), book.Has("account/kept-back:food")));
    }

    // Interest of a day is on what was owed before it: what the card paid on that day is not in it, nor what is entered after it.
    [Theory]
    [InlineData(14, true)]
    [InlineData(15, false)]
    [InlineData(16, false)]
    public void Undo_OfAPurchase_IsSeenByTheInterestOfALaterDay(int day, bool seen)
    {
        Book book = Bought("gifts", 10, new LocalDate(2026, 3, day));
        Book charged = Said(Paying.Enter(book, new DueEntry(new(Card, new(2026, 3, 15)), new LocalDate(2026, 3, 16), Usd(25)), Second));
        Assert.Equal(seen, Purchasing.InTheWay(charged, 1) is not null);

        Book before = Said(Paying.Enter(Closed, new DueEntry(new(Card, new(2026, 3, 15)), new LocalDate(2026, 3, 16), Usd(25)), Second));
        Assert.Null(Purchasing.InTheWay(By("gifts", 10, new LocalDate(2026, 3, day), before), 1));
    }

    [Fact]
    public void Enter_WithSeveralDebts_AnyOfThemMayBeTheCard()
    {
        Book book = Core.Books.Book.Begin(House with { Debts = [Debt("Loan", 100, 0, 5, due: 1), Debt("Card", 6400, 0.12m, 25, due: 15)] });
        Assert.True(Purchasing.Enter(Close(book, Friday6March), new PurchaseEntry(Tenth, new PotId("food"), Usd(5), "") { Card = Card }).Ok);
    }

    // One card's refund is none of the other's.
    [Fact]
    public void Refund_ToTheAccount_LeavesWhatACardPaid()
    {
        Book book = By("food", -20, Tenth, Bought("food", 54.20m), card: null);

        Assert.Equal((Usd(55), Usd(20), Usd(-5684.20m)), (book.Has("cash/owed-back:food"), book.Has("account/kept-back:food"), book.Has("owed/card")));
    }

    [Fact]
    public void Undo_BeforeAnythingSawIt_LeavesAllAsItWas()
    {
        Assert.Equal(Closed.Ledger.Balances.All, Said(Purchasing.Undo(Bought("gifts", 14.20m), 1, Second)).Ledger.Balances.All.Where(end => !end.Value.IsZero));
    }

    [Fact]
    public void Undo_OnceItIsPaidOrInterestWasCharged_NamesWhat()
    {
        Book closed = Closing.Of(Routine.Plan(Bought("gifts", 14.20m), new RoutineDraft(Second)).Value!).Value!;
        Assert.Equal(new BookEntry.Payday(Second), Assert.IsType<Obstacle.GoneOn>(Purchasing.InTheWay(closed, 1)).To);

        Book book = Bought("gifts", 14.20m);
        DueLine due = DueLines.Of(book, Second).Single(line => line.Key.Debt is not null);
        Book charged = Paying.Enter(book, new DueEntry(due.Key, new LocalDate(2026, 3, 15), Usd(25)), Second).Value!;
        Assert.IsType<BookEntry.Payment>(Assert.IsType<Obstacle.GoneOn>(Purchasing.InTheWay(charged, 1)).To);
    }

    [Fact]
    public void Undoing_ThePaymentOfWhatWasBought_LetsItWaitAgain()
    {
        Book closed = Closing.Of(Routine.Plan(Bought("gifts", 14.20m), new RoutineDraft(Second)).Value!).Value!;
        long number = closed.Ledger.Movements.Single(movement => movement.From.Key == "account/for-card:card").Number;

        Book undone = Said(Undoing.Of(closed, number, Second, "typo"));
        Assert.Equal(Usd(14.20m), undone.Has("account/for-card:card"));
        Assert.Equal(Usd(25), DueLines.Paid(undone, Tenth).Single(paid => paid.Key.Debt == Card).Amount);
        Assert.Null(Undoing.OpenedAgain(closed, undone));
        Assert.Equal(Usd(39.20m), Routine.Plan(undone, new RoutineDraft(new LocalDate(2026, 4, 3))).Value!.Debts.Rows[0].Payment);
    }

    [Fact]
    public void Change_OfAHouseholdWithoutTheCard_IsRefusedWhileSomethingWaitsForIt()
    {
        Core.Households.Household without = House with { Debts = [] };
        Book paidOff = Core.Moves.Moving.Enter(Bought("food", 54.20m), new(Tenth, Core.Moves.MoveEnds.Buffer, new LedgerEnd.Owed(Card), Usd(54.20m), "", null)).Value!;

        Assert.Contains(HouseholdChange.Of(paidOff, without).Faults, fault => fault is ChangeFault.OnItsWay { Id: "card" });
        Assert.Contains(HouseholdChange.Of(Bought("gifts", 14.20m), without).Faults, fault => fault is ChangeFault.DebtHeld held && held.Held == Usd(39.20m));
    }

    // Whatever else happens: what the card paid is owed on it, and neither account nor cash has less.
    [Fact]
    public void Enter_InRandomLives_RaisesTheBalanceAlone()
    {
        Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var life = new FiveYears(Core.Books.Book.Begin(House), seed);
                Book before = life.Book;
                for (int day = 0; day < 40; day++)
                {
                    life.Live(Friday6March.PlusDays(day), book =>
                    {
                        CardPurchase[] added = [.. book.Weeks.Purchases.Skip(before.Weeks.Purchases.Count)];
                        if (added is [{ Card: { } card }, ..])
                        {
                            Money paid = Money.Sum(added.Select(part => part.Amount), Dollars);
                            Assert.Equal(before.Ledger.Balances.OwedOn(card) + paid, book.Ledger.Balances.OwedOn(card));
                            Assert.Equal(before.Ledger.Balances.In(Place.Account), book.Ledger.Balances.In(Place.Account));
                            Assert.Equal(before.Ledger.Balances.In(Place.Cash), book.Ledger.Balances.In(Place.Cash));
                        }

                        before = book;
                    });
                }
            },
            iter: 20);
    }

    [Fact]
    public void Enter_ByACardThatIsNone_IsRefused()
    {
        Assert.Equal(
            new PurchaseFault.NoSuchCard(new DebtId("none")),
            Purchasing.Enter(Closed, new PurchaseEntry(Tenth, new PotId("food"), Usd(1), "") { Card = new DebtId("none") }).Fault);
    }

    private static System.Collections.Immutable.ImmutableSortedDictionary<Core.Bills.DueKey, bool> DraftTicks(Book book, LocalDate payday, bool paid) =>
        new RoutineDraft(payday).PaidMinimums.SetItem(Routine.Plan(book, new RoutineDraft(payday)).Value!.Debts.Rows[0].Key!.Value, paid);

    private static Book Bought(string? pot, decimal amount, LocalDate? on = null) => By(pot, amount, on ?? Tenth, Closed);

    private static Book By(string? pot, decimal amount, LocalDate on, Book book, string? card = "card") => Said(Purchasing.Enter(
        book, new PurchaseEntry(on, pot is null ? null : new PotId(pot), Usd(amount), "shop") { Card = card is null ? null : new DebtId(card) }));

    private static Book Returned(Book book) => Said(ReturnPlan.Of(book, ReturnDraft.AsPlanned).Confirm(new LocalDate(2026, 3, 12)));

    private static Book Said(Result<Book> entered)
    {
        Assert.True(entered.Ok, entered.Fault.Said());
        AssertSound(entered.Value);
        return entered.Value;
    }
}
