using System.Collections.Immutable;
using Payday.Core.Cash;

namespace Payday.Core.NotePlanning;

/// <summary>Turns a request into units of its notes and a choice of notes back into a plan.</summary>
internal sealed class ProblemMaker
{
    private const long MostNotes = 1_000_000;

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
    /// <param name="amounts">Part by part.</param>
    /// <param name="effort">The work it may cost.</param>
    public SolvedNotes Solve(long[] amounts, Effort effort)
    {
        (NoteProblem problem, long[] values) = ProblemOf(amounts, effort);
        return Solved(NoteSolver.Solve(problem), values);
    }

    /// <summary>Serves parts in an order with no more fetched than a limit in minor units; never proven.</summary>
    public SolvedNotes Serve(long[] amounts, int[] order, long limit)
    {
        (NoteProblem problem, long[] values) = ProblemOf(amounts, new Effort(0));
        return values.Length == 0 ? Solved(NoteSolver.Solve(problem), values) : Solved(OneByOne.Solve(problem, order, limit / problem.Unit), values);
    }

    private (NoteProblem Problem, long[] Values) ProblemOf(long[] amounts, Effort effort)
    {
        long[] values = [.. Usable(amounts)];
        long unit = values.Aggregate(0L, Whole.Gcd);
        Int128 total = amounts.Aggregate(Int128.Zero, (sum, amount) => sum + amount);
        NoteProblem problem = new(
            unit,
            [.. values.Select(value => value / unit)],
            [.. values.Select(value => (long)Int128.Min(request.Loose[value], total / value))],
            [.. values.Select(fetched.Contains)],
            [.. request.Parts.Select((part, i) => GoalOf(part.Wishes, amounts[i], values, unit))],
            effort);
        return (problem with { Goals = [.. problem.Goals.Select(goal => Payable(problem, goal))] }, values);
    }

    // Notes are counted in 32 bits, also those of all parts together; what so many can't pay is kept back.
    private static SolvedNotes Solved(NoteChoice choice, long[] values)
    {
        long most = int.MaxValue / (1 + ((long)choice.Counts.Length * values.Length));
        return new([.. choice.Counts.Select(counts => NotesOf(counts, values, most))], choice.Proven);
    }

    // What no number of notes could pay is kept back from the start, so that sums are of a size to be searched.
    private static NoteGoal Payable(NoteProblem problem, NoteGoal goal)
    {
        Int128 most = Most(problem, goal.Top);
        return most >= goal.Amount ? goal : goal with { Amount = (long)most };
    }

    // Values that can be fetched are there any number of times, but nobody carries more than MostNotes.
    private static Int128 Most(NoteProblem problem, int top)
    {
        Int128 most = 0;
        for (int i = 0; i < top; i++)
        {
            most += (Int128)problem.Values[i] * (problem.Fetchable[i] ? MostNotes : problem.OnHand[i]);
        }

        return most;
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
        values.UnionWith(request.Loose.Where(note => note.Value > 0).Select(note => note.Key));
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
            (atLeast / unit) + (atLeast % unit == 0 ? 0 : 1),
            Whole.Mod(-atLeast, unit));
    }

    private static Notes NotesOf(long[] counts, long[] values, long most) =>
        Notes.Of(counts.Zip(values).Where(note => note.First > 0).Select(note => (note.Second, (int)Math.Min(note.First, most))));
}
