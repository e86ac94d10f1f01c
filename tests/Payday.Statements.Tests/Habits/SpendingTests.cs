using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Habits;
using Payday.Statements.Lines;
using Payday.Statements.Tests.Made;

namespace Payday.Statements.Tests.Habits;

public sealed class SpendingTests
{
    // 2026-03-02 is a Monday: the days before it and after the last Sunday are parts of weeks and don't count.
    [Fact]
    public void ByWeek_WholeWeeks_HasMedianAndRange()
    {
        (string, StatementLine)[] lines =
        [
            ("Groceries", Line(1, -99_999)), ("Groceries", Line(2, -5000)), ("Groceries", Line(8, -1000)), ("Groceries", Line(9, -7000)),
            ("Groceries", Line(16, -4000)), ("Groceries", Line(17, 500)), ("Groceries", Line(30, -99_999)), ("Toys", Line(9, -1500)),
        ];

        SpendingSummary[] found = [.. Spending.ByWeek(lines, new LocalDate(2026, 2, 27), new LocalDate(2026, 4, 1))];

        Assert.Equal(
            [("Groceries", "35.00", "0.00", "70.00", 4), ("Toys", "0.00", "0.00", "15.00", 4)],
            found.Select(one => (one.Label, one.Median.ToPlain(), one.Low.ToPlain(), one.High.ToPlain(), one.Periods)));
    }

    [Fact]
    public void ByMonth_WholeMonths_HasMedianAndRange()
    {
        (string, StatementLine)[] lines = [.. Enumerable.Range(1, 6).Select(month => ("Fuel", Line(15, -1000 * month) with { Date = new LocalDate(2026, month, 15) }))];

        SpendingSummary found = Assert.Single(Spending.ByMonth(lines, new LocalDate(2026, 1, 2), new LocalDate(2026, 5, 31)));

        Assert.Equal(("30.00", "20.00", "50.00", 4), (found.Median.ToPlain(), found.Low.ToPlain(), found.High.ToPlain(), found.Periods));
    }

    [Fact]
    public void ByMonth_LessThanThreeWholeMonths_SaysNothing() =>
        Assert.Empty(Spending.ByMonth([("Fuel", Line(15, -1000))], new LocalDate(2026, 1, 2), new LocalDate(2026, 3, 31)));

    private static StatementLine Line(int day, long amount) => new(new LocalDate(2026, 3, day), Money.FromMinorUnits(amount, MadeStatements.Euro));
}
