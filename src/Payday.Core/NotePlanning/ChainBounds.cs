namespace Payday.Core.NotePlanning;

/// <summary>How little and how much all parts together can sensibly hold in notes up to each level.</summary>
/// <param name="Least">Below this no options still open can be met.</param>
/// <param name="Most">Above this a plan can be bettered.</param>
/// <remarks>
/// If the total up to a level is a whole unit or more above what the parts' options ask for, and as much as a unit
/// of that level's note is fetched, the unit is better fetched in notes of the next level: less or the same
/// value, fewer notes, and no other total changes. So the total is within a unit of what is asked for, or is made of
/// the total below, what is on hand at the level or loose there, whichever is more, and less than a unit besides.
/// </remarks>
internal sealed record ChainBounds(long[] Least, long[] Most)
{
    public static ChainBounds Of(ChainSystem system, NoteProblem problem, ChainOption[][] options)
    {
        long[] least = new long[system.Levels];
        long[] most = new long[system.Levels];
        foreach (ChainOption[] open in options)
        {
            for (int level = 0; level < system.Levels; level++)
            {
                long low = long.MaxValue;
                long high = 0;
                foreach (ChainOption option in open)
                {
                    low = Math.Min(low, option.Least[level]);
                    high = Math.Max(high, option.Least[level]);
                }

                least[level] += low;
                most[level] += high;
            }
        }

        long all = most[^1];
        long below = 0;
        for (int level = 0; level < system.Levels - 1; level++)
        {
            below = most[level] = Math.Min(all, MostAt(system, problem, level, most[level], below, LooseAt(system, options, level)));
        }

        return new ChainBounds(least, most);
    }

    /// <summary>The most up to a level, from the least asked for there, the most up to the level below and the notes that are loose there.</summary>
    public static long MostAt(ChainSystem system, NoteProblem problem, int level, long least, long below, long loose)
    {
        if (level + 1 == system.Levels || !problem.Fetchable[level + 1])
        {
            return long.MaxValue;
        }

        long unit = system.Unit[level + 1];
        return unit + Math.Max(least, below + (problem.Values[level] * Math.Max(problem.OnHand[level], loose)));
    }

    // How many parts may have a loose note at a level.
    private static long LooseAt(ChainSystem system, ChainOption[][] options, int level)
    {
        int breakIndex = Array.IndexOf(system.Breaks, level);
        return breakIndex < 0 ? 0 : options.Count(open => Array.Exists(open, option => option.IsLoose(breakIndex)));
    }
}
