namespace Payday.Core.NotePlanning;

/// <summary>One way to give a part its loose notes, and what that asks of the smaller ones.</summary>
/// <param name="Loose">The breaks at which the part has an odd number of notes, a bit each.</param>
/// <param name="Least">Level by level, the least value in notes up to it; at the last level, the whole amount.</param>
/// <remarks>
/// With the loose notes fixed, the value in notes up to a level must leave the same rest as the amount less the
/// larger loose notes, over the next level's unit. The least is the smallest such value that is not below the
/// least of the level before and, from the small notes' level on, not below the small money. Where the next level
/// is above the top note it is the whole amount.
/// </remarks>
internal sealed record ChainOption(int Loose, long[] Least)
{
    /// <summary>Whether the part has an odd number of notes at a break.</summary>
    public bool IsLoose(int breakIndex) => (Loose >> breakIndex & 1) == 1;

    /// <summary>All ways for a goal that can be paid in full.</summary>
    public static ChainOption[] Of(ChainSystem system, NoteGoal goal)
    {
        List<ChainOption> options = [];
        for (int loose = 0; loose < 1 << system.Breaks.Length; loose++)
        {
            if (TryMake(system, goal, loose) is { } option)
            {
                options.Add(option);
            }
        }

        return [.. options];
    }

    private static ChainOption? TryMake(ChainSystem system, NoteGoal goal, int loose)
    {
        long looseAbove = 0;
        for (int b = 0; b < system.Breaks.Length; b++)
        {
            if ((loose >> b & 1) == 1)
            {
                if (system.Breaks[b] >= goal.Top)
                {
                    return null;
                }

                looseAbove += system.Values[system.Breaks[b]];
            }
        }

        if (Whole.Mod(goal.Amount - looseAbove, system.Unit[0]) != 0)
        {
            return null;
        }

        long[] least = new long[system.Levels];
        long before = 0;
        for (int level = 0, b = 0; level < system.Levels; level++)
        {
            if (b < system.Breaks.Length && system.Breaks[b] == level)
            {
                if ((loose >> b & 1) == 1)
                {
                    before += system.Values[level];
                    looseAbove -= system.Values[level];
                }

                b++;
            }

            if (level >= goal.Small - 1 && goal.AtLeast > before)
            {
                before = goal.AtLeast;
            }

            before = level + 1 >= goal.Top
                ? Math.Max(before, goal.Amount)
                : Whole.Next(before, goal.Amount - looseAbove, system.Unit[level + 1]);
            least[level] = before;
        }

        return before > goal.Amount ? null : new ChainOption(loose, least);
    }
}
