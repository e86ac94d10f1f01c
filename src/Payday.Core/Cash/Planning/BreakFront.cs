namespace Payday.Core.Cash.Planning;

/// <summary>The sensible ways to spread loose notes at one break over the parts.</summary>
/// <remarks>
/// Parts differ only in how a loose note changes what they must hold in smaller notes: up or down by half a unit,
/// level by level. Two levels make four kinds. Where one kind rises at a level another falls, so that most mixes
/// of kinds are covered by a simpler one; what is left is a single row of about as many states as there are parts.
/// The rest that no other state covers is found here by adding loose notes kind by kind, one at a time: as soon as
/// one more brings nothing new, no further one does.
/// </remarks>
internal sealed class BreakFront
{
    private readonly int breakIndex;
    private readonly int first;
    private readonly int last;
    private readonly List<Kind> kinds = [];

    /// <param name="system">The note system.</param>
    /// <param name="breakIndex">The break.</param>
    /// <param name="options">The options still open for each part.</param>
    public BreakFront(ChainSystem system, int breakIndex, ChainOption[][] options)
    {
        this.breakIndex = breakIndex;
        first = Math.Max(system.First[breakIndex], 0);
        last = system.Breaks[breakIndex];
        FrontState state = Sort(options);
        kinds.Sort((left, right) => left.Change.Sum().CompareTo(right.Change.Sum()));
        States = Spread(state);
    }

    /// <summary>All states that no other covers.</summary>
    public List<FrontState> States { get; }

    /// <summary>The least value in notes up to a level that an open option with or without the loose note asks for.</summary>
    public static long? LeastOf(ChainOption[] options, int breakIndex, bool loose, int level)
    {
        long? least = null;
        foreach (ChainOption option in options)
        {
            if (option.IsLoose(breakIndex) == loose && !(least <= option.Least[level]))
            {
                least = option.Least[level];
            }
        }

        return least;
    }

    /// <summary>Marks the parts that have a loose note in a state.</summary>
    /// <param name="state">One of the states.</param>
    /// <param name="loose">Part by part, the bits of its breaks; this break's are set.</param>
    public void Mark(FrontState state, int[] loose)
    {
        int[] used = new int[kinds.Count];
        for (FrontState? at = state; at?.Before is not null; at = at.Before)
        {
            loose[kinds[at.Kind].Parts[used[at.Kind]++].Part] |= 1 << breakIndex;
        }

        foreach (int part in always)
        {
            loose[part] |= 1 << breakIndex;
        }
    }

    private readonly List<int> always = [];

    private FrontState Sort(ChainOption[][] options)
    {
        int levels = last - first + 1;
        long[] least = new long[levels];
        for (int part = 0; part < options.Length; part++)
        {
            long[]? without = Needs(options[part], false);
            long[]? with = Needs(options[part], true);
            for (int i = 0; i < levels; i++)
            {
                least[i] += (without ?? with)![i];
            }

            if (without is null)
            {
                always.Add(part);
            }
            else if (with is not null)
            {
                long[] change = [.. with.Zip(without, (more, less) => more - less)];
                Kind? kind = kinds.Find(kind => kind.Change.AsSpan().SequenceEqual(change));
                if (kind is null)
                {
                    kind = new Kind(change);
                    kinds.Add(kind);
                }

                kind.Parts.Add((part, Carry(options[part])));
            }
        }

        // First those whose loose note asks for least above the break: the relaxed plan doesn't count that.
        foreach (Kind kind in kinds)
        {
            kind.Parts.Sort((left, right) => (left.Carry, left.Part).CompareTo((right.Carry, right.Part)));
        }

        return new FrontState(always.Count, least, null, 0);
    }

    private long[]? Needs(ChainOption[] options, bool loose)
    {
        long[] needs = new long[last - first + 1];
        for (int i = 0; i < needs.Length; i++)
        {
            if (LeastOf(options, breakIndex, loose, first + i) is not { } least)
            {
                return null;
            }

            needs[i] = least;
        }

        return needs;
    }

    private long Carry(ChainOption[] options)
    {
        long carry = 0;
        for (int level = last + 1; level < options[0].Least.Length; level++)
        {
            carry += LeastOf(options, breakIndex, true, level)!.Value;
            carry -= LeastOf(options, breakIndex, false, level)!.Value;
        }

        return carry;
    }

    private List<FrontState> Spread(FrontState start)
    {
        List<FrontState> front = [start];
        for (int kind = 0; kind < kinds.Count; kind++)
        {
            List<FrontState> layer = front;
            for (int copy = 0; copy < kinds[kind].Parts.Count && layer.Count > 0; copy++)
            {
                List<FrontState> added = [];
                foreach (FrontState state in layer)
                {
                    FrontState next = state.With(kinds[kind].Change, kind);
                    if (!front.Exists(other => other.Covers(next)) && !added.Exists(other => other.Covers(next)))
                    {
                        added.Add(next);
                    }
                }

                layer = added;
                front = [.. front.Where(state => !added.Exists(other => other.Covers(state))), .. added];
            }
        }

        return front;
    }

    private sealed record Kind(long[] Change)
    {
        public List<(int Part, long Carry)> Parts { get; } = [];
    }
}
