using NodaTime;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.ClosedPaydays;

public class UndoingTests
{
    private static readonly LocalDate Today = new(2026, 3, 7);

    private static readonly Book Closed = Closing.Of(Routine.Plan(
        Book.Begin(Bare with
        {
            Bills = [Bill("Rent", 610, Friday6March, essential: true)],
            Pots = [CashPot("Food", 90), AccountPot("Gifts", 12.50m)],
        }),
        new RoutineDraft(Friday6March)).Value!).Value!;

    [Fact]
    public void Of_Fill_IsLeftToPlaceAtTheNextPayday()
    {
        Book undone = Undoing.Of(Closed, Number(LedgerEnd.InAccount(Purpose.Pot(new PotId("gifts")))), Today, " not this time ").Value!;

        Movement reverse = Assert.Single(undone.Ledger.Since(Closed.Ledger));
        Assert.Equal(("not this time", Usd(12.50m), Today), (reverse.Reason, reverse.Amount, reverse.Date));
        Assert.Null(Undoing.OpenedAgain(Closed, undone));
        RoutinePlan next = Routine.Plan(undone, new RoutineDraft(new(2026, 3, 20))).Value!;
        Assert.Equal(Usd(12.50m), next.Income.CarriedOver);
        Assert.True(Closing.Of(next).Ok);
    }

    [Fact]
    public void Of_BillPayment_LeavesTheBillToBePaid()
    {
        Book undone = Undoing.Of(Closed, Number(LedgerEnd.PaidFor(new BillId("rent"))), Today, "sent back").Value!;

        Assert.False(Assert.Single(Undoing.OpenedAgain(Closed, undone)!.Dues).Paid);
        DueRow due = Routine.Plan(undone, new RoutineDraft(new(2026, 3, 20))).Value!.Bills.Dues[0];
        Assert.Equal(("Rent", Friday6March, Usd(610)), (due.Name, due.Date, due.Amount));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("a reason that goes on and on, well past what anybody would want to read in a line")]
    public void Of_NoReasonOrALongOne_IsRefused(string reason) =>
        Assert.Equal("Say why it is undone, in 1 to 60 characters.", Undoing.Of(Closed, 2, Today, reason).Fault.Said());

    [Fact]
    public void Of_MovementOfNotes_IsRefused()
    {
        long number = Number(LedgerEnd.InCash(Purpose.Pot(new PotId("food"))));

        Assert.Equal(
            $"Ledger line {number} moves notes, so it isn't undone alone; reopen its payday, or count the pot instead.",
            Undoing.Of(Closed, number, Today, "wrong").Fault.Said());
    }

    [Fact]
    public void Of_OpeningBalance_IsRefused() =>
        Assert.Equal("Ledger line 1 is an opening balance; until a payday is closed or a pot counted, correct it in the household, under Opening balances.", Undoing.Of(Closed, 1, Today, "wrong").Fault.Said());

    [Fact]
    public void Of_UnknownOrUndone_IsRefused()
    {
        Assert.Equal("There is no ledger line 999.", Undoing.Of(Closed, 999, Today, "wrong").Fault.Said());
        long number = Number(LedgerEnd.InAccount(Purpose.Pot(new PotId("gifts"))));
        Assert.Equal($"Ledger line {number} is undone already.", Undoing.Of(Undoing.Of(Closed, number, Today, "wrong").Value!, number, Today, "wrong").Fault.Said());
    }

    [Fact]
    public void Of_MoneyThatHasGoneOn_IsRefused()
    {
        Book spent = Closed with
        {
            Ledger = Closed.Ledger.Add([new Movement(
                0, Today, LedgerEnd.InAccount(Purpose.Pot(new PotId("gifts"))), LedgerEnd.SpentFrom(new PotId("gifts")), Usd(5), "a card")]),
        };

        Assert.Equal(
            "Part of that money has gone on since: undoing it would leave -5.00 there; undo first what took it.",
            Undoing.Of(spent, Number(LedgerEnd.InAccount(Purpose.Pot(new PotId("gifts")))), Today, "wrong").Fault.Said());
    }

    private static long Number(LedgerEnd to) => Closed.Ledger.Movements.First(movement => movement.To == to).Number;
}
