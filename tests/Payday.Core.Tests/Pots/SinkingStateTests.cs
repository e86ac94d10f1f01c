using NodaTime;
using NodaTime.Text;
using Payday.Core.Calendar;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Pots;

public class SinkingStateTests
{
    private static readonly PotKind.Sinking Coats = new(Usd(120), new LocalDate(2026, 10, 15));

    private static readonly PotKind.Sinking Yearly = Coats with { Repeats = new Schedule.EveryMonths(12, Coats.By) };

    private static readonly PotKind.Sinking Quarterly = Coats with { Repeats = new Schedule.EveryMonths(3, Coats.By) };

    // Spending is written as day and amount; a refund is below zero.
    [Theory]
    [InlineData("2026-10-01", 100, "", SinkingStage.Saving)]
    [InlineData("2026-10-15", 100, "", SinkingStage.Saving)]
    [InlineData("2026-10-16", 120, "", SinkingStage.Saving)] // full, and waits to be spent
    [InlineData("2026-10-16", 80, "", SinkingStage.PastItsDate)]
    [InlineData("2026-10-01", 20, "2026-09-20 100", SinkingStage.Bought)] // before its date
    [InlineData("2026-10-30", 10, "2026-10-20 110", SinkingStage.Bought)]
    [InlineData("2026-10-30", 125, "2026-10-20 110", SinkingStage.Bought)]
    [InlineData("2026-10-01", 100, "2026-09-20 100, 2026-09-25 -100", SinkingStage.Saving)] // all of it came back
    [InlineData("2026-10-01", 60, "2026-09-20 100, 2026-09-25 -60", SinkingStage.Bought)]
    [InlineData("2026-10-01", 100, "2026-09-20 100, 2026-09-25 -150", SinkingStage.Saving)] // more came back than was spent
    public void Of_NeededOnce_AsksOnceItWasSpentOrItsDateIsPast(string payday, decimal balance, string spent, SinkingStage stage) =>
        Assert.Equal((stage, Coats.By), Shown(State(Coats, payday, balance, spent)));

    [Theory]
    [InlineData("2026-09-20", SinkingStage.Saving)]
    [InlineData("2026-09-19", SinkingStage.Bought)]
    public void Of_SettledSpending_CountsNoMore(string settledTo, SinkingStage stage) =>
        Assert.Equal(stage, State(Coats with { SettledTo = Date(settledTo) }, "2026-10-01", 20, "2026-09-20 100").Stage);

    [Fact]
    public void Of_Finished_IsFinishedWhateverItHas() =>
        Assert.Equal(SinkingStage.Finished, State(Coats with { Finished = true }, "2026-12-01", 80, "").Stage);

    [Theory]
    [InlineData("2026-10-01", 100, "", "2026-10-15")]
    [InlineData("2026-10-30", 10, "2026-10-10 110", "2027-10-15")]
    [InlineData("2026-10-30", 10, "2026-10-15 110", "2027-10-15")]
    [InlineData("2026-10-30", 10, "2026-10-20 110", "2027-10-15")]
    [InlineData("2026-12-30", 10, "2026-10-01 90, 2026-10-20 20", "2027-10-15")] // two parts of one purchase
    [InlineData("2026-12-30", 10, "2026-12-01 90, 2026-12-10 20", "2027-10-15")] // late, and again two parts
    [InlineData("2027-05-01", 60, "2026-10-01 90, 2027-04-01 20", "2027-10-15")] // nearer to the purchase before
    [InlineData("2027-10-01", 10, "2026-10-01 90, 2027-09-20 90", "2028-10-15")]
    [InlineData("2027-12-01", 120, "", "2026-10-15")] // waits, beyond its repeat too
    [InlineData("2027-12-01", 10, "2027-11-20 110", "2028-10-15")] // waited, then was bought
    [InlineData("2026-12-01", 0, "2026-10-01 90, 2026-11-01 -90, 2026-11-20 90", "2027-10-15")]
    public void Of_Yearly_SavesForTheFirstDateAfterThePurchase(string payday, decimal balance, string spent, string by) =>
        Assert.Equal((SinkingStage.Saving, Date(by)), Shown(State(Yearly, payday, balance, spent)));

    [Theory]
    [InlineData("2027-01-10", 80, "2026-10-15 120", SinkingStage.Saving, "2027-01-15")]
    [InlineData("2027-01-20", 80, "2026-10-15 120", SinkingStage.PastItsDate, "2027-01-15")]
    [InlineData("2027-01-20", 120, "2026-10-15 120", SinkingStage.Saving, "2027-01-15")]
    [InlineData("2027-03-20", 20, "2026-10-15 120, 2027-03-10 60, 2027-03-12 40", SinkingStage.Saving, "2027-04-15")] // waited, then in two parts
    [InlineData("2027-05-20", 20, "2026-10-15 120, 2027-05-10 100", SinkingStage.Saving, "2027-07-15")]
    [InlineData("2027-01-10", 80, "2026-10-15 100, 2026-11-30 20", SinkingStage.Saving, "2027-01-15")] // as near to the one before as to the next
    [InlineData("2027-01-10", 80, "2026-10-15 100, 2026-12-01 20", SinkingStage.Saving, "2027-04-15")]
    [InlineData("2027-01-10", 20, "2026-09-01 100, 2026-11-15 20", SinkingStage.Saving, "2027-01-15")] // early: its date counts, not the day
    public void Of_Quarterly_AsksWhereItsNextDateIsPastAndItIsNotFull(string payday, decimal balance, string spent, SinkingStage stage, string by) =>
        Assert.Equal((stage, Date(by)), Shown(State(Quarterly, payday, balance, spent)));

    [Theory]
    [InlineData("2026-09-20 100", 100)]
    [InlineData("2026-09-20 100, 2026-09-25 -60", 40)]
    [InlineData("2026-09-20 100, 2026-09-22 30, 2026-09-25 -60", 70)] // the last one goes first
    [InlineData("2026-09-20 100, 2026-09-25 -150, 2026-09-26 5", 5)]
    public void Of_Refunds_TakeBackWhatWasSpentLast(string spent, decimal left) =>
        Assert.Equal(Usd(left), State(Coats, "2026-10-01", 20, spent).Spent);

    [Fact]
    public void Of_NoDateLeft_IsFinished() =>
        Assert.Equal(
            SinkingStage.Finished,
            State(Coats with { Repeats = new Schedule.OnDates([new(2027, 1, 8)]) }, "2027-02-01", 20, "2026-10-15 100, 2027-01-08 100").Stage);

    private static SinkingState State(PotKind.Sinking kind, string payday, decimal balance, string spent) => SinkingState.Of(
        kind,
        Usd(balance),
        spent.Split(", ", StringSplitOptions.RemoveEmptyEntries).Select(part => part.Split(' ')).Select(part => new PotSpending(Date(part[0]), Usd(decimal.Parse(part[1])))),
        BankHolidays.None,
        Date(payday));

    private static (SinkingStage, LocalDate) Shown(SinkingState state) => (state.Stage, state.By);

    private static LocalDate Date(string iso) => LocalDatePattern.Iso.Parse(iso).Value;
}
