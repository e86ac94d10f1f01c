using CsCheck;
using Payday.Core.Amounts;
using Payday.Core.Debts;
using Payday.Core.Ids;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Debts.Sample;

namespace Payday.Core.Tests.Debts;

public class SurplusPlanTests
{
    private static readonly DebtState[] Debts =
        [Debt("plain", 300, 0.10m, 10), Debt("small", 200, 0.05m, 10), Debt("dear", 400, 0.20m, 10)];

    [Theory]
    [InlineData(DebtOrder.SmallestBalance, null, 150, "small 150.00", 0)]
    [InlineData(DebtOrder.SmallestBalance, null, 250, "small 200.00, plain 50.00", 0)]
    [InlineData(DebtOrder.HighestRate, null, 450, "dear 400.00, plain 50.00", 0)]
    [InlineData(DebtOrder.HighestRate, "small", 450, "small 200.00, dear 250.00", 0)]
    [InlineData(DebtOrder.HighestRate, "gone", 10, "dear 10.00", 0)]
    [InlineData(DebtOrder.HighestRate, null, 1000, "dear 400.00, plain 300.00, small 200.00", 100)]
    [InlineData(DebtOrder.HighestRate, null, 0, "", 0)]
    public void Propose_Surplus_GoesDownTheOrder(DebtOrder order, string? chosen, decimal surplus, string payments, decimal left)
    {
        SurplusPlan plan = SurplusPlan.Propose(Debts, Usd(surplus), order, chosen is null ? null : new DebtId(chosen));

        Assert.Equal(payments, string.Join(", ", plan.Payments.Select(p => $"{p.DebtId} {p.Amount.ToPlain()}")));
        Assert.Equal(Usd(left), plan.LeftOver);
    }

    [Theory]
    [InlineData(DebtOrder.SmallestBalance, "b")] // the same balance: the higher rate
    [InlineData(DebtOrder.HighestRate, "c")] // the same rate: the smaller balance
    public void Propose_Tie_IsForTheOtherCriterion(DebtOrder order, string first) =>
        Assert.Equal(first, SurplusPlan.Propose(
            order == DebtOrder.SmallestBalance
                ? [Debt("a", 100, 0.1m, 1), Debt("b", 100, 0.2m, 1), Debt("c", 150, 0.3m, 1)]
                : [Debt("a", 100, 0.1m, 1), Debt("b", 90, 0.2m, 1), Debt("c", 80, 0.2m, 1)],
            Usd(1), order).Payments[0].DebtId.Text);

    [Theory]
    [InlineData(DebtOrder.SmallestBalance)]
    [InlineData(DebtOrder.HighestRate)]
    public void Propose_FullTie_IsForTheFirstInTheList(DebtOrder order) =>
        Assert.Equal("b", SurplusPlan.Propose([Debt("b", 9, 0.1m, 1), Debt("a", 9, 0.1m, 1)], Usd(1), order).Payments[0].DebtId.Text);

    [Fact]
    public void Propose_PaidDebts_GetNothing()
    {
        SurplusPlan plan = SurplusPlan.Propose(
            [Debt("paid", 0, 0.3m, 1), Debt("credit", -5, 0.3m, 1)], Usd(10), DebtOrder.HighestRate, new DebtId("paid"));

        Assert.Empty(plan.Payments);
        Assert.Equal(Usd(10), plan.LeftOver);
    }

    [Fact]
    public void Propose_NegativeSurplus_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SurplusPlan.Propose(Debts, Usd(-1), DebtOrder.HighestRate));

    [Fact]
    public void Propose_AnySurplus_LosesNothing() =>
        Gen.Select(Gen.Int[0, 1_000].Array[0, 6], Gen.Int[0, 5_000], Gen.Enum<DebtOrder>()).Sample((balances, surplus, order) =>
        {
            DebtState[] debts = [.. balances.Select((b, i) => new DebtState(
                new($"{i}"), "", Cents(b), i % 3 / 10m, new MinimumRule.Fixed(Cents(0))))];
            SurplusPlan plan = SurplusPlan.Propose(debts, Cents(surplus), order);
            return Money.Sum(plan.Payments.Select(p => p.Amount), Dollars) + plan.LeftOver == Cents(surplus)
                && plan.Payments.All(p => p.Amount.IsPositive && p.Amount <= debts.Single(d => d.Id == p.DebtId).Balance);
        });
}
