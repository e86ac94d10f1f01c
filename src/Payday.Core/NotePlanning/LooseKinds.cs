namespace Payday.Core.NotePlanning;

/// <summary>The parts sorted by what a loose note at one break changes for them.</summary>
internal sealed class LooseKinds
{
    private readonly int breakIndex;
    private readonly int first;
    private readonly int last;
    private readonly List<int> always = [];
    private readonly List<Kind> kinds = [];

    /// <param name="system">The note system.</param>
    /// <param name="breakIndex">The break.</param>
    /// <param name="options">The options still open for each part.</param>
    public LooseKinds(ChainSystem system, int breakIndex, ChainOption[][] options)
    {
        this.breakIndex = breakIndex;
        first = Math.Max(system.First[breakIndex], 0);
        last = system.Breaks[breakIndex];
        long[] least = new long[last - first + 1];
        Above = new long[least.Length];
        for (int part = 0; part < options.Length; part++)
        {
            Add(part, options[part], least);
        }

        Start = new FrontState(always.Count, least, null, 0);

        // The kinds that lower the most first, so that few states of the others are left uncovered.
        kinds.Sort((left, right) => left.Change.Sum().CompareTo(right.Change.Sum()));

        // First the parts whose loose note asks for least above the break: the relaxed plan doesn't count that.
        kinds.ForEach(kind => kind.Parts.Sort((left, right) => (left.Carry, left.Part).CompareTo((right.Carry, right.Part))));
    }

    /// <summary>Only parts that can't do without have a loose note.</summary>
    public FrontState Start { get; }

    /// <summary>
    /// Level by level, by how much all parts together may ask for more than a state says: a state counts the least of
    /// each part, which loose notes at other breaks may raise.
    /// </summary>
    public long[] Above { get; }

    /// <summary>How many kinds there are.</summary>
    public int Count => kinds.Count;

    /// <summary>How many parts are of a kind.</summary>
    public int PartsOf(int kind) => kinds[kind].Parts.Count;

    /// <summary>A state with one loose note more, in a part of a kind.</summary>
    public FrontState With(FrontState state, int kind) => state.With(kinds[kind].Change, kind);

    /// <summary>Marks the parts that have a loose note in a state.</summary>
    /// <param name="state">The state.</param>
    /// <param name="loose">Part by part, the bits of its breaks; this break's are set.</param>
    public void Mark(FrontState state, int[] loose)
    {
        int[] used = new int[kinds.Count];
        for (FrontState at = state; at.Before is not null; at = at.Before)
        {
            loose[kinds[at.Kind].Parts[used[at.Kind]++].Part] |= 1 << breakIndex;
        }

        foreach (int part in always)
        {
            loose[part] |= 1 << breakIndex;
        }
    }

    private void Add(int part, ChainOption[] options, long[] least)
    {
        long[]? without = Needs(options, false);
        long[]? with = Needs(options, true);
        for (int i = 0; i < least.Length; i++)
        {
            least[i] += (without ?? with)![i];
            Above[i] += Math.Max(AboveLeast(options, without, loose: false, i), AboveLeast(options, with, loose: true, i));
        }

        if (without is null)
        {
            always.Add(part);
        }
        else if (with is not null)
        {
            for (int i = 0; i < with.Length; i++)
            {
                with[i] -= without[i];
            }

            KindOf(with).Parts.Add((part, Carry(options)));
        }
    }

    private Kind KindOf(long[] change)
    {
        foreach (Kind kind in kinds)
        {
            if (kind.Change.AsSpan().SequenceEqual(change))
            {
                return kind;
            }
        }

        Kind added = new(change);
        kinds.Add(added);
        return added;
    }

    // What options with or without the loose note ask for at least, level by level; null if there are none.
    private long[]? Needs(ChainOption[] options, bool loose)
    {
        long[]? needs = null;
        foreach (ChainOption option in options)
        {
            if (option.IsLoose(breakIndex) == loose)
            {
                needs ??= [.. Enumerable.Repeat(long.MaxValue, last - first + 1)];
                for (int i = 0; i < needs.Length; i++)
                {
                    needs[i] = Math.Min(needs[i], option.Least[first + i]);
                }
            }
        }

        return needs;
    }

    private long AboveLeast(ChainOption[] options, long[]? needs, bool loose, int level) => needs is null
        ? 0
        : options.Where(option => option.IsLoose(breakIndex) == loose).Max(option => option.Least[first + level]) - needs[level];

    private long Carry(ChainOption[] options)
    {
        long carry = 0;
        for (int level = last + 1; level < options[0].Least.Length; level++)
        {
            long with = long.MaxValue;
            long without = long.MaxValue;
            foreach (ChainOption option in options)
            {
                ref long least = ref option.IsLoose(breakIndex) ? ref with : ref without;
                least = Math.Min(least, option.Least[level]);
            }

            carry += with - without;
        }

        return carry;
    }

    private sealed record Kind(long[] Change)
    {
        public List<(int Part, long Carry)> Parts { get; } = [];
    }
}
