namespace Payday.Core.NotePlanning;

/// <summary>Which sums some note values can make, each value used any number of times.</summary>
/// <remarks>
/// Beyond the product of the smallest and the largest value, both over the common divisor, every multiple of that
/// divisor can be made (a bound of I. Schur's on the coin problem; from memory), so that the table stays small
/// however large the amounts.
/// </remarks>
internal sealed class Sums
{
    private readonly long step;
    private readonly bool[] made;
    private readonly Effort effort;

    /// <param name="values">The values, rising; may be none.</param>
    /// <param name="most">The largest sum that will be asked about.</param>
    /// <param name="effort">The work that finding them may cost.</param>
    public Sums(ReadOnlySpan<long> values, long most, Effort effort)
    {
        this.effort = effort;
        foreach (long value in values)
        {
            step = Whole.Gcd(step, value);
        }

        long bound = values.IsEmpty ? 0 : (long)Int128.Min((Int128)(values[0] / step) * (values[^1] / step), (most / step) + 1);
        effort.Spend(bound * (values.Length + 1));
        made = new bool[bound + 1];
        made[0] = true;
        foreach (long value in values)
        {
            for (long sum = value / step; sum <= bound; sum++)
            {
                made[sum] |= made[sum - (value / step)];
            }
        }
    }

    /// <summary>Whether the notes can make a sum.</summary>
    public bool Contains(long sum) =>
        sum == 0 || (sum > 0 && step > 0 && sum % step == 0 && (sum / step >= made.Length || made[sum / step]));

    /// <summary>The largest sum up to a bound that is zero or more.</summary>
    public long Floor(long bound)
    {
        long sum = step == 0 ? 0 : bound - (bound % step);
        while (!Contains(sum))
        {
            effort.Spend(1);
            sum -= step;
        }

        return sum;
    }

    /// <summary>The smallest sum from a bound above zero on, or null if the notes make none.</summary>
    public long? Ceiling(long bound)
    {
        if (step == 0)
        {
            return null;
        }

        long sum = (bound + step - 1) / step * step;
        while (!Contains(sum))
        {
            effort.Spend(1);
            sum += step;
        }

        return sum;
    }
}
