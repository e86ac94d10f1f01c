using NodaTime;
using Payday.Core.Books;
using Payday.Core.Debts;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Status;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Status;

/// <summary>The way out of debt, against figures worked out by hand with the rules of the design (5.6).</summary>
public sealed class DebtsAheadTests
{
    // 300 come in, 100 of minimums go out: 200 are left for one of the two. After the minimums 253 and 358 are owed.
    private static Household Home => Bare with
    {
        Sources = [Bare.Sources[0] with { Expected = Usd(300) }],
        Debts = [Debt("Car", 300, 0.12m, 50, 10), Debt("Card", 400, 0.24m, 50, 10)],
    };

    // By hand, month by month. Car: 253 - 200, then 0.53 and 0.04 interest. Card: 7.16, 6.30, 4.50, 2.59, 0.64.
    // The highest rate first: Car 2.53, 2.06, 1.58, 1.09, 0.25; Card, 358 - 200, then 3.16, 2.22, 1.27, 0.29.
    [Theory]
    [InlineData(DebtOrder.SmallestBalance, 21.76, -7.31)]
    [InlineData(DebtOrder.HighestRate, 14.45, 7.31)]
    public void Of_TwoDebts_ComparesTheOrders(DebtOrder order, decimal interest, decimal other)
    {
        DebtsAhead ahead = Of(Home with { Settings = Home.Settings with { SurplusOrder = order } });

        Assert.Equal((Usd(200), Usd(interest), (Core.Amounts.Money?)Usd(other)), (ahead.Extra, ahead.AsProposed.Interest, ahead.OtherCosts));
        Assert.Equal((order, ahead.AsProposed.Months), (ahead.Order, ahead.OtherOrder.Months));
        Assert.NotEqual(ahead.Order, ahead.Other);
    }

    [Fact]
    public void Of_EachDebt_HasTheInterestOfTheNextMinimumToComeToo()
    {
        DebtsAhead ahead = Of(Home);

        Assert.Equal([Usd(3.00m + 0.57m), Usd(8.00m + 21.19m)], ahead.Debts.Select(debt => debt.InterestToCome));
        Assert.Equal([new YearMonth(2026, 5), new YearMonth(2026, 8)], ahead.Debts.Select(debt => debt.Course.PaidOff));
        Assert.All(ahead.Debts, debt => Assert.Equal(Usd(0), debt.InterestSoFar));

        // The same figure in the sentence as in the sum of the column.
        Assert.Equal(Usd(3.57m + 29.19m), ahead.InterestToCome(ahead.AsProposed));
    }

    [Fact]
    public void Owed_OfTheProposal_IsTheSumMonthByMonth()
    {
        DebtsAhead ahead = Of(Home);

        Assert.Equal(
            [Usd(611), Usd(3.53m + 315.16m), Usd(225.03m), Usd(129.53m), Usd(32.12m), Usd(0)],
            ahead.AsProposed.Owed.Where(owed => owed != Usd(411)));
        Assert.Equal(Usd(611), ahead.AtMinimums.Owed[0]);
        Assert.Equal(ahead.AtMinimums.Interest - ahead.AsProposed.Interest, ahead.Saved);
    }

    [Fact]
    public void Of_ADebtThatNeverEnds_HasNoInterestToCome()
    {
        DebtsAhead ahead = Of(Bare with { Sources = [Bare.Sources[0] with { Expected = Usd(5) }], Debts = [Debt("Card", 4000, 10m, 1, 10), Debt("Loan", 4000, 10m, 1, 10)] });

        Assert.All(ahead.Debts, debt => Assert.Null(debt.InterestToCome));
        Assert.Equal(long.MaxValue, ahead.AtMinimums.Owed[^1].MinorUnits);
    }

    [Fact]
    public void InterestSoFar_OfTheLedger_IsWhatStands()
    {
        Book book = Book.Begin(Home);
        var car = new LedgerEnd.Owed(new DebtId("car"));
        Ledger ledger = book.Ledger.Add([
            new Movement(0, Friday6March, car, LedgerEnd.InterestOn(new DebtId("car")), Usd(3), "Interest"),
            new Movement(0, Friday6March, car, LedgerEnd.Entered(EntryKind.Interest), Usd(1), "Interest"),
            new Movement(0, Friday6March, car, LedgerEnd.Entered(EntryKind.Fee), Usd(7), "Fee")]);

        Assert.Equal([Usd(4), Usd(0)], DebtsAhead.Of(book with { Ledger = ledger }, Friday6March).Debts.Select(debt => debt.InterestSoFar));
    }

    [Fact]
    public void Of_NoDebts_IsEmpty() => Assert.Empty(Of(Bare).Debts);

    private static DebtsAhead Of(Household home) => DebtsAhead.Of(Book.Begin(home), Friday6March);
}
