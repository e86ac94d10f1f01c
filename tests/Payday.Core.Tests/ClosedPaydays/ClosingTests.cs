using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.ClosedPaydays;

public class ClosingTests
{
    private static readonly Household Full = Bare with
    {
        Bills =
        [
            Bill("Rent", 610, new(2026, 3, 10), essential: true), Bill("Phone", 31.75m, new(2026, 3, 18)),
            Bill("Insurance", 412.60m, new(2026, 9, 2), months: 12),
        ],
        Debts = [Debt("Card", 640, 0.1999m, 25, due: 15), Debt("Loan", 2400, 0.065m, 80, due: 28)],
        Pots = [CashPot("Food", 93.40m, rank: 1), CashPot("Fares", 21.35m, rank: 2), AccountPot("Gifts", 12.50m, rank: 3)],
        Opening = Bare.Opening with
        {
            SetAside = BillSums(("rent", 200)),
            LooseNotes = Notes.Of([(2000, 3), (500, 2)]),
        },
    };

    [Fact]
    public void Of_WholeRoutine_GivesEveryUnitAPurpose()
    {
        Book book = Book.Begin(Full);

        Book closed = Closing.Of(Routine.Plan(book, new RoutineDraft(Friday6March)).Value!).Value!;

        Balances after = closed.Ledger.Balances;
        Assert.Equal(Usd(0), after[LedgerEnd.InAccount(Purpose.LeftToPlace)]);
        Assert.Empty(LedgerCheck.Faults(after));
        Movement[] written = [.. closed.Ledger.Since(book.Ledger)];
        Assert.All(written, movement => Assert.Equal(Friday6March, movement.Payday));
        Assert.Equal(written.Length, closed.LastClosed!.LastMovement - closed.LastClosed.FirstMovement + 1);
    }

    // What is placed on debts is said before closing and after it.
    [Fact]
    public void ExtraPayment_OfAPlannedAndAClosedPayday_AreWhatWasPlacedOnDebts()
    {
        Book book = Book.Begin(Full);
        RoutinePlan plan = Routine.Plan(book, new RoutineDraft(Friday6March)).Value!;
        ExtraPayment[] placed = [.. plan.Surplus.Placements.Where(one => one.Target is MoveTarget.ToDebt).Select(one => new ExtraPayment(((MoveTarget.ToDebt)one.Target).Id, one.Amount))];
        Assert.NotEmpty(placed);

        Assert.Equal(placed, ExtraPayment.Of(book, ClosingRecord.AsPlanned(plan)));
        Book closed = Closing.Of(plan).Value!;
        Assert.Equal(placed, ExtraPayment.Of(closed, closed.LastClosed!));
    }

    [Fact]
    public void Of_ReusedNotes_SwapPlacesWithTheBuffer()
    {
        Book book = Book.Begin(Full);
        RoutinePlan plan = Routine.Plan(book, new RoutineDraft(Friday6March)).Value!;
        Book closed = Closing.Of(plan).Value!;

        Assert.Equal(Usd(70), plan.Withdrawal.Plan.ReusedTotal);
        Balances before = book.Ledger.Balances;
        Balances after = closed.Ledger.Balances;
        Assert.Equal(before[LedgerEnd.InCash(Purpose.Buffer)] - Usd(70), after[LedgerEnd.InCash(Purpose.Buffer)]);
        Money toBuffer = Money.Sum(
            plan.Surplus.Placements.Where(placement => placement.Target == MoveTarget.Buffer).Select(placement => placement.Amount), Dollars);
        Assert.Equal(before[LedgerEnd.InAccount(Purpose.Buffer)] + Usd(70) + toBuffer, after[LedgerEnd.InAccount(Purpose.Buffer)]);
        Assert.Equal(Usd(70), ReusedNotes.ToBuffer(closed.Ledger.Since(book.Ledger)));
        Assert.Null(ReusedNotes.ToBuffer([]));
    }

    [Fact]
    public void Of_KeptBack_JoinsTheNextFill()
    {
        Book first = Close(Book.Begin(Full), Friday6March);
        Money kept = first.Ledger.Balances[LedgerEnd.InAccount(Purpose.KeptBack(new PotId("fares")))];
        RoutinePlan second = Routine.Plan(first, new RoutineDraft(new(2026, 3, 20))).Value!;

        Assert.Equal(Usd(2.70m), kept);
        Assert.Equal(Usd(42.70m) + kept, second.Withdrawal.Pots.Single(row => row.Pot.Id == new PotId("fares")).Amount);
    }

    [Fact]
    public void Of_DueNotPaid_IsTakenUpAtTheNextPayday()
    {
        Book first = Close(Book.Begin(Full), Friday6March);
        BillsStep bills = Routine.Plan(first, new RoutineDraft(new(2026, 3, 20))).Value!.Bills;

        Assert.Equal(
            [("Rent", true), ("Phone", true)],
            bills.Dues.Where(due => due.Date < new LocalDate(2026, 3, 20)).Select(due => (due.Name, due.Paid)));
        Assert.Equal(Usd(610), first.Ledger.Balances[LedgerEnd.InAccount(Purpose.SetAside(new BillId("rent")))]);
        Book second = Close(first, new(2026, 3, 20));
        Assert.Equal(Usd(610), second.Ledger.Balances[LedgerEnd.PaidFor(new BillId("rent"))]);
    }

    [Fact]
    public void Plan_ClosedPayday_IsRefused() =>
        Assert.Equal(
            "The payday of 2026-03-06 is closed, so none up to it can be worked on again.",
            Routine.Plan(Close(Book.Begin(Full), Friday6March), new RoutineDraft(Friday6March)).Fault.Said());

    // Whatever comes in, a year of paydays either closes with every unit accounted for, or is refused and changes nothing.
    [Fact]
    public void Of_AYearOfUnevenPaydays_KeepsTheLedgerSound() =>
        Gen.Int[60_000, 160_000].Array[26].Sample(
            incomes =>
            {
                Book book = Book.Begin(Full);
                Money put = book.Ledger.Balances.In(Place.Account) + book.Ledger.Balances.In(Place.Cash);
                foreach (int income in incomes)
                {
                    var draft = new RoutineDraft(Routine.Next(book).Value) { Incomes = SourceSums().Add(new SourceId("wage"), Cents(income)) };
                    RoutinePlan plan = Routine.Plan(book, draft).Value!;
                    Result<Book> closing = Closing.Of(plan);
                    if (!closing.Ok)
                    {
                        // Refused: help comes from outside, as a one-off of what is missing.
                        draft = draft with { OneOffs = Sums().Add("Help", -plan.LeftToPlace) };
                        closing = Closing.Of(Routine.Plan(book, draft).Value!);
                        put += -plan.LeftToPlace;
                    }

                    put += Cents(income);
                    book = closing.Value!;
                    Assert.Empty(LedgerCheck.Faults(book.Ledger.Balances));
                    Assert.All(book.Ledger.Balances.PurposesIn(Place.Account), purpose => Assert.False(purpose.Amount.IsNegative, $"{purpose}"));
                    Assert.Equal(Usd(0), book.Ledger.Balances[LedgerEnd.InAccount(Purpose.LeftToPlace)]);
                }

                Balances after = book.Ledger.Balances;
                Money wentOut = Money.Sum(
                    book.Ledger.Movements.Where(movement => movement.From is LedgerEnd.At && movement.To is not LedgerEnd.At).Select(movement => movement.Amount),
                    Dollars);
                Assert.Equal(put, after.In(Place.Account) + after.In(Place.Cash) + wentOut);
            },
            iter: 40);

    private static Book Close(Book book, LocalDate payday) => Closing.Of(Routine.Plan(book, new RoutineDraft(payday)).Value!).Value!;
}
