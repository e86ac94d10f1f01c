using System.Numerics;
using CsCheck;
using Payday.Core.Bills;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Bills.Plans;

namespace Payday.Core.Tests.Bills;

/// <summary>The level plan against other ways to the same answer.</summary>
public class LevelPlanProperties
{
    // Four incomes of at most 5 give slopes with denominators of at most 20; all of those divide this number.
    private const long Scale = 232_792_560;

    [Fact]
    public void Plan_Level_IsTheAntitonicRegressionOfTheRawSlopes() =>
        SomeCase.Sample(
            given => Assert.Equal(PoolAdjacentViolators(given), RunningTotal(SetAsides(given.Plan(SetAsideMode.Level)))),
            iter: 2000);

    [Fact]
    public void Plan_Level_IsTheHighestChordOverEachPayday() =>
        SomeCase.Sample(
            given => Assert.Equal(HighestChords(given), RunningTotal(SetAsides(given.Plan(SetAsideMode.Level)))),
            iter: 2000);

    /// <summary>Of all plans on time in whole units, none is more even: not in its squares, nor in any sum of its largest.</summary>
    [Fact]
    public void Plan_Level_IsMoreEvenThanAnyPlanOnTime() =>
        Gen.Select(Gen.Long[1, 5].Array[1, 4], Gen.Long[0, 5].Array[4], Gen.Bool).Sample(
            (incomes, dues, equal) =>
            {
                long[] pay = equal ? [.. incomes.Select(_ => 5L)] : incomes;
                Case given = new(Cents(0), Paydays(pay), DuesByPeriod(dues[..pay.Length]));
                Case scaled = new(
                    given.Held,
                    Paydays([.. pay.Select(income => income * Scale)]),
                    DuesByPeriod([.. dues[..pay.Length].Select(due => due * Scale)]));
                long[] level = SetAsides(scaled.Plan(SetAsideMode.Level));
                foreach (long[] other in PlansOnTime(pay, given.Least, [], 0))
                {
                    long[] rival = [.. other.Select(amount => amount * Scale)];
                    Assert.True(SquaresPerIncome(level, pay) <= SquaresPerIncome(rival, pay));
                    if (equal)
                    {
                        Assert.All(
                            RunningTotal(level.OrderDescending()).Zip(RunningTotal(rival.OrderDescending())),
                            sums => Assert.True(sums.First <= sums.Second));
                    }
                }
            },
            iter: 300);

    /// <summary>Before rounding, the share of pay never rises from one payday to a later one.</summary>
    [Fact]
    public void Plan_Level_SharesOfPayNeverRise() =>
        Gen.Select(Gen.Long[1, 5].Array[1, 4], Gen.Long[0, 9].Array[4]).Sample(
            (incomes, dues) =>
            {
                long[] level = SetAsides(SetAsidePlanner.Plan(
                    SetAsideMode.Level,
                    Cents(0),
                    Paydays([.. incomes.Select(income => income * Scale)]),
                    DuesByPeriod([.. dues[..incomes.Length].Select(due => due * Scale)])));
                return Enumerable.Range(1, level.Length - 1)
                    .All(k => (Int128)level[k] * incomes[k - 1] <= (Int128)level[k - 1] * incomes[k]);
            },
            iter: 1000);

    /// <summary>Blocks of paydays with one share each; a block that asks for more than the one before joins it.</summary>
    private static long[] PoolAdjacentViolators(Case given)
    {
        long[] least = given.Least;
        List<(long Need, long Weight, int Count)> blocks = [];
        for (int k = 0; k < least.Length; k++)
        {
            long weight = given.IncomeIsKnown ? given.Paydays[k].Income.MinorUnits : 1;
            (long Need, long Weight, int Count) block = (least[k] - (k == 0 ? 0 : least[k - 1]), weight, 1);
            while (blocks.Count > 0 && block.Need * blocks[^1].Weight >= blocks[^1].Need * block.Weight)
            {
                block = (block.Need + blocks[^1].Need, block.Weight + blocks[^1].Weight, block.Count + blocks[^1].Count);
                blocks.RemoveAt(blocks.Count - 1);
            }

            blocks.Add(block);
        }

        List<long> total = [];
        long before = 0;
        foreach ((long need, long weight, int count) in blocks)
        {
            long within = 0;
            for (int k = total.Count, end = k + count; k < end; k++)
            {
                within += given.IncomeIsKnown ? given.Paydays[k].Income.MinorUnits : 1;
                total.Add(before + (weight == 0 ? 0 : Ceiling(need * within, weight)));
            }

            before += need;
        }

        return [.. total];
    }

    /// <summary>By definition: over each payday, the highest of all lines between a point to its left and one to its right.</summary>
    private static long[] HighestChords(Case given)
    {
        long[] x = [0, .. given.IncomeIsKnown ? given.Income : Enumerable.Range(1, given.Paydays.Length).Select(k => (long)k)];
        long[] y = [0, .. given.Least];
        return
        [
            .. x[1..].Select(at =>
            {
                long highest = 0;
                for (int a = 0; a < x.Length; a++)
                {
                    for (int b = 0; b < x.Length; b++)
                    {
                        if (x[a] == at)
                        {
                            highest = Math.Max(highest, y[a]);
                        }
                        else if (x[a] < at && at < x[b])
                        {
                            highest = Math.Max(highest, y[a] + Ceiling((y[b] - y[a]) * (at - x[a]), x[b] - x[a]));
                        }
                    }
                }

                return highest;
            }),
        ];
    }

    private static IEnumerable<long[]> PlansOnTime(long[] incomes, long[] least, long[] begun, long total)
    {
        int k = begun.Length;
        if (k == incomes.Length)
        {
            return total == least[^1] ? [begun] : [];
        }

        return Enumerable.Range(0, (int)incomes[k] + 1)
            .Where(amount => total + amount >= least[k] && total + amount <= least[^1])
            .SelectMany(amount => PlansOnTime(incomes, least, [.. begun, amount], total + amount));
    }

    // Times 60, which every income of 1 to 5 divides.
    private static BigInteger SquaresPerIncome(long[] amounts, long[] incomes) =>
        amounts.Zip(incomes).Aggregate(BigInteger.Zero, (sum, pair) => sum + (BigInteger.Pow(pair.First, 2) * 60 / pair.Second));

    private static long Ceiling(long value, long divisor)
    {
        (long whole, long rest) = Math.DivRem(value, divisor);
        return rest > 0 ? whole + 1 : whole;
    }
}
