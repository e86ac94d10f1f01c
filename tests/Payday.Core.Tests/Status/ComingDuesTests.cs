using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Status;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Status;

public class ComingDuesTests
{
    private static readonly LocalDate July = new(2026, 7, 1);

    private static readonly Household Home = Bare with
    {
        Bills = [Bill("Rent", 400, new(2026, 3, 15))],
        Debts = [Debt("Loan", 60, 0, 25, due: 15), Debt("Paid", 0, 0.2m, 25, due: 15)],
    };

    [Fact]
    public void Between_NothingClosed_HasBillsAndMinimumsUntilTheDebtIsPaid() => Assert.Equal(
        [
            (DueKind.Bill, new(2026, 3, 15), Usd(400)), (DueKind.Minimum, new(2026, 3, 15), Usd(25)),
            (DueKind.Bill, new(2026, 4, 15), Usd(400)), (DueKind.Minimum, new(2026, 4, 15), Usd(25)),
            (DueKind.Bill, new(2026, 5, 15), Usd(400)), (DueKind.Minimum, new(2026, 5, 15), Usd(10)),
            (DueKind.Bill, new(2026, 6, 15), Usd(400)),
        ],
        ComingDues.Between(Book.Begin(Home), Friday6March, July).Select(due => (due.Kind, due.Date, due.Amount)));

    // A month's interest of 1,846.19 at 23.49 % is 36.14; the larger of 25 and 2 % is 36.92, then of 1,845.41 it is 36.91.
    [Fact]
    public void Between_APartOfTheBalance_IsWorkedOutForwardMonthByMonth()
    {
        Household home = Bare with
        {
            Debts = [Debt("Card", 1846.19m, 0.2349m, 0, due: 12) with { Minimum = new Core.Debts.MinimumRule.PercentOrFloor(0.02m, Usd(25)) }],
        };
        Assert.Equal([Usd(36.92m), Usd(36.91m)], ComingDues.Between(Book.Begin(home), Friday6March, new(2026, 4, 30)).Select(due => due.Amount));
    }

    [Fact]
    public void Between_AWindow_TakesBothItsEnds()
    {
        Book book = Book.Begin(Home);
        Assert.Equal(2, ComingDues.Between(book, new(2026, 4, 15), new(2026, 4, 15)).Length);
        Assert.Equal(Usd(25), ComingDues.Between(book, new(2026, 4, 15), new(2026, 4, 15))[1].Amount);
        Assert.Empty(ComingDues.Between(book, new(2026, 4, 16), new(2026, 5, 14)));
    }

    [Fact]
    public void Between_Closed_StandsUntilTheNextPayday()
    {
        LocalDate last = new(2026, 3, 19);
        Book closed = Close(Book.Begin(Home), Friday6March);
        Assert.Contains(new ComingDue(DueOwner.Of(new DebtId("loan")), "Loan", new(2026, 3, 15), Usd(25), Paid: false), ComingDues.Between(closed, Friday6March, last));

        Book paid = Close(closed, new(2026, 3, 20));
        Assert.Contains(new ComingDue(DueOwner.Of(new DebtId("loan")), "Loan", new(2026, 3, 15), Usd(25), Paid: true), ComingDues.Between(paid, Friday6March, last));
    }

    // Both of 15 March wait in the account until they are ticked, or the next payday takes them as paid on their day.
    [Fact]
    public void Waiting_AfterItsDay_HasWhatIsNotPaid()
    {
        Book closed = Close(Book.Begin(Home), Friday6March);

        Assert.Equal(
            ["Rent", "Loan"], ComingDues.Waiting(closed, new(2026, 3, 14), new(2026, 3, 19)).Select(due => due.Name));
        Assert.Equal(["Rent", "Loan"], ComingDues.Waiting(closed, new(2026, 3, 17), new(2026, 3, 19)).Select(due => due.Name));
        Assert.Empty(ComingDues.Waiting(Close(closed, new(2026, 3, 20)), new(2026, 3, 20), new(2026, 4, 1)));
    }

    // The surplus of 6 March goes to the debt as well; it pays no due of its own.
    [Fact]
    public void Between_AfterAClosing_HasEachDueOnce()
    {
        Book closed = Close(Book.Begin(Home with { Debts = [Debt("Loan", 9000, 0, 25, due: 15)] }), Friday6March);
        Assert.Equal(
            [(new LocalDate(2026, 3, 15), Usd(25)), (new(2026, 4, 15), Usd(25)), (new(2026, 5, 15), Usd(25)), (new(2026, 6, 15), Usd(25))],
            ComingDues.Between(closed, Friday6March, July).Where(due => due.Kind == DueKind.Minimum).Select(due => (due.Date, due.Amount)));
    }
}
