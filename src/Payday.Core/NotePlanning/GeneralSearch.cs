namespace Payday.Core.NotePlanning;

/// <summary>The note plan for any note values.</summary>
/// <remarks>
/// <para>
/// Part by part, for each set of notes on hand used up so far the best plan is kept: least small money missing,
/// least kept back, fewest notes. What is reused follows from the set. That is exact; only the number of sets is
/// bounded, beyond which the best are kept and nothing is proven. With nothing on hand there is one set, and
/// the parts are independent.
/// </para>
/// <para>
/// First it is supposed that of the values that can be fetched all notes on hand get used. That leaves only the
/// others to keep count of, and no plan reuses more: if the plan so found uses them all, it is the best.
/// </para>
/// </remarks>
internal static class GeneralSearch
{
    private const int MostStates = 2_000;
    private const int MostWays = 1_000;

    // A set made costs some steps more than its values are compared.
    private const int WorkOfSet = 30;

    /// <summary>Solves a problem; goals that can't be paid in full are paid as far as possible.</summary>
    public static NoteChoice Solve(NoteProblem problem)
    {
        // So many that the sets can be numbered; more are left aside, unproven.
        long most = 1L << Math.Max(1, 120 / problem.Values.Length);
        if (problem.OnHand.Max() >= most)
        {
            return Solve(problem with { OnHand = [.. problem.OnHand.Select(count => Math.Min(count, most - 1))] }) with { Proven = false };
        }

        NoteProblem limitedOnly = problem with
        {
            OnHand = [.. problem.OnHand.Select((count, value) => problem.Fetchable[value] ? 0 : count)],
        };
        NoteChoice choice = Search(limitedOnly with { Effort = problem.Effort.Half() });
        for (int value = 0; value < problem.Values.Length; value++)
        {
            if (problem.Fetchable[value] && choice.Counts.Sum(notes => notes[value]) < problem.OnHand[value])
            {
                return Search(problem);
            }
        }

        return choice;
    }

    private static NoteChoice Search(NoteProblem problem)
    {
        Dictionary<NoteGoal, (List<GoalWay> Ways, bool Complete)> known = [];
        List<UsedUp> layers = [UsedUp.Nothing(problem)];
        bool proven = true;
        for (int part = 0; part < problem.Goals.Length; part++)
        {
            NoteGoal goal = problem.Goals[part];
            if (!known.TryGetValue(goal, out (List<GoalWay> Ways, bool Complete) list))
            {
                list = GoalWays.Of(problem, goal, MostWays);
                known.Add(goal, list);
            }

            // Each part gets its share of the work; where that is too little for all sets, the best go on.
            long work = list.Ways.Count * (long)(problem.Values.Length + WorkOfSet);
            long share = problem.Effort.Left / (problem.Goals.Length - part);
            (layers[^1], bool kept) = layers[^1].AtMost((int)Math.Clamp(share / work, 1, MostStates));
            problem.Effort.Spend(layers[^1].Count * work);
            (UsedUp next, bool all) = layers[^1].Next(list.Ways, MostStates);
            layers.Add(next);
            proven &= list.Complete && kept && all;
        }

        long[][] counts = new long[problem.Goals.Length][];
        int state = layers[^1].Best;
        for (int part = counts.Length - 1; part >= 0; part--)
        {
            (int before, int way) = layers[part + 1].From(state);
            counts[part] = known[problem.Goals[part]].Ways[way].Notes;
            state = before;
        }

        return new NoteChoice(counts, proven);
    }
}
