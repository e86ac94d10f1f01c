using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Cash.Planning;

/// <summary>Turns a request into units of its notes and a choice of notes back into a plan.</summary>
internal sealed class ProblemMaker
{
    private readonly NoteRequest request;
    private readonly SortedSet<long> fetched;

    /// <param name="request">The request.</param>
    /// <param name="fetched">The values in minor units that can be fetched.</param>
    public ProblemMaker(NoteRequest request, SortedSet<long> fetched)
    {
        this.request = request;
        this.fetched = fetched;
    }

    /// <summary>Solves for given amounts of the parts, in minor units.</summary>
    public SolvedNotes Solve(long[] amounts)
    {
        long[] values = [.. Usable(amounts)];
        long unit = values.Aggregate(0L, Whole.Gcd);
        long total = amounts.Sum();
        NoteProblem problem = new(
            unit,
            [.. values.Select(value => value / unit)],
            [.. values.Select(value => Math.Min(request.OnHand.GetValueOrDefault(value), total / value))],
            [.. values.Select(fetched.Contains)],
            [.. request.Parts.Select((part, i) => GoalOf(part.Wishes, amounts[i], values, unit))]);
        NoteChoice choice = NoteSolver.Solve(problem);
        return new SolvedNotes([.. choice.Counts.Select(counts => NotesOf(counts, values))], choice.Proven);
    }

    // Values that no part can take would only widen the search.
    private IEnumerable<long> Usable(long[] amounts)
    {
        long largest = 0;
        for (int i = 0; i < amounts.Length; i++)
        {
            long top = request.Parts[i].Wishes.TopNote?.MinorUnits ?? long.MaxValue;
            largest = Math.Max(largest, Math.Min(top, amounts[i]));
        }

        SortedSet<long> values = [.. fetched];
        values.UnionWith(request.OnHand.Where(note => note.Value > 0).Select(note => note.Key));
        return values.Where(value => value <= largest);
    }

    /// <summary>The goal of a part in units.</summary>
    public static NoteGoal GoalOf(NoteWishes wishes, long amount, long[] values, long unit)
    {
        if (values.Length == 0)
        {
            return new NoteGoal(0, 0, 0, 0);
        }

        long top = wishes.TopNote?.MinorUnits ?? long.MaxValue;
        long small = Math.Min(top, wishes.Small?.Note.MinorUnits ?? 0);
        long atLeast = wishes.Small?.AtLeast.MinorUnits ?? 0;
        return new NoteGoal(
            amount / unit,
            values.Count(value => value <= top),
            values.Count(value => value <= small),
            (atLeast + unit - 1) / unit,
            Whole.Mod(-atLeast, unit));
    }

    private static ImmutableSortedDictionary<long, int> NotesOf(long[] counts, long[] values)
    {
        ImmutableSortedDictionary<long, int>.Builder notes = ImmutableSortedDictionary.CreateBuilder<long, int>();
        for (int i = 0; i < counts.Length; i++)
        {
            if (counts[i] > 0)
            {
                notes.Add(values[i], checked((int)counts[i]));
            }
        }

        return notes.ToImmutable();
    }
}
