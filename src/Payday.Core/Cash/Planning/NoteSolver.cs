namespace Payday.Core.Cash.Planning;

/// <summary>Chooses the search that fits a problem.</summary>
internal static class NoteSolver
{
    // Far beyond any household; larger amounts are paid in the largest notes until they fit.
    private const long MostOfChain = 1L << 30;
    private const long MostOfChainWithLimits = 1L << 20;
    private const long MostOfOthers = 1L << 16;

    /// <summary>The best notes for each goal; goals that can't be paid in full are paid as far as possible.</summary>
    /// <remarks>
    /// What a part can be paid at most doesn't hang on other parts, unless notes that can't be fetched would help it.
    /// Then, and for values that form no chain, the general search is used.
    /// </remarks>
    public static NoteChoice Solve(NoteProblem problem)
    {
        if (problem.Values.Length == 0)
        {
            return new NoteChoice([.. problem.Goals.Select(_ => Array.Empty<long>())], true);
        }

        bool limits = Array.Exists(problem.Fetchable, fetchable => !fetchable);
        if (ChainSystem.TryMake(problem.Values) is { } system)
        {
            Bulk bulk = Bulk.Of(problem, (limits ? MostOfChainWithLimits : MostOfChain) / problem.Goals.Length);
            if (Settle(bulk.Rest, limits) is { } settled && ChainSearch.Solve(system, settled) is { } choice)
            {
                return bulk.AddTo(choice);
            }
        }

        Bulk large = Bulk.Of(problem, MostOfOthers);
        return large.AddTo(GeneralSearch.Solve(large.Rest));
    }

    // The problem with goals that can be paid in full, or null if notes that can't be fetched would let more be paid.
    private static NoteProblem? Settle(NoteProblem problem, bool limits)
    {
        long most = problem.Goals.Max(goal => goal.Amount);
        GoalReach fetched = new(problem.Values, problem.Fetchable, most);
        NoteProblem settled = problem.With([.. problem.Goals.Select(fetched.Nearest)]);
        if (limits)
        {
            GoalReach any = new(problem.Values, [.. problem.Values.Select(_ => true)], most);
            for (int i = 0; i < problem.Goals.Length; i++)
            {
                if (any.Nearest(problem.Goals[i]) != settled.Goals[i])
                {
                    return null;
                }
            }
        }

        return settled;
    }
}
