using CsCheck;
using Payday.Core.Amounts;
using Payday.Core.Debts;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Debts;

public class PayoffRunTests
{
    private static readonly Gen<MinimumRule> AnyMinimum = Gen.OneOf<MinimumRule>(
        Gen.Int[0, 20_000].Select(cents => (MinimumRule)new MinimumRule.Fixed(Cents(cents))),
        Gen.Select(Gen.Int[0, 100], Gen.Int[0, 5_000])
            .Select(pair => (MinimumRule)new MinimumRule.PercentOrFloor(pair.Item1 / 1_000m, Cents(pair.Item2))));

    private static readonly Gen<DebtState[]> AnyDebts =
        Gen.Select(Gen.Int[0, 500_000], Gen.Int[0, 600], AnyMinimum).Array[1, 5].Select(debts => debts.Select((debt, i) =>
            new DebtState(new($"{i}"), $"{i}", Cents(debt.Item1), debt.Item2 / 1_000m, debt.Item3)).ToArray());

    private static readonly Gen<DebtOrder> AnyOrder = Gen.Enum<DebtOrder>();

    [Fact]
    public void PayMonth_AnyDebts_PaysWhatIsOwedAndNoMore() =>
        Gen.Select(AnyDebts, Gen.Int[0, 50_000], Gen.Int[0, 100_000], AnyOrder).Sample((debts, extra, once, order) =>
        {
            // An account of its own: what is paid in all must come to the balances and all interest.
            PayoffRun run = new(new NodaTime.YearMonth(2026, 1), debts, Cents(extra), Cents(once), new PaymentOrder(order, null));
            Money owed = Total(debts.Select(debt => debt.Balance));
            Money paid = owed - Total(run.Debts.Select(debt => debt.Balance));
            Assert.Equal(Money.Min(Cents(once), owed), paid);
            for (int month = 0; month < 60 && !run.IsOver; month++)
            {
                Money interest = Total(run.Debts.Select(debt => debt.Balance.MonthOfInterest(debt.State.YearlyRate)));
                Money before = Total(run.Debts.Select(debt => debt.Balance));
                run.PayMonth();
                Money after = Total(run.Debts.Select(debt => debt.Balance));
                owed += interest;
                paid += before + interest - after;
                Assert.All(run.Debts, debt => Assert.False(debt.Balance.IsNegative));
            }

            Assert.Equal(owed, Total(debts.Select(debt => debt.Balance)) + Total(run.Debts.Select(debt => debt.Interest)));
            Assert.Equal(owed, paid + Total(run.Debts.Select(debt => debt.Balance)));
        });

    [Fact]
    public void PayMonth_FixedMinimums_SpendsTheSameEachMonthUntilTheLast() =>
        Gen.Select(Gen.Int[1, 300_000].Array[1, 5], Gen.Int[0, 50_000], AnyOrder).Sample((balances, extra, order) =>
        {
            DebtState[] debts = [.. balances.Select((balance, i) => new DebtState(
                new($"{i}"), $"{i}", Cents(balance), i / 20m, new MinimumRule.Fixed(Cents(20_000))))];
            Money budget = Cents((20_000L * debts.Length) + extra);
            PayoffRun run = new(new NodaTime.YearMonth(2026, 1), debts, Cents(extra), Cents(0), new PaymentOrder(order, null));
            while (!run.IsOver)
            {
                Money owed = Total(run.Debts.Select(debt => debt.Balance + debt.Balance.MonthOfInterest(debt.State.YearlyRate)));
                run.PayMonth();
                Money left = Total(run.Debts.Select(debt => debt.Balance));
                Assert.Equal(Money.Min(budget, owed), owed - left);
            }
        }, iter: 50);

    private static Money Total(IEnumerable<Money> amounts) => Money.Sum(amounts, Dollars);
}
