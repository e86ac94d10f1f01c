namespace Payday.Core.NotePlanning;

/// <summary>The sets of notes on hand that the parts so far may have used up, each with its best plan.</summary>
internal sealed class UsedUp
{
    private readonly NoteProblem problem;
    private readonly List<long[]> used;
    private readonly List<Rank> ranks;
    private readonly List<(int Before, int Way)> from;

    private UsedUp(NoteProblem problem, List<long[]> used, List<Rank> ranks, List<(int Before, int Way)> from)
    {
        this.problem = problem;
        this.used = used;
        this.ranks = ranks;
        this.from = from;
    }

    /// <summary>The index of the best of all.</summary>
    public int Best => Enumerable.Range(0, ranks.Count).MinBy(i => ranks[i]);

    /// <summary>How many there are.</summary>
    public int Count => used.Count;

    /// <summary>Before the first part.</summary>
    public static UsedUp Nothing(NoteProblem problem) => new(problem, [new long[problem.Values.Length]], [default], [(0, 0)]);

    /// <summary>The set of the part before, and the way this part was paid, that a set came from.</summary>
    public (int Before, int Way) From(int state) => from[state];

    /// <summary>The sets after one part more, at most so many, and whether that is all of them.</summary>
    public (UsedUp Next, bool All) Next(List<GoalWay> ways, int most)
    {
        Dictionary<UInt128, int> found = [];
        UInt128[] weights = Weights();
        UInt128[] changes = [.. ways.Select(way => Key(way.OnHand, weights))];
        UsedUp next = new(problem, [], [], []);
        for (int state = 0; state < used.Count; state++)
        {
            UInt128 key = Key(used[state], weights);
            for (int way = 0; way < ways.Count; way++)
            {
                if (Fits(used[state], ways[way].OnHand))
                {
                    next.Keep(found, key + changes[way], ranks[state].With(ways[way]), (state, way), used[state], ways[way].OnHand);
                }
            }
        }

        return next.AtMost(most);
    }

    /// <summary>The best of the sets, at most so many, and whether that is all of them.</summary>
    public (UsedUp Kept, bool All) AtMost(int most) => Count <= most ? (this, true) : (BestOf(most), false);

    private void Keep(
        Dictionary<UInt128, int> found, UInt128 key, Rank rank, (int Before, int Way) origin, long[] before, long[] taken)
    {
        if (!found.TryGetValue(key, out int index))
        {
            found.Add(key, used.Count);
            long[] sum = new long[before.Length];
            for (int i = 0; i < sum.Length; i++)
            {
                sum[i] = before[i] + taken[i];
            }

            used.Add(sum);
            ranks.Add(rank);
            from.Add(origin);
        }
        else if (rank.CompareTo(ranks[index]) < 0)
        {
            ranks[index] = rank;
            from[index] = origin;
        }
    }

    private UsedUp BestOf(int most)
    {
        int[] kept = [.. Enumerable.Range(0, ranks.Count).OrderBy(i => ranks[i]).Take(most)];
        return new UsedUp(problem, [.. kept.Select(i => used[i])], [.. kept.Select(i => ranks[i])], [.. kept.Select(i => from[i])]);
    }

    private bool Fits(long[] before, long[] taken)
    {
        for (int i = 0; i < before.Length; i++)
        {
            if (before[i] + taken[i] > problem.OnHand[i])
            {
                return false;
            }
        }

        return true;
    }

    private UInt128[] Weights()
    {
        UInt128[] weights = new UInt128[problem.OnHand.Length];
        UInt128 weight = 1;
        for (int i = 0; i < weights.Length; i++)
        {
            weights[i] = weight;
            weight *= (UInt128)(problem.OnHand[i] + 1);
        }

        return weights;
    }

    private static UInt128 Key(long[] counts, UInt128[] weights)
    {
        UInt128 key = 0;
        for (int i = 0; i < counts.Length; i++)
        {
            key += (UInt128)counts[i] * weights[i];
        }

        return key;
    }

    private readonly record struct Rank(long Short, long KeptBack, long Reused, long Count) : IComparable<Rank>
    {
        public Rank With(GoalWay way) =>
            new(Short + way.Short, KeptBack + way.KeptBack, Reused + way.Reused, Count + way.Count);

        public int CompareTo(Rank other)
        {
            int order = Short.CompareTo(other.Short);
            order = order != 0 ? order : KeptBack.CompareTo(other.KeptBack);
            order = order != 0 ? order : other.Reused.CompareTo(Reused);
            return order != 0 ? order : Count.CompareTo(other.Count);
        }
    }
}
