using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.NotePlanning;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.NotePlanning.Requests;

namespace Payday.Core.Tests.NotePlanning;

public sealed class NotePlannerMachineTests
{
    [Theory]
    [InlineData(new long[] { 20 }, new long[] { 130, 130 }, new long[] { 140, 120 }, 0)]
    [InlineData(new long[] { 20 }, new long[] { 130, 130, 130 }, new long[] { 140, 120, 120 }, 10)]
    [InlineData(new long[] { 20 }, new long[] { 30 }, new long[] { 20 }, 10)]
    [InlineData(new long[] { 20 }, new long[] { 5, 5, 5, 5 }, new long[] { 20, 0, 0, 0 }, 0)]
    [InlineData(new long[] { 20 }, new long[] { 40, 60 }, new long[] { 40, 60 }, 0)]
    [InlineData(new long[] { 50, 20 }, new long[] { 30, 30 }, new long[] { 40, 20 }, 0)]
    [InlineData(new long[] { 50, 20 }, new long[] { 35, 35 }, new long[] { 50, 20 }, 0)]
    [InlineData(new long[] { 50 }, new long[] { 70, 70, 70, 70 }, new long[] { 100, 50, 50, 50 }, 30)]
    public void Plan_Machine_MovesWeeksToWhatCanBePaid(long[] machine, long[] wished, long[] paid, long keptBack)
    {
        NotePlan plan = NotePlanner.Plan(Machine(machine, null, [.. wished.Select(amount => Part("food", amount))]));
        Assert.Equal(paid.Select(Units), plan.Parts.Select(part => part.Paid));
        Assert.Equal(Units(keptBack), plan.KeptBack());
        Assert.Equal(wished.Sum(), plan.Parts.Sum(part => part.Amount.MinorUnits) / 100);
        Assert.Empty(plan.Faults);
    }

    [Fact]
    public void Plan_Machine_MovesNothingBetweenPots()
    {
        NotePlan plan = NotePlanner.Plan(Machine([20], null, Part("a", 130), Part("b", 130)));
        Assert.Equal([Units(120), Units(120)], plan.Parts.Select(part => part.Paid));
        Assert.Equal(Units(20), plan.KeptBack());
    }

    [Fact]
    public void Plan_MachineAndNotesOnHand_PaysWeeksAsWished()
    {
        NoteRequest request = Machine([20], null, Part("food", 130), Part("food", 130)) with { Loose = Loose((10, 2)) };
        NotePlan plan = NotePlanner.Plan(request);
        Assert.Equal([Units(130), Units(130)], plan.Parts.Select(part => part.Paid));
        Assert.Equal("20x12", plan.Withdraw.Text());
        Assert.Equal("10x2", plan.Reused.Text());
    }

    [Fact]
    public void Plan_LimitTooLow_ServesPotsInOrderAndNamesTheRest()
    {
        NoteRequest request = Machine([20], 200, Part("food", 120), Part("fun", 100), Part("fun", 60), Part("gifts", 40));
        NotePlan plan = NotePlanner.Plan(request);
        Assert.Equal([Units(120), Units(80), Units(0), Units(0)], plan.Parts.Select(part => part.Paid));
        Assert.Equal(Units(120), plan.LimitShort);
        Assert.Equal(Units(200), plan.WithdrawTotal);
        Assert.Equal(["fun", "fun", "gifts"], plan.Faults.Select(fault => fault.Pot.Text));
        Assert.All(plan.Faults, fault => Assert.Equal(NoteFaultKind.Limit, fault.Kind));
        Assert.Equal(
            "fun gets 80.00 of 100.00 because the machine's limit is too low; raise the limit or use a teller.",
            plan.Faults[0].Said(NumberStyle.Plain));
    }

    [Fact]
    public void Plan_LimitTooLow_StillServesFromNotesOnHand()
    {
        NoteRequest request = Machine([20], 45, Part("food", 100), Part("fun", 30), Part("gifts", 15)) with
        {
            Loose = Loose((20, 1), (10, 1), (5, 1)),
        };
        NotePlan plan = NotePlanner.Plan(request);
        Assert.Equal([Units(75), Units(0), Units(0)], plan.Parts.Select(part => part.Paid));
        Assert.Equal(Units(40), plan.WithdrawTotal);
    }

    [Fact]
    public void Plan_LimitExactlyEnough_ShortOfNothing()
    {
        NotePlan plan = NotePlanner.Plan(Machine([20], 120, Part("food", 130)));
        Assert.Equal(Units(120), plan.WithdrawTotal);
        Assert.True(plan.LimitShort.IsZero);
        Assert.Empty(plan.Faults);
    }

    [Fact]
    public void Plan_SmallMoneyTheMachineCannotGive_IsNamed()
    {
        NotePlan plan = NotePlanner.Plan(Machine([50, 20], null, Part("food", 90, small: (10, 20))));
        NoteFault fault = Assert.Single(plan.Faults);
        Assert.Equal((NoteFaultKind.SmallMoney, Units(0)), (fault.Kind, fault.Possible));
        Assert.Equal("50x1 20x2", plan.Parts[0].Notes.Text());
    }

    [Fact]
    public void Plan_SeededMachines_MoveLikeTheBestOfAllWays()
    {
        long[][] machines = [[20], [50], [50, 20], [30, 20], [100, 50, 20], [25, 10]];
        for (int seed = 0; seed < 300; seed++)
        {
            Random random = new(seed);
            long[] machine = machines[random.Next(machines.Length)];
            long? top = random.Next(4) == 0 ? 50 : null;
            long[] wished = [.. Enumerable.Range(0, random.Next(2, 5)).Select(_ => (long)random.Next(0, 20) * 5)];
            NotePlan plan = NotePlanner.Plan(Machine(machine, null, [.. wished.Select(amount => Part("pot", amount, top))]));
            long[] payable = [.. MachineWays.Payable(machine.Where(note => note <= (top ?? 100)), wished.Sum())];
            long[] asWished = [.. wished.Select(amount => payable.Last(sum => sum <= amount))];
            long[] best = MachineWays.Best(wished, payable);
            Assert.Equal(best.Sum() > asWished.Sum() ? best : asWished, plan.Parts.Select(part => part.Paid.MinorUnits / 100));
        }
    }

    private static NoteRequest Machine(long[] notes, long? limit, params NotePart[] parts) => new(
        Notes(100, 50, 20, 10, 5),
        Loose(),
        new CashSource.Machine(Notes(notes), limit is { } units ? Units(units) : null),
        [.. parts]);
}
