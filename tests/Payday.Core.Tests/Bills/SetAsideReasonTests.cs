using CsCheck;
using Payday.Core.Bills;
using static Payday.Core.Tests.Bills.Plans;

namespace Payday.Core.Tests.Bills;

public class SetAsideReasonTests
{
    [Fact]
    public void Of_ALargeDueLater_IsSetByIt()
    {
        // 30 a payday until the fourth, which pays the 100; then nothing is left to save for but 10.
        Due[] dues = [DueOn(3, 20, "water"), DueOn(23, 100, "car"), DueOn(24, 5, "club"), DueOn(38, 10, "radio")];

        SetAsideReason reason = Reason(0, [200, 200, 200, 200, 200, 200], dues)!;

        Assert.Equal((32m / 200, FirstPayday.PlusWeeks(3), "car"), (reason.Share, reason.Payday, reason.Sets.Name));
    }

    // What falls due on the payday itself is of its period, and what does on the next payday, though larger, isn't.
    [Fact]
    public void Of_DuesOnTheEdgesOfAPeriod_IsSetByTheOneInIt()
    {
        Due[] dues = [DueOn(21, 24, "edge"), .. Enumerable.Range(0, 6).Select(i => DueOn(22, 16, $"small {i}")), DueOn(28, 28, "next")];

        SetAsideReason reason = Reason(0, [200, 200, 200, 200, 200, 200], dues)!;

        Assert.Equal((30m / 200, FirstPayday.PlusWeeks(3), "edge"), (reason.Share, reason.Payday, reason.Sets.Name));
    }

    [Fact]
    public void Of_OnlyWhatIsDueNow_HasNoReasonBeyondIt() => Assert.Null(Reason(0, [200, 200], [DueOn(3, 100, "car")]));

    [Fact]
    public void Of_NothingSetAside_HasNoReason() => Assert.Null(Reason(300, [200, 200], [DueOn(10, 100, "car")]));

    // The share holds for every pay up to the payday that sets it, to a minor unit, and for less of each one after.
    [Fact]
    public void Of_AnyPlan_IsTheShareOfEachPayUpToWhatSetsIt() => SomeCase.Sample(some =>
    {
        SetAsidePlan plan = SetAsidePlanner.Plan(SetAsideMode.Level, some.Held, some.Paydays, some.Dues);
        if (some.Paydays.Length == 0 || SetAsideReason.Of(plan, some.Paydays[0].Income, some.Dues) is not { } reason)
        {
            return;
        }

        int corner = plan.Rows.Select((row, k) => (row, k)).First(pair => pair.row.Date == reason.Payday).k;
        Assert.True(plan.Rows[corner].HeldAfter.IsZero || corner == plan.Rows.Length - 1);
        Assert.All(plan.Rows.Take(corner), row => Assert.True(row.HeldAfter.IsPositive));
        for (int k = 0; k < corner; k++)
        {
            // Rounding may move a minor unit each way.
            decimal exact = reason.Share * some.Paydays[k].Income.MinorUnits;
            Assert.True(plan.Rows[k].SetAside.MinorUnits <= exact + 1, $"payday {k}");
        }

        Assert.Contains(some.Dues, due => ReferenceEquals(due, reason.Sets));
    });

    private static SetAsideReason? Reason(long held, long[] pays, Due[] dues) =>
        SetAsideReason.Of(SetAsidePlanner.Plan(SetAsideMode.Level, Cents(held), Paydays(pays), dues), Cents(pays[0]), dues);
}
