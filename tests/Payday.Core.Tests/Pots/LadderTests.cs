using CsCheck;
using Payday.Core.Amounts;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Pots.PotSamples;

namespace Payday.Core.Tests.Pots;

public class LadderTests
{
    private static readonly PotKind.Ladder Weeks = new(Usd(1), 52, LadderOrder.Rising);

    // Savings schedules, computed: 1..52 is 1,378, 1..53 is 1,431, 1..100 is 5,050, 1..365 cents is 667.95.
    [Theory]
    [InlineData(100, 52, 1378)]
    [InlineData(100, 53, 1431)]
    [InlineData(100, 100, 5050)]
    [InlineData(1, 365, 667.95)]
    public void SumOf_AllSteps_IsThePublishedTotal(long unit, int steps, decimal total)
    {
        Assert.Equal(Usd(total), LadderSteps.SumOf(new(Cents(unit), steps, LadderOrder.Rising), steps));
        Assert.Equal(Usd(total), LadderSteps.SumOf(new(Cents(unit), steps, LadderOrder.Falling), steps));
        Assert.Equal(Cents(unit * steps), LadderSteps.SumOf(new(Cents(unit), steps, LadderOrder.Even), steps));
    }

    [Theory]
    [InlineData(LadderOrder.Rising, 0, 1, 1)]
    [InlineData(LadderOrder.Rising, 105, 15, 15)] // 1..14 is 105
    [InlineData(LadderOrder.Rising, 108, 12, 15)] // the rest of the step in progress
    [InlineData(LadderOrder.Rising, 1377, 1, 52)]
    [InlineData(LadderOrder.Falling, 0, 52, 1)]
    [InlineData(LadderOrder.Falling, 52, 51, 2)]
    [InlineData(LadderOrder.Falling, 100, 3, 2)]
    [InlineData(LadderOrder.Even, 14, 1, 15)]
    [InlineData(LadderOrder.Rising, -3, 1, 1)]
    public void Propose_Ladder_FillsTheStepInProgress(LadderOrder order, decimal putIn, decimal fill, int step) =>
        Assert.Equal(
            new FillProposal(Usd(fill), $"step {step} of 52", step, 52),
            Propose(Weeks with { Order = order }, Facts with { PutInSoFar = Usd(putIn) }));

    [Theory]
    [InlineData(1378)]
    [InlineData(2000)]
    public void Propose_LadderDone_AsksForNothing(decimal putIn) =>
        Assert.Equal(
            new FillProposal(Usd(0), "all 52 steps done", 52, 52),
            Propose(Weeks, Facts with { PutInSoFar = Usd(putIn) }));

    [Fact]
    public void Propose_LadderPaydayAfterPayday_GivesEveryStepOnce() =>
        Gen.Select(Gen.Int[1, 200], Gen.Int[1, 500], Gen.Enum<LadderOrder>()).Sample((steps, unit, order) =>
        {
            PotKind.Ladder ladder = new(Cents(unit), steps, order);
            List<long> fills = [];
            for (int i = 0; i < steps; i++)
            {
                Money putIn = Cents(fills.Sum());
                fills.Add(Propose(ladder, Facts with { PutInSoFar = putIn }).Amount.MinorUnits);
            }

            return fills.SequenceEqual(Enumerable.Range(1, steps).Select(step => (long)unit * (order switch
            {
                LadderOrder.Rising => step,
                LadderOrder.Falling => steps + 1 - step,
                _ => 1,
            })));
        }, iter: 50);

    [Fact]
    public void SumOf_NoSuchStep_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LadderSteps.SumOf(Weeks, 53));
        Assert.Throws<ArgumentOutOfRangeException>(() => LadderSteps.SumOf(Weeks, -1));
    }
}
