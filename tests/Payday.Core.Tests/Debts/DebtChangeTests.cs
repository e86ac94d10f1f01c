using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Debts;
using Payday.Core.Ids;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Debts.Sample;

namespace Payday.Core.Tests.Debts;

/// <summary>Two courses of the same debts beside each other, and why a debt ends in another month.</summary>
public class DebtChangeTests
{
    private static readonly DebtId Car = new("car");
    private static readonly DebtId Plan = new("plan");

    [Fact]
    public void All_PaidAtOnce_SaysMonthsAndInterest()
    {
        // 100 at 1 % a month: 1 and 0.51 of interest with 50 a month, and a rest of 1.51 in the third month with its 0.02.
        DebtState card = Debt("card", 100, 0.12m, 50);

        DebtChange change = Assert.Single(DebtChange.All(Project(0, DebtOrder.SmallestBalance, card), Project(0, DebtOrder.SmallestBalance, card with { PaidAtOnce = Usd(100) })));

        Assert.Equal((3, Usd(1.53m), null), (change.MonthsSooner, change.Saved, change.Because));
        Assert.True(change.After.AtOnce);
    }

    // 300 on the plan by 100 a month, 900 on the car by 100: the plan ends in March, its 100 come to the car from April on, which ends in June.
    // What is placed on the plan moves that, month by month.
    [Theory]
    [InlineData(0, 0, null)]
    [InlineData(100, 0, null)]
    [InlineData(200, 1, RollOnComes.Sooner)]
    [InlineData(300, 1, RollOnComes.Sooner)]
    public void All_AnotherDebtPaidOffSooner_IsWhy(decimal onPlan, int sooner, RollOnComes? comes)
    {
        DebtChange car = CarWith(Plans(0), Plans(onPlan));

        Assert.Equal((sooner, comes, comes is null ? null : (DebtId?)Plan), (car.MonthsSooner, car.Because?.Comes, car.Because?.From));
    }

    [Fact]
    public void All_AnotherDebtPaidOffLater_IsWhy()
    {
        DebtChange car = CarWith(Plans(300), Plans(0));

        Assert.Equal((-1, new RollOnChange(Plan, RollOnComes.Later)), (car.MonthsSooner, car.Because));
    }

    // 850 on the car at 12 % a year: it ends in June whether the plan's 100 come from March on or from April on, but with
    // 1 % of what is owed longer the interest differs. By the table month for month 31.04 from March on, 34.07 from April on.
    [Theory]
    [InlineData(100, 0, RollOnComes.Later)]
    [InlineData(0, 100, RollOnComes.Sooner)]
    public void All_SameMonthAtOtherInterest_SaysWhy(decimal before, decimal after, RollOnComes comes)
    {
        DebtChange car = CarWith(Dear(before), Dear(after));

        Assert.Equal((0, new RollOnChange(Plan, comes)), (car.MonthsSooner, car.Because));
        Assert.Equal(comes == RollOnComes.Later ? Usd(-3.03m) : Usd(3.03m), car.Saved);

        static DebtProjection Dear(decimal onPlan) => Project(
            0, DebtOrder.SmallestBalance, Debt("plan", 300, 0, 100) with { PaidAtOnce = Usd(onPlan) }, Debt("car", 850, 0.12m, 100));
    }

    [Fact]
    public void All_ADebtThatNeverEnds_HasNoMonths()
    {
        DebtState[] debts = [Debt("plan", 200, 0, 100), Debt("car", 1000, 0.24m, 20)];
        DebtProjection ends = Project(0, DebtOrder.SmallestBalance, debts);
        DebtProjection never = Project(0, DebtOrder.SmallestBalance, debts[0] with { Balance = Usd(0) }, debts[1]);

        DebtChange better = DebtChange.All(never, ends).Single(debt => debt.After.Id == Car);
        DebtChange worse = DebtChange.All(ends, never).Single(debt => debt.After.Id == Car);

        Assert.Equal((true, (int?)null, (Money?)null, RollOnComes.AsWell), (better.EndsNow, better.MonthsSooner, better.Saved, better.Because!.Comes));
        Assert.Equal((true, (int?)null, (Money?)null, RollOnComes.NoMore), (worse.EndsNoMore, worse.MonthsSooner, worse.Saved, worse.Because!.Comes));
    }

    [Fact]
    public void All_OtherDebts_AreRefused() =>
        Assert.Throws<ArgumentException>(() => DebtChange.All(Project(0, DebtOrder.SmallestBalance, Debt("a", 1, 0, 1)), Project(0, DebtOrder.SmallestBalance, Debt("b", 1, 0, 1))));

    // A reckoning of its own, in minor units: what comes to each debt from the end of each other.
    [Fact]
    public void RollOns_AnyDebts_AreWhatTheEndsSetFree() =>
        Gen.Select(Gen.Select(Gen.Int[1, 90_000], Gen.Int[0, 300], Gen.Int[500, 20_000]).Array[1, 4], Gen.Int[0, 9_000], Gen.Enum<DebtOrder>()).Sample((debts, extra, order) =>
        {
            DebtProjection projection = DebtProjection.Project(
                January, [.. debts.Select((debt, i) => new DebtState(new DebtId($"{i}"), $"{i}", Cents(debt.Item1), debt.Item2 / 1000m, new MinimumRule.Fixed(Cents(debt.Item3))))], Cents(extra), Cents(0), order);

            Dictionary<(int From, int To), (int First, long Total)> expected = Reckoned(debts, extra, order);

            Assert.Equal(
                expected.Select(pair => $"{pair.Key.From} {pair.Key.To} {January.PlusMonths(pair.Value.First)} {pair.Value.Total}").Order(),
                projection.RollOns.Select(one => $"{one.From.Text} {one.To.Text} {one.First} {one.Total.MinorUnits}").Order());
        });

    private static Dictionary<(int From, int To), (int First, long Total)> Reckoned((int Balance, int Rate, int Minimum)[] debts, int extra, DebtOrder order)
    {
        var seen = new Dictionary<(int, int), (int First, long Total)>();
        long[] owed = [.. debts.Select(debt => (long)debt.Balance)];
        for (int month = 0; month < DebtProjection.LongestMonths && owed.Any(balance => balance > 0); month++)
        {
            var purses = new List<(int? From, long Amount)> { (null, extra) };
            for (int i = 0; i < debts.Length; i++)
            {
                long asked = debts[i].Minimum;
                if (owed[i] > 0)
                {
                    owed[i] += (long)decimal.Round(owed[i] * (debts[i].Rate / 1000m) / 12, MidpointRounding.ToEven);
                    long paid = Math.Min(asked, owed[i]);
                    owed[i] -= paid;
                    asked -= paid;
                }

                purses.Add((i, asked));
            }

            foreach ((int? from, long amount) in purses)
            {
                long left = amount;
                while (left > 0 && owed.Any(balance => balance > 0))
                {
                    int to = Enumerable.Range(0, debts.Length).Where(i => owed[i] > 0)
                        .OrderBy(i => order == DebtOrder.SmallestBalance ? owed[i] : -debts[i].Rate)
                        .ThenBy(i => order == DebtOrder.SmallestBalance ? -debts[i].Rate : owed[i])
                        .ThenBy(i => i)
                        .First();
                    long paid = Math.Min(left, owed[to]);
                    (owed[to], left) = (owed[to] - paid, left - paid);
                    if (from is { } giver)
                    {
                        (int first, long total) = seen.GetValueOrDefault((giver, to), (month, 0));
                        seen[(giver, to)] = (first, total + paid);
                    }
                }
            }
        }

        return seen;
    }

    private static DebtProjection Plans(decimal onPlan) => Project(
        0, DebtOrder.SmallestBalance, Debt("plan", 300, 0, 100) with { PaidAtOnce = Usd(onPlan) }, Debt("car", 900, 0, 100));

    private static DebtChange CarWith(DebtProjection before, DebtProjection after) => DebtChange.All(before, after).Single(debt => debt.After.Id == Car);
}
