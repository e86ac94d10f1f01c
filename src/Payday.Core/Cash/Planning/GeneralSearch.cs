namespace Payday.Core.Cash.Planning;

/// <summary>The note plan for any note values.</summary>
/// <remarks>
/// Part by part, for each set of notes on hand used up so far the best plan is kept: least small money missing,
/// least kept back, fewest notes. What is reused follows from the set. That is exact; only the number of sets is
/// bounded, beyond which the best are kept and nothing is proven. With nothing on hand there is one set, and
/// the parts are independent.
/// </remarks>
internal static class GeneralSearch
{
    private const int MostStates = 20_000;
    private const int MostWays = 5_000;

    /// <summary>Solves a problem; goals that can't be paid in full are paid as far as possible.</summary>
    public static NoteChoice Solve(NoteProblem problem)
    {
        Dictionary<NoteGoal, (List<GoalWay> Ways, bool Complete)> known = [];
        List<State> layer = [new State(new long[problem.Values.Length], null, null, 0, 0, 0, 0)];
        bool proven = true;
        foreach (NoteGoal goal in problem.Goals)
        {
            if (!known.TryGetValue(goal, out (List<GoalWay> Ways, bool Complete) list))
            {
                list = GoalWays.Of(problem, goal, MostWays);
                known.Add(goal, list);
            }

            proven &= list.Complete;
            layer = Next(problem, layer, list.Ways);
            if (layer.Count > MostStates)
            {
                layer = [.. layer.OrderBy(state => state.Rank).Take(MostStates)];
                proven = false;
            }
        }

        State? at = layer.MinBy(state => state.Rank);
        long[][] counts = new long[problem.Goals.Length][];
        for (int part = counts.Length - 1; part >= 0; part--)
        {
            counts[part] = at!.Way!.Notes;
            at = at.Before;
        }

        return new NoteChoice(counts, proven);
    }

    private static List<State> Next(NoteProblem problem, List<State> layer, List<GoalWay> ways)
    {
        Dictionary<UsedNotes, int> found = [];
        List<State> next = [];
        foreach (State state in layer)
        {
            foreach (GoalWay way in ways)
            {
                if (state.With(problem, way) is not { } made)
                {
                    continue;
                }

                UsedNotes key = new(made.Used);
                if (!found.TryGetValue(key, out int index))
                {
                    found.Add(key, next.Count);
                    next.Add(made);
                }
                else if (made.Rank.CompareTo(next[index].Rank) < 0)
                {
                    next[index] = made;
                }
            }
        }

        return next;
    }

    private sealed record State(
        long[] Used, State? Before, GoalWay? Way, long Short, long KeptBack, long Reused, long Count)
    {
        public (long Short, long KeptBack, long NotReused, long Count) Rank => (Short, KeptBack, -Reused, Count);

        public State? With(NoteProblem problem, GoalWay way)
        {
            long[] used = new long[Used.Length];
            long reused = Reused;
            for (int i = 0; i < used.Length; i++)
            {
                used[i] = Used[i] + way.Hand[i];
                reused += way.Hand[i] * problem.Values[i];
                if (used[i] > problem.Hand[i])
                {
                    return null;
                }
            }

            return new State(used, this, way, Short + way.Short, KeptBack + way.KeptBack, reused, Count + way.Count);
        }
    }

    private readonly struct UsedNotes(long[] counts) : IEquatable<UsedNotes>
    {
        private readonly long[] counts = counts;

        public bool Equals(UsedNotes other) => counts.AsSpan().SequenceEqual(other.counts);

        public override bool Equals(object? obj) => obj is UsedNotes other && Equals(other);

        public override int GetHashCode()
        {
            HashCode hash = default;
            foreach (long count in counts)
            {
                hash.Add(count);
            }

            return hash.ToHashCode();
        }
    }
}
