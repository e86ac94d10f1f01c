using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Debts;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Debts.Sample;

namespace Payday.Core.Tests.Debts;

/// <summary>
/// Published loans, projected. The sources keep fractions of a cent and round once; here every month is rounded
/// to the cent, so ends may differ by the cents stated.
/// </summary>
public class PublishedLoanTests
{
    // numpy-financial docstring: nper(0.07/12, -150, 8000) = 64.07334877, so the 65th payment is the last.
    [Fact]
    public void Project_150OnEightThousandAtSeven_TakesSixtyFiveMonths()
    {
        DebtProjection projection = Project(0, DebtOrder.HighestRate, Debt("car", 8000, 0.07m, 150));

        Assert.Equal(65, projection.Months);
        Assert.Equal(new YearMonth(2031, 5), projection.Debts[0].PaidOff);
    }

    // numpy-financial docstring: pmt(0.075/12, 180, 200000) = -1854.0247200054619. Paying the 1854.02 that a
    // bank would write leaves half a cent a month open, which with interest is less than 2.00 at the end.
    [Fact]
    public void PayMonth_180TimesTheRoundedPayment_LeavesCents() =>
        Assert.InRange(After(180, Debt("house", 200_000, 0.075m, 1854.02m)).Balance.MinorUnits, 0, 200);

    [Fact]
    public void Project_ACentMoreThanTheExactPayment_TakesItsMonths() =>
        Assert.Equal(180, Project(0, DebtOrder.HighestRate, Debt("house", 200_000, 0.075m, 1854.03m)).Months);

    // 12 CFR 1026 appendix M1/M2: P i / (1 - (1 + i)^-36) to the nearest cent pays off in 36 months. What the
    // rounding of the payment leaves open, at most half a cent a month and its interest, is below 0.35.
    [Theory]
    [InlineData(1000, "0.17", 35.65)]
    [InlineData(1000, "0.18", 36.15)]
    [InlineData(5000, "0.18", 180.76)]
    public void PayMonth_36TimesThePublishedPayment_PaysOffToTheCents(decimal balance, string rate, decimal payment)
    {
        DebtState debt = Debt("card", balance, decimal.Parse(rate, CultureInfo.InvariantCulture), payment);

        Assert.InRange(After(36, debt).Balance.MinorUnits, 0, 35);
        Money before = After(35, debt).Balance;
        Assert.InRange((before + before.MonthOfInterest(debt.YearlyRate) - Usd(payment)).MinorUnits, 0, 35);
        Assert.InRange(Project(0, DebtOrder.HighestRate, debt).Months, 36, 37);
        Assert.Equal(36, Project(0, DebtOrder.HighestRate, debt with { Minimum = new MinimumRule.Fixed(Usd(payment + 0.01m)) }).Months);
    }

    // The twelve-month table of the numpy-financial docstrings: 2500 at 8.24 %, payment 217.75, interest 112.98.
    [Fact]
    public void Project_TwelveMonthTable_CostsThePublishedInterest()
    {
        DebtProjection projection = Project(0, DebtOrder.HighestRate, Debt("table", 2500, 0.0824m, 217.75m));

        Assert.Equal(12, projection.Months);
        Assert.InRange((projection.Interest - Usd(112.98m)).MinorUnits, -6, 6);
    }
}
