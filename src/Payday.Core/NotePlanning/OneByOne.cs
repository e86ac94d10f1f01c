namespace Payday.Core.NotePlanning;

/// <summary>A plan in a bounded time for any notes: one part after another gets its best out of what is left on hand.</summary>
/// <remarks>
/// First each part spares the notes on hand that can't be fetched, so that the odd rests of later ones can still be
/// paid; then it is paid the same once more, with as much of what is left on hand as it can take. Parts are
/// taken in some orders, and the best of these plans is kept. It is not proven.
/// </remarks>
internal static class OneByOne
{
    private const long StepsOfOrder = 3_000_000;
    private const long FewestUnits = 250;
    private const long MostUnits = 1L << 20;

    // Three orders twice, and one order once.
    private const long Passes = 7;

    /// <summary>Notes for each goal.</summary>
    public static NoteChoice Solve(NoteProblem problem)
    {
        int[] parts = [.. Enumerable.Range(0, problem.Goals.Length)];
        int[][] orders =
        [
            parts,
            [.. parts.OrderBy(part => problem.Goals[part].Top).ThenByDescending(part => problem.Goals[part].AtLeast)],
            [.. parts.OrderByDescending(part => problem.Goals[part].AtLeast).ThenBy(part => problem.Goals[part].Amount)],
        ];
        return orders
            .Select(order => Sparing(problem, order))
            .Append(Solve(problem, parts, long.MaxValue))
            .MinBy(choice => ChoiceRank.Of(problem, choice.Counts))!;
    }

    /// <summary>Notes for each goal in an order, with no more fetched than so many units.</summary>
    public static NoteChoice Solve(NoteProblem problem, int[] order, long limit)
    {
        PartAlone one = Alone(problem);
        long[] onHand = [.. problem.OnHand];
        long[][] counts = new long[problem.Goals.Length][];
        foreach (int part in order)
        {
            counts[part] = one.Pay(problem.Goals[part], onHand, ref limit);
        }

        return new NoteChoice(counts, false);
    }

    private static NoteChoice Sparing(NoteProblem problem, int[] order)
    {
        PartAlone one = Alone(problem);
        long[] onHand = [.. problem.OnHand];
        long limit = long.MaxValue;
        long[][] counts = new long[problem.Goals.Length][];
        foreach (int part in order)
        {
            counts[part] = one.Pay(problem.Goals[part], onHand, ref limit, spares: true);
        }

        // What is left is for whom it serves: with that and its own notes a part can be paid as much as before.
        long[] totals = [.. problem.Values.Select((_, i) => counts.Sum(notes => notes[i]))];
        foreach (int part in order)
        {
            limit = long.MaxValue;
            long[] own = counts[part];
            long[] offered = [.. totals.Select((total, i) => Math.Max(0, problem.OnHand[i] - (total - own[i])))];
            NoteGoal paid = problem.Goals[part] with { Amount = Worth(problem, own) };
            long[] again = one.Pay(paid, offered, ref limit);
            if (Worth(problem, again) == paid.Amount)
            {
                counts[part] = again;
                totals = [.. totals.Select((total, i) => total - own[i] + again[i])];
            }
        }

        return new NoteChoice(counts, false);
    }

    /// <summary>The steps that <see cref="Solve(NoteProblem)"/> takes at most.</summary>
    public static long Work(NoteProblem problem)
    {
        long most = Math.Min(MostOf(problem) * 2, problem.Goals.Max(goal => goal.Amount));
        return Items(problem) * problem.Goals.Length * most * Passes;
    }

    private static PartAlone Alone(NoteProblem problem) => new(problem, MostOf(problem));

    // A part is searched in full as far as the work of an order reaches.
    private static long MostOf(NoteProblem problem) =>
        Math.Max(FewestUnits, Math.Min(StepsOfOrder / (Items(problem) * problem.Goals.Length), MostUnits));

    // Notes on hand are taken in ones, twos, fours and so on.
    private static long Items(NoteProblem problem) => problem.OnHand.Sum(count => 2 + long.Log2(count + 1));

    private static long Worth(NoteProblem problem, long[] notes)
    {
        long worth = 0;
        for (int i = 0; i < notes.Length; i++)
        {
            worth += notes[i] * problem.Values[i];
        }

        return worth;
    }
}
