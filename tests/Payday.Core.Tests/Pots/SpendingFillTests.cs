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
            Propose(new PotJob.Spending(Usd(130), FillPer.Week), Facts with { FillDays = fillDays }));

    [Fact]
    public void Propose_PerPayday_IsTheAmount() =>
        Assert.Equal(
            new FillProposal(Usd(1045.50m), "1,045.50 a payday"),
            Propose(new PotJob.Spending(Usd(1045.50m), FillPer.Payday), Facts));

    [Theory]
    [InlineData("6 20", 6, 90, 45, "90 a month, 1 of 2")]
    [InlineData("6 20", 20, 90, 45, "90 a month, 2 of 2")]
    [InlineData("6", 6, 90, 90, "90 a month")]
    [InlineData("6 20", 6, 95, 50, "95 a month, 1 of 2")] // the spare five goes to the first
    [InlineData("6 20", 20, 95, 45, "95 a month, 2 of 2")]
    [InlineData("6 20", 6, 92.50, 45, "92.50 a month, 1 of 2")]
    [InlineData("6 20", 20, 92.50, 47.50, "92.50 a month, 2 of 2")] // less than a five goes with the last
    [InlineData("6 13 20 +27", 6, 90, 30, "90 a month, 1 of 3")]
    [InlineData("6 13 20 +27", 27, 90, 0, "extra payday: already full")]
    public void Propose_PerMonth_SharesOverTheUsualPaydays(string days, int day, decimal amount, decimal fill, string why) =>
        Assert.Equal(new FillProposal(Usd(fill), why), Monthly(FillPer.Month, days, day, amount));

    [Theory]
    [InlineData(6, 35, "95 a month, 1 of 3")]
    [InlineData(20, 30, "95 a month, 2 of 3")]
    [InlineData(27, 30, "95 a month, 3 of 3")]
    public void Propose_MonthSpread_SharesOverAllPaydays(int day, decimal fill, string why) =>
        Assert.Equal(new FillProposal(Usd(fill), why), Monthly(FillPer.MonthSpread, "6 20 +27", day, 95));

    // A wage for 1 April is there on 31 March, the first being a holiday: that payday carries a part of both months.
    [Fact]
    public void Propose_PayOfTwoMonths_CarriesAPartOfBoth()
    {
        MonthPaydays april = new(new YearMonth(2026, 4), [new(2026, 3, 31), new(2026, 4, 17)], [new(2026, 3, 31), new(2026, 4, 17)]);
        PotFacts facts = Facts with { Payday = new LocalDate(2026, 3, 31), Months = [March("6 20 31"), april] };

        Assert.Equal(
            new FillProposal(Usd(30 + 45), "90 a month, 2 months"),
            Propose(new PotJob.Spending(Usd(90), FillPer.Month), facts));
    }

    [Fact]
    public void Propose_PerMonth_AddsUpToTheMonth() =>
        Gen.Select(Gen.Int[1, 5], Gen.Int[0, 100_000], Gen.OneOf(1, 500, 2_000), Gen.Bool).Sample((paydays, cents, unit, spread) =>
        {
            int[] dates = [.. Enumerable.Range(1, paydays)];
            string days = string.Join(' ', dates) + " +31";
            FillPer per = spread ? FillPer.MonthSpread : FillPer.Month;
            Money[] fills = [.. dates.Append(31).Select(day => Propose(
                new PotJob.Spending(Cents(cents), per),
                Facts with { Payday = new LocalDate(2026, 3, day), Months = [March(days)], Unit = Cents(unit) }).Amount)];
            return Money.Sum(fills, Dollars) == Cents(cents)
                && fills.All(fill => !fill.IsNegative)
                && fills[..(paydays - 1)].All(fill => fill.MinorUnits % unit == 0);
        });

    private static FillProposal Monthly(FillPer per, string days, int day, decimal amount) => Propose(
        new PotJob.Spending(Usd(amount), per),
        Facts with { Payday = new LocalDate(2026, 3, day), Months = [March(days)] });
}
