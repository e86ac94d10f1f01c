namespace Payday.Core.NotePlanning;

/// <summary>Note values that would divide one another if some of them came in pairs only.</summary>
/// <remarks>
/// <para>
/// Levels are the values in rising order. <see cref="Unit"/> of a level is the least common multiple of the values
/// up to it. In 1, 2, 10, 20, 100 it is the value itself. At 5 in 1, 2, 5, 10 it is 10: twice the value. Such a
/// level is a break: notes of its value pay whole units in pairs, and each part has at most one that is odd, its
/// loose one. All systems of steps 1-2-5 are of this kind, with a break at each 5 that follows a 2.
/// </para>
/// <para>
/// Whether a part has a loose note at a break changes what it must hold in smaller notes, but only at the levels
/// from <see cref="First"/> to the one before the break: below these the loose value is a whole number of units.
/// A system in which two breaks reach the same level, or a value counts in more than pairs, is not of this kind.
/// </para>
/// </remarks>
internal sealed class ChainSystem
{
    private ChainSystem(long[] values, long[] unit, int[] breaks, int[] first)
    {
        Values = values;
        Unit = unit;
        Breaks = breaks;
        First = first;
    }

    /// <summary>The note values, rising.</summary>
    public long[] Values { get; }

    /// <summary>Level by level, the least common multiple of the values so far.</summary>
    public long[] Unit { get; }

    /// <summary>The levels that are breaks, rising.</summary>
    public int[] Breaks { get; }

    /// <summary>
    /// For each break, the first level whose least value in notes depends on its loose note; -1 where the
    /// smallest notes can't make the difference at all.
    /// </summary>
    public int[] First { get; }

    /// <summary>How many levels.</summary>
    public int Levels => Values.Length;

    /// <summary>The system of some values, or null if they are not of this kind.</summary>
    public static ChainSystem? TryMake(long[] values)
    {
        long[] unit = new long[values.Length];
        List<int> breaks = [];
        List<int> first = [];
        long sofar = 1;
        for (int level = 0; level < values.Length; level++)
        {
            long value = values[level];
            long factor = sofar / Whole.Gcd(sofar, value);
            if (factor > 2)
            {
                return null;
            }

            sofar = unit[level] = factor * value;
            if (factor == 2)
            {
                int start = FirstReached(value, unit, level);
                if (breaks.Count > 0 && start < breaks[^1])
                {
                    return null;
                }

                breaks.Add(level);
                first.Add(start);
            }
        }

        return new ChainSystem(values, unit, [.. breaks], [.. first]);
    }

    /// <summary>The common divisor of all values above a level: what is paid up to it is fixed but for this.</summary>
    public long StepAbove(int level)
    {
        long step = 0;
        for (int above = level + 1; above < Levels; above++)
        {
            step = Whole.Gcd(step, Values[above]);
        }

        return step;
    }

    private static int FirstReached(long value, long[] unit, int level)
    {
        int first = level;
        while (first > 0 && value % unit[first] != 0)
        {
            first--;
        }

        // The loop leaves the last level whose unit divides the loose value, or the smallest one.
        return value % unit[first] != 0 ? first - 1 : first;
    }
}
