using NodaTime;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Reconciling;
using Payday.Core.Routines;
using Payday.Core.Status;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Status;

public class PaymentToMakeTests
{
    private static readonly LocalDate Today = Friday6March.PlusDays(1);

    // Of the wage of 1,000, 25 wait for the loan's minimum of 15 March; the rest goes on it.
    private static readonly Household Home = Bare with { Debts = [Debt("Loan", 9000, 0, 25, due: 15)] };

    private static readonly Book Closed = Close(Book.Begin(Home), Friday6March);

    [Fact]
    public void Of_NothingClosed_IsNone() => Assert.Empty(PaymentToMake.Of(Book.Begin(Home)));

    [Fact]
    public void Of_AfterAClosing_WaitsWithItsAmountAndPayday()
    {
        PaymentToMake payment = Assert.Single(PaymentToMake.Of(Closed));
        Assert.Equal((new DebtId("loan"), Usd(975), Friday6March), (payment.DebtId, payment.Amount, payment.Since));
        Assert.Equal(Usd(975), BookStatus.Of(Closed, Today).ExtraToPay);
        Assert.True(BookStatus.Of(Closed, Today).IsWaiting);
    }

    [Fact]
    public void Turned_SaidPaid_WaitsNoMoreUntilThatIsTakenBack()
    {
        PaymentToMake payment = PaymentToMake.Of(Closed)[0];
        Book said = payment.Turned(Closed);

        Assert.Empty(PaymentToMake.Of(said));
        Assert.True(Assert.Single(PaymentToMake.All(said)).IsSaid);
        Assert.Equal(Usd(0), BookStatus.Of(said, Today).ExtraToPay);
        Assert.Equal(Closed.Ledger, said.Ledger);

        Book back = PaymentToMake.All(said)[0].Turned(said);
        Assert.Equal([payment], PaymentToMake.Of(back));
        Assert.Empty(back.Weeks.Forms);

        // What was said of a payday that is reopened is of that one.
        Book reopened = Reopening.Of(said, Today).Value!;
        Assert.Equal(Usd(975), Assert.Single(PaymentToMake.Of(Closing.Of(Routine.Plan(reopened, reopened.Draft!).Value!).Value!)).Amount);
    }

    // Said twice it is said once; of a debt on which nothing was placed there is nothing to say.
    [Fact]
    public void Say_IsSaidOfTheDebt_AndAgainChangesNothing()
    {
        Book said = PaymentToMake.Say(Closed, new DebtId("loan"), paid: true)!;

        Assert.Empty(PaymentToMake.Of(said));
        Assert.Equal(said, PaymentToMake.Say(said, new DebtId("loan"), paid: true));
        Assert.Equal(PaymentToMake.Of(Closed), PaymentToMake.Of(PaymentToMake.Say(said, new DebtId("loan"), paid: false)!));
        Assert.Null(PaymentToMake.Say(Closed, new DebtId("other"), paid: true));
    }

    // A tick in a reconciliation that is only begun says nothing yet, and stays there when an accepted one is taken back.
    [Fact]
    public void Of_TickedInAReconciliationThatIsBegun_Waits()
    {
        PaymentToMake payment = PaymentToMake.Of(Closed)[0];
        Assert.Equal([payment], PaymentToMake.Of(ReconciliationPlan.Of(Closed, Today).Tick(payment.Line).Value!.Kept()));
    }

    [Fact]
    public void Of_ShownByTheBank_IsGoneUntilThatIsTakenBack()
    {
        ReconciliationPlan plan = ReconciliationPlan.Of(Closed, Today).TickAll();
        Book shown = plan.WithBalance(plan.Expected).Accept().Value!;
        Assert.Empty(PaymentToMake.Of(shown));

        Book back = ReconciliationUndo.Of(shown, ReconciliationUndo.Last(shown)!).Value!;
        Assert.Equal(PaymentToMake.Of(Closed), PaymentToMake.Of(back));
    }

    // A bank that shows all but this line: it waits on.
    [Fact]
    public void Of_NotAmongWhatTheBankShows_Stays()
    {
        PaymentToMake payment = PaymentToMake.Of(Closed)[0];
        ReconciliationPlan plan = ReconciliationPlan.Of(Closed, Today).TickAll().Tick(payment.Line).Value!;
        Book shown = plan.WithBalance(plan.Expected).Accept().Value!;

        Assert.Equal([payment], PaymentToMake.Of(shown));
        Assert.Equal(new OnTheWay(Usd(0), Usd(975), plan.Here + Usd(975), Usd(0)), BookStatus.Of(shown, Today).OnTheWay);
    }

    [Fact]
    public void Of_ReopenedOrUndone_LeavesNoTrace()
    {
        Assert.Empty(PaymentToMake.Of(Reopening.Of(Closed, Today).Value!));

        Book again = Closing.Of(Routine.Plan(Reopening.Of(Closed, Today).Value!, Reopening.Of(Closed, Today).Value!.Draft!).Value!).Value!;
        Assert.Equal(Usd(975), Assert.Single(PaymentToMake.Of(again)).Amount);

        long extra = PaymentToMake.Of(Closed)[0].Line;
        Assert.Empty(PaymentToMake.Of(Undoing.Of(Closed, extra, Today, "a mistake").Value!));
    }

    [Fact]
    public void Of_TheNextPaydayClosed_IsOfThatOne()
    {
        Book next = Close(Closed, Friday6March.PlusDays(14));
        Assert.Equal(Friday6March.PlusDays(14), Assert.Single(PaymentToMake.Of(next)).Since);
    }

    // Before the bank was looked at everything is on its way, which says nothing.
    [Fact]
    public void OnTheWay_NeverComparedWithTheBank_IsUnknown() => Assert.Null(OnTheWay.Of(Closed));

    // The account here and what is on its way add up to the bank's, also with a difference that was left.
    [Theory]
    [InlineData(0)]
    [InlineData(-4.5)]
    [InlineData(3)]
    public void OnTheWay_WithADifference_AddsUp(double off)
    {
        var difference = Usd((decimal)off);
        ReconciliationPlan plan = ReconciliationPlan.Of(Closed, Today).TickAll().Tick(PaymentToMake.Of(Closed)[0].Line).Value!;
        Book left = plan.WithBalance(plan.Expected + difference).Accept().Value!;

        OnTheWay way = OnTheWay.Of(left)!;
        Assert.Equal((plan.Expected + difference, difference), (way.Bank, way.Difference));
        Assert.Equal(way.Bank, plan.Here + way.Out - way.In + way.Difference);
    }
}
