using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Routines;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Routines;

/// <summary>Food 60 and 60, fares 20 and 20, boots 30: 190 in two weeks.</summary>
public class MachineWithdrawalTests
{
    private static readonly CashSource.Machine Tens = new([Usd(20), Usd(10)], Usd(100));

    // The limit is that of one visit, and there are fourteen days.
    [Fact]
    public void Plan_AMachineWithALimit_FetchesAllInSeveralTrips()
    {
        RoutinePlan plan = PlanOf(Tens, draft => draft);

        Assert.Equal(Usd(190), plan.Withdrawal.Plan.WithdrawTotal);
        Assert.DoesNotContain(plan.Withdrawal.Plan.Faults, fault => fault.Kind == NoteFaultKind.Limit);
        Assert.Equal([Usd(100), Usd(90)], MachineTrips.Of(plan.Withdrawal.Plan.Withdraw, Tens.Limit).Select(trip => trip.Worth(Dollars)));
    }

    // 14 trips of 10 at most: the rest is kept back and named.
    [Fact]
    public void Plan_ALimitTooLowForThePeriod_NamesWhatIsKeptBack()
    {
        RoutinePlan plan = PlanOf(new CashSource.Machine([Usd(20), Usd(10)], Usd(10)), draft => draft);

        Assert.Equal(Usd(140), plan.Withdrawal.Plan.WithdrawTotal);
        Assert.Equal(Usd(50), plan.Withdrawal.KeptBack);
        Assert.Contains(plan.Withdrawal.Plan.Faults, fault => fault.Kind == NoteFaultKind.Limit);
        Assert.Equal(14, MachineTrips.Of(plan.Withdrawal.Plan.Withdraw, Usd(10)).Length);
    }

    [Fact]
    public void Plan_AMachineOrATellerThisTime_TakesItsNotes()
    {
        Assert.True(PlanOf(Tens, draft => draft with { AsksATeller = true }).Withdrawal.Plan.Withdraw[5000] > 0);
        Assert.Equal(0, PlanOf(new CashSource.Teller(), draft => draft with { Machine = Tens }).Withdrawal.Plan.Withdraw[5000]);
        Assert.Equal(Tens, new RoutineDraft(Friday6March).BankFor(Tens));
    }

    [Fact]
    public void SmallMoneyMissing_OfAMachineWithoutSmallNotes_NamesThePot()
    {
        RoutinePlan plan = PlanOf(Tens, draft => draft);
        Assert.Equal(["Food"], SmallMoneyMissing.Of(plan.Book.Household, ClosingRecord.AsPlanned(plan)).Select(pot => pot.Name));

        plan = PlanOf(new CashSource.Teller(), draft => draft);
        Assert.Empty(SmallMoneyMissing.Of(plan.Book.Household, ClosingRecord.AsPlanned(plan)));
    }

    private static RoutinePlan PlanOf(CashSource bank, Func<RoutineDraft, RoutineDraft> decide) => Routine.Plan(
        Book.Begin(House with
        {
            Settings = House.Settings with { Bank = bank },
            Pots = [.. House.Pots.Select(pot => pot.Name == "Food" ? pot with { Notes = new NoteWishes(null, new SmallMoney(Usd(5), Usd(10))) } : pot)],
        }),
        decide(new RoutineDraft(Friday6March))).Value!;
}
