using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

public class MovementPairTests
{
    private static readonly Book Closed = Closing.Of(Routine.Plan(
        Book.Begin(Bare with
        {
            Bills = [Bill("Rent", 610, Friday6March, essential: true)],
            Debts = [Debt("Card", 6400, 0.12m, 25, due: 6)],
            Pots = [AccountPot("Gifts", 12.50m)],
        }),
        new RoutineDraft(Friday6March)).Value!).Value!;

    [Fact]
    public void Of_ABillsSetAsideAndPayment_AreEachOthers()
    {
        Movement paid = To(LedgerEnd.PaidFor(new BillId("rent")));
        Movement held = To(LedgerEnd.InAccount(Purpose.SetAside(new BillId("rent"))));

        Assert.Equal((held, paid), (MovementPair.Of(Closed, paid), MovementPair.Of(Closed, held)));
    }

    [Fact]
    public void Of_WhatIsForAMinimumAndItsPayment_AreEachOthers()
    {
        Movement interest = To(LedgerEnd.InterestOn(new DebtId("card")));
        Movement held = To(LedgerEnd.InAccount(Purpose.ForDebt(new DebtId("card"))));
        Movement payment = Closed.Ledger.Movements[(int)held.Number];
        Movement surplus = To(new LedgerEnd.Owed(new DebtId("card")));

        Assert.Equal(("minimum payment", "surplus"), (payment.Reason, surplus.Reason));
        Assert.Equal((payment, held, null, null), (MovementPair.Of(Closed, held), MovementPair.Of(Closed, payment), MovementPair.Of(Closed, surplus), MovementPair.Of(Closed, interest)));
    }

    [Fact]
    public void Of_WhatStandsAlone_IsNothing() => Assert.Null(MovementPair.Of(Closed, To(LedgerEnd.InAccount(Purpose.Pot(new PotId("gifts"))))));

    [Fact]
    public void Of_AHalfThatIsUndone_IsNothing()
    {
        Movement held = To(LedgerEnd.InAccount(Purpose.ForDebt(new DebtId("card"))));
        Book undone = Undoing.Of(Closed, held.Number + 1, Friday6March, "not paid").Value!;

        Assert.Null(MovementPair.Of(undone, held));
    }

    private static Movement To(LedgerEnd end) => Closed.Ledger.Movements.Last(movement => movement.To == end && movement.Payday is not null);
}
