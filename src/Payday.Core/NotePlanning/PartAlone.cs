namespace Payday.Core.NotePlanning;

/// <summary>The best notes for one part, given what is left on hand: no other part is looked at.</summary>
/// <remarks>
/// Exact for a part of up to <paramref name="most"/> units: for each sum in small and in larger notes the least value
/// fetched, then the fewest notes (a knapsack whose notes on hand are bounded). A larger part is paid in its largest
/// notes until that is left. Within a limit on what is fetched the small money is chosen first, then the most that fits.
/// </remarks>
/// <param name="problem">Whose notes are meant.</param>
/// <param name="most">The largest sum that is searched in full, in units.</param>
internal sealed class PartAlone(NoteProblem problem, long most)
{
    /// <summary>Pays one goal and takes its notes from those on hand.</summary>
    /// <param name="goal">The goal.</param>
    /// <param name="onHand">Value by value, notes on hand that are left; lowered.</param>
    /// <param name="limit">Units that may still be fetched; lowered. None where notes are spared.</param>
    /// <param name="spares">
    /// Whether to leave notes on hand that can't be fetched to the parts that come after, where others pay as much.
    /// </param>
    /// <returns>Value by value, how many.</returns>
    public long[] Pay(NoteGoal goal, long[] onHand, ref long limit, bool spares = false)
    {
        long[] counts = new long[problem.Values.Length];
        long amount = goal.Amount;
        long atLeast = Math.Min(goal.AtLeast, amount);
        if (amount > most)
        {
            long small = PayLargest(counts, onHand, ref limit, goal.Small, atLeast - (most / 2));
            (amount, atLeast) = (amount - small, atLeast - small);
            amount -= PayLargest(counts, onHand, ref limit, goal.Top, amount - most);
        }

        // Where no note is left to bring it down, what is left over is kept back in any case.
        Search(goal with { Amount = Math.Min(amount, 2 * most), AtLeast = Math.Max(0, atLeast) }, counts, onHand, ref limit, spares);
        return counts;
    }

    private long PayLargest(long[] counts, long[] onHand, ref long limit, int top, long amount)
    {
        long left = amount;
        for (int i = top - 1; i >= 0 && left > 0; i--)
        {
            long value = problem.Values[i];
            long fetched = problem.Fetchable[i] ? Math.Min(left, limit) / value : 0;
            left -= value * Take(i, Math.Min(left / value, onHand[i] + fetched), counts, onHand, ref limit);
        }

        return Math.Max(0, amount) - Math.Max(0, left);
    }

    private void Search(NoteGoal goal, long[] counts, long[] onHand, ref long limit, bool spares)
    {
        int[] usable = [.. Enumerable.Range(0, goal.Top).Where(i => problem.Values[i] <= goal.Amount && (onHand[i] > 0 || problem.Fetchable[i]))];
        long step = usable.Aggregate(0L, (step, i) => Whole.Gcd(step, problem.Values[i]));
        if (step == 0)
        {
            return;
        }

        int sums = (int)(goal.Amount / step);
        Pieces smalls = new(problem, onHand, [.. usable.Where(i => i < goal.Small)], step, sums, spares);
        Pieces larges = new(problem, onHand, [.. usable.Where(i => i >= goal.Small)], step, sums, spares);
        (int small, int large) chosen = spares || limit / step >= sums
            ? Best(goal, smalls, larges, step, sums)
            : WithinLimit(goal, smalls, larges, step, sums, limit / step);
        long[] taken = new long[counts.Length];
        smalls.AddTo(taken, chosen.small);
        larges.AddTo(taken, chosen.large);
        for (int i = 0; i < taken.Length; i++)
        {
            Take(i, taken[i], counts, onHand, ref limit);
        }
    }

    private (int Small, int Large) Best(NoteGoal goal, Pieces small, Pieces large, long step, int sums)
    {
        (long Short, long Kept, long Cost) best = (long.MaxValue, 0, 0);
        (int, int) chosen = default;
        for (int part = 0; part <= (goal.Small == 0 ? 0 : sums); part++)
        {
            if (small.Has(part, long.MaxValue))
            {
                int other = large.Floor(sums - part, long.MaxValue);
                (long, long, long) rank = (Short(goal, part * step), sums - part - other, small.Cost(part) + large.Cost(other));
                if (rank.CompareTo(best) < 0)
                {
                    (best, chosen) = (rank, (part, other));
                }
            }
        }

        return chosen;
    }

    private (int Small, int Large) WithinLimit(NoteGoal goal, Pieces small, Pieces large, long step, int sums, long limit)
    {
        int part = Enumerable.Range(0, goal.Small == 0 ? 1 : sums + 1)
            .Where(sum => small.Has(sum, limit))
            .MinBy(sum => (Short(goal, sum * step), sum));
        return (part, large.Floor(sums - part, limit - small.Dear(part)));
    }

    private long Short(NoteGoal goal, long small) => Math.Max(0, ((goal.AtLeast - small) * problem.Unit) - goal.RoundedBy);

    private long Take(int value, long count, long[] counts, long[] onHand, ref long limit)
    {
        long reused = Math.Min(onHand[value], count);
        counts[value] += count;
        onHand[value] -= reused;
        limit -= (count - reused) * problem.Values[value];
        return count;
    }
}
