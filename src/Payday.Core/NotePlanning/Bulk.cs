namespace Payday.Core.NotePlanning;

/// <summary>What is paid in large notes beforehand so that the rest of a problem is of a size that can be searched.</summary>
/// <param name="Rest">The problem that is left.</param>
/// <param name="Counts">Goal by goal, the notes paid beforehand.</param>
/// <param name="Any">Whether there are any; a plan is then not proven.</param>
internal sealed record Bulk(NoteProblem Rest, long[][] Counts, bool Any)
{
    /// <summary>Leaves no goal more than about so many units, where it has notes that can be fetched.</summary>
    public static Bulk Of(NoteProblem problem, long most)
    {
        long[][] counts = [.. problem.Goals.Select(_ => new long[problem.Values.Length])];
        NoteGoal[] goals = [.. problem.Goals];
        bool any = false;
        for (int part = 0; part < goals.Length; part++)
        {
            NoteGoal goal = goals[part];
            long small = Pay(problem, counts[part], goal.Small, Math.Min(goal.AtLeast, goal.Amount) - (most / 2));
            goal = goal with { Amount = goal.Amount - small, AtLeast = goal.AtLeast - small };
            long large = Pay(problem, counts[part], goal.Top, goal.Amount - most);
            goals[part] = goal with { Amount = goal.Amount - large };
            any |= small + large > 0;
        }

        return new Bulk(problem.With(goals), counts, any);
    }

    /// <summary>A choice for the rest and what was paid beforehand.</summary>
    public NoteChoice AddTo(NoteChoice choice) => !Any
        ? choice
        : new NoteChoice([.. choice.Counts.Zip(Counts, (rest, paid) => rest.Zip(paid, (a, b) => a + b).ToArray())], false);

    private static long Pay(NoteProblem problem, long[] counts, int top, long amount)
    {
        int note = amount <= 0 ? -1 : Array.FindLastIndex(problem.Fetchable, Math.Max(top - 1, 0), fetchable => fetchable);
        if (note < 0 || note >= top)
        {
            return 0;
        }

        long count = amount / problem.Values[note];
        counts[note] += count;
        return count * problem.Values[note];
    }
}
