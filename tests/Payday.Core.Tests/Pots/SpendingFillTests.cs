using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Pots.PotSamples;

namespace Payday.Core.Tests.Pots;

public class SpendingFillTests
{
    [Theory]
    [InlineData(2, 260, "130 a week, 2 weeks")]
    [InlineData(1, 130, "130 a week, 1 week")]
    [InlineData(5, 650, "130 a week, 5 weeks")]
    [InlineData(0, 0, "no fill day this period")]
    public void Propose_PerWeek_IsTheAmountForEachFillDay(int fillDays, decimal fill, string why) =>
        Assert.Equal(
            new FillProposal(Usd(fill), why),
            Propose(new PotKind.Spending(Usd(130), FillPer.Week), Facts with { FillDays = FillDays(fillDays) }));

    [Fact]
    public void Propose_PerPayday_IsTheAmount() =>
        Assert.Equal(
            new FillProposal(Usd(1045.50m), "1,045.50 a payday"),
            Propose(new PotKind.Spending(Usd(1045.50m), FillPer.Payday), Facts));

    [Theory]
    [InlineData("6 20", 6, 90, 0, 45, "90 a month, part 1 of 2")]
    [InlineData("6 20", 20, 90, 45, 45, "90 a month, part 2 of 2")]
    [InlineData("6", 6, 90, 0, 90, "90 a month")]
    [InlineData("6 20", 6, 95, 0, 50, "95 a month, part 1 of 2")] // the spare five goes to the first
    [InlineData("6 20", 20, 95, 50, 45, "95 a month, part 2 of 2")]
    [InlineData("6 20", 6, 92.50, 0, 45, "92.50 a month, part 1 of 2")]
    [InlineData("6 20", 20, 92.50, 45, 47.50, "92.50 a month, part 2 of 2")] // less than a five goes with the last
    [InlineData("6 13 20 +27", 6, 90, 0, 30, "90 a month, part 1 of 3")]
    [InlineData("6 13 20 +27", 27, 90, 90, 0, "extra payday: already full")]
    [InlineData("6 20 +27", 27, 90, 65, 25, "extra: 25 was missed")] // 45, then a short 20
    [InlineData("6 20", 20, 90, 20, 70, "70 of 90 to go")]
    [InlineData("6 13 20", 13, 90, 10, 40, "80 of 90 to go")] // what was missed is shared by those left
    [InlineData("6 20", 20, 90, 90, 0, "90 a month, full")]
    [InlineData("6 20", 20, 90, 120, 0, "90 a month, full")] // more by hand than the month's amount
    [InlineData("6 +13 20", 13, 90, 45, 0, "extra payday: already full")] // the usual one to come carries its share
    [InlineData("6 +13 20", 13, 90, 20, 25, "extra: 25 was missed")]
    [InlineData("6 +13 20", 20, 90, 45, 45, "90 a month, part 2 of 2")]
    public void Propose_PerMonth_SharesWhatIsLackingOverTheUsualPaydaysLeft(string days, int day, decimal amount, decimal soFar, decimal fill, string why) =>
        Assert.Equal(new FillProposal(Usd(fill), why), Monthly(FillPer.Month, days, day, amount, soFar));

    [Theory]
    [InlineData(6, 0, 35, "95 a month, part 1 of 3")]
    [InlineData(20, 35, 30, "95 a month, part 2 of 3")]
    [InlineData(27, 65, 30, "95 a month, part 3 of 3")]
    [InlineData(20, 10, 45, "85 of 95 to go")]
    public void Propose_MonthSpread_SharesOverAllPaydays(int day, decimal soFar, decimal fill, string why) =>
        Assert.Equal(new FillProposal(Usd(fill), why), Monthly(FillPer.MonthSpread, "6 20 +27", day, 95, soFar));

    [Theory]
    [InlineData(1, "6 20", 6, 45, "90 a month, part 1 of 2")]
    [InlineData(6, "6 20", 6, 45, "90 a month, part 1 of 2")]
    [InlineData(6, "6 20", 20, 90, "90 of 90 to go")]
    [InlineData(7, "6 20", 20, 45, "90 a month, part 2 of 2")]
    [InlineData(7, "6 13 20", 13, 30, "90 a month, part 2 of 3")]
    [InlineData(21, "6 20 +27", 27, 0, "extra payday: already full")]
    [InlineData(18, "6 20 +27", 27, 45, "extra: 45 was missed")]
    public void Propose_PerMonth_OwesNothingForPaydaysBeforeTheStart(int start, string days, int day, decimal fill, string why) => Assert.Equal(
        new FillProposal(Usd(fill), why),
        Propose(
            new PotKind.Spending(Usd(90), FillPer.Month),
            Facts with { Start = new LocalDate(2026, 3, start), Payday = new LocalDate(2026, 3, day), Months = Months(March(days)) }));

    // A wage for 1 April is there on 31 March, the first being a holiday: that payday carries a part of both months.
    [Fact]
    public void Propose_PayOfTwoMonths_CarriesAPartOfBoth()
    {
        MonthPaydays april = new(new YearMonth(2026, 4), [new(2026, 3, 31), new(2026, 4, 17)], [new(2026, 3, 31), new(2026, 4, 17)]);
        PotFacts facts = Facts with { Payday = new LocalDate(2026, 3, 31), Months = [.. Months(March("6 20 31"), 60), .. Months(april)] };

        Assert.Equal(
            new FillProposal(Usd(30 + 45), "90 a month, 2 months"),
            Propose(new PotKind.Spending(Usd(90), FillPer.Month), facts));
    }

    [Fact]
    public void Propose_PerMonth_AddsUpToTheMonth() =>
        Gen.Select(Gen.Int[1, 5], Gen.Int[0, 100_000], Gen.OneOf(1, 500, 2_000), Gen.Bool).Sample((paydays, cents, unit, spread) =>
        {
            int[] dates = [.. Enumerable.Range(1, paydays)];
            string days = string.Join(' ', dates) + " +31";
            FillPer per = spread ? FillPer.MonthSpread : FillPer.Month;
            List<Money> fills = [];
            foreach (int day in dates.Append(31))
            {
                fills.Add(Propose(
                    new PotKind.Spending(Cents(cents), per),
                    Facts with { Payday = new LocalDate(2026, 3, day), Months = [new MonthFills(March(days), Money.Sum(fills, Dollars))], Unit = Cents(unit) }).Amount);
            }

            return Money.Sum(fills, Dollars) == Cents(cents)
                && fills.All(fill => !fill.IsNegative)
                && fills.Take(paydays - 1).All(fill => fill.MinorUnits % unit == 0);
        });

    private static FillProposal Monthly(FillPer per, string days, int day, decimal amount, decimal soFar) => Propose(
        new PotKind.Spending(Usd(amount), per),
        Facts with { Payday = new LocalDate(2026, 3, day), Months = Months(March(days), soFar) });
}
