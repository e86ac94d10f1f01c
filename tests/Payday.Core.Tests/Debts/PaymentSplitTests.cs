using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Debts;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Debts;

public class PaymentSplitTests
{
    [Theory]
    [InlineData(1000, "0.12", 50, 10, 40, 960)]
    [InlineData(1000, "0.12", 10, 10, 0, 1000)]
    [InlineData(1000, "0.12", 4, 10, -6, 1006)] // below the interest: the balance grows
    [InlineData(1000, "0.12", 0, 10, -10, 1010)]
    [InlineData(1000, "0", 50, 0, 50, 950)]
    [InlineData(1000, "3", 300, 250, 50, 950)]
    [InlineData(1000, "0.12", 1010, 10, 1000, 0)]
    [InlineData(1000, "0.12", 1020, 10, 1010, -10)] // the lender owes 10
    public void Of_Payment_GivesInterestAndPrincipal(
        decimal balance, string rate, decimal payment, decimal interest, decimal principal, decimal after)
    {
        PaymentSplit split = PaymentSplit.Of(Usd(balance), decimal.Parse(rate, CultureInfo.InvariantCulture), Usd(payment));

        Assert.Equal(new PaymentSplit(Usd(interest), Usd(principal), Usd(after)), split);
        Assert.Equal(principal < 0, split.Grows);
    }

    // The ppmt and ipmt table of the numpy-financial docstrings: 2500 at 8.24 % in 12 months, payment 217.75.
    // The library keeps fractions of a cent (its payment is 217.7459...) and shows rounded values; here each
    // month is rounded, so a balance may be off by the cents that the larger payment gains: never above 0.06.
    [Fact]
    public void Of_TwelveMonthTable_MatchesPublishedBalances()
    {
        decimal[] published =
            [2299.42m, 2097.46m, 1894.11m, 1689.37m, 1483.22m, 1275.66m, 1066.67m, 856.25m, 644.38m, 431.05m, 216.26m];
        Money balance = Usd(2500);
        Money interest = Usd(0);
        foreach (decimal expected in published)
        {
            PaymentSplit split = PaymentSplit.Of(balance, 0.0824m, Usd(217.75m));
            balance = split.BalanceAfter;
            interest += split.Interest;
            Assert.InRange((balance - Usd(expected)).MinorUnits, -6, 6);
        }

        interest += balance.MonthOfInterest(0.0824m);
        Assert.InRange((interest - Usd(112.98m)).MinorUnits, -6, 6);
    }
}
