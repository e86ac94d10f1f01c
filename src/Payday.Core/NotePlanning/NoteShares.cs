namespace Payday.Core.NotePlanning;

/// <summary>Shares totals of notes out to the parts.</summary>
internal static class NoteShares
{
    /// <summary>Notes for each part, goal by goal.</summary>
    /// <param name="system">The note system.</param>
    /// <param name="problem">The problem.</param>
    /// <param name="notes">Totals by level that meet what the options ask for.</param>
    /// <param name="options">The option of each part.</param>
    /// <remarks>From the largest note down, earlier parts get as many as leave them their least in smaller notes.</remarks>
    public static long[][] Of(ChainSystem system, NoteProblem problem, long[] notes, ChainOption[] options)
    {
        long[][] counts = [.. options.Select(_ => new long[system.Levels])];
        long[] rest = [.. problem.Goals.Select(goal => goal.Amount)];
        for (int level = system.Levels - 1; level >= 0; level--)
        {
            int breakIndex = Array.IndexOf(system.Breaks, level);
            int group = breakIndex < 0 ? 1 : 2;
            long value = system.Values[level];
            long left = notes[level];
            for (int part = 0; part < options.Length && breakIndex >= 0; part++)
            {
                if (options[part].IsLoose(breakIndex))
                {
                    counts[part][level] = 1;
                    rest[part] -= value;
                    left--;
                }
            }

            for (int part = 0; part < options.Length && left > 0; part++)
            {
                long room = rest[part] - (level == 0 ? 0 : options[part].Least[level - 1]);
                long groups = Math.Min(room / (value * group), left / group);
                counts[part][level] += groups * group;
                rest[part] -= groups * group * value;
                left -= groups * group;
            }
        }

        return counts;
    }
}
