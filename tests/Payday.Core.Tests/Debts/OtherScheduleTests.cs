using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Ids;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Debts;

/// <summary>Projections of debts that are not due once a month. Figures worked out by hand.</summary>
public class OtherScheduleTests
{
    private static readonly YearMonth March = new(2026, 3);

    // 540 by 45 a Tuesday is twelve of them: five in March 2026, four in April, the last three in May.
    [Theory]
    [InlineData(null, 5)]
    [InlineData("2026-03-10", 5)] // ten are left: three in March, four in April, three of four in May
    [InlineData("2026-04-07", 6)]
    public void Project_Weekly_PaysAsManyAsEachMonthHas(string? covered, int month)
    {
        var debt = new DebtState(new DebtId("dental"), "Dental", Usd(covered == "2026-03-10" ? 450 : 540), 0, new MinimumRule.Fixed(Usd(45)))
        {
            Schedule = new Schedule.EveryWeeks(1, new(2026, 3, 3)),
            CoveredTo = covered is null ? null : NodaTime.Text.LocalDatePattern.Iso.Parse(covered).Value,
        };

        Assert.Equal(new YearMonth(2026, month), Project(debt).Debts[0].PaidOff);
    }

    // 1 % a month: 2.00 in March, when 100 are paid; 1.02, 1.03, 1.04, 100 in June; 0.05 three times, and 5.24 in September.
    [Fact]
    public void Project_Quarterly_IsChargedInTheMonthsBetween()
    {
        var debt = new DebtState(new DebtId("loan"), "Loan", Usd(200), 0.12m, new MinimumRule.Fixed(Usd(100))) { Schedule = new Schedule.EveryMonths(3, new(2026, 3, 15)) };

        DebtProjection projection = Project(debt);

        Assert.Equal((new YearMonth(2026, 9), Usd(5.24m)), (projection.Debts[0].PaidOff, projection.Interest));
    }

    // 1 % a month of 100, paid by two Tuesdays' 50: what is charged in a month that has been charged isn't charged again.
    [Theory]
    [InlineData(null, 1)]
    [InlineData("2026-03-02", 1)]
    [InlineData("2026-03-03", 0)]
    [InlineData("2026-03-17", 0)]
    public void Project_MonthThatIsCharged_HasNoMoreInterest(string? covered, int interest)
    {
        var debt = new DebtState(new DebtId("dental"), "Dental", Usd(100), 0.12m, new MinimumRule.Fixed(Usd(50)))
        {
            Schedule = new Schedule.EveryWeeks(1, new(2026, 3, 3)),
            CoveredTo = covered is null ? null : NodaTime.Text.LocalDatePattern.Iso.Parse(covered).Value,
        };

        Assert.Equal(Usd(interest), Project(debt).Interest);
    }

    // Balance and payment with the month's interest on top of a part: 1 % of 1,000 and 15, then of 990 and 14.85.
    [Fact]
    public void Project_PartAndInterest_AlwaysLowersTheBalance()
    {
        var rule = new MinimumRule.PercentOrFloor(0.01m, Usd(0)) { PlusInterest = true };
        var debt = new DebtState(new DebtId("card"), "Card", Usd(1000), 0.18m, rule);
        PayoffRun run = Sample.Run(0, 0, DebtOrder.HighestRate, debt);

        run.PayMonth();
        Assert.Equal(Usd(990), run.Debts[0].Balance);
        run.PayMonth();
        Assert.Equal((Usd(980.10m), Usd(29.85m)), (run.Debts[0].Balance, run.Debts[0].Interest));
    }

    private static DebtProjection Project(DebtState debt) => DebtProjection.Project(March, [debt], Usd(0), Usd(0), DebtOrder.HighestRate);
}
