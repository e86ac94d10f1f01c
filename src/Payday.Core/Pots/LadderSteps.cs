using Payday.Core.Amounts;

namespace Payday.Core.Pots;

/// <summary>The sums of a ladder's steps.</summary>
/// <remarks>
/// Source of the numbers: 1..52 add up to 1,378, 1..100 to 5,050 (computed from n(n+1)/2).
/// </remarks>
public static class LadderSteps
{
    /// <summary>What the first steps add up to.</summary>
    /// <param name="ladder">The ladder.</param>
    /// <param name="count">How many steps, 0 to all of them.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ladder has no such number of steps.</exception>
    /// <exception cref="OverflowException">The sum doesn't fit 64 bits.</exception>
    public static Money SumOf(PotKind.Ladder ladder, int count)
    {
        ArgumentNullException.ThrowIfNull(ladder);
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, ladder.Steps);
        long rising = (long)count * (count + 1) / 2;
        return ladder.Unit * (ladder.Order switch
        {
            LadderOrder.Rising => rising,
            LadderOrder.Falling => ((long)count * (ladder.Steps + 1)) - rising,
            _ => count,
        });
    }

    /// <summary>How many steps are full: the most whose sum is not above what was put in.</summary>
    /// <param name="ladder">The ladder.</param>
    /// <param name="putIn">All that was ever put in; below zero counts as nothing.</param>
    public static int Done(PotKind.Ladder ladder, Money putIn)
    {
        int done = 0;
        while (done < ladder.Steps && SumOf(ladder, done + 1) <= putIn)
        {
            done++;
        }

        return done;
    }
}
