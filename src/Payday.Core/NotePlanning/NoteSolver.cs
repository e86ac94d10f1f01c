namespace Payday.Core.NotePlanning;

/// <summary>Chooses the search that fits a problem.</summary>
internal static class NoteSolver
{
    // Far beyond any household; larger amounts are paid in the largest notes until they fit.
    private const long MostOfChain = 1L << 30;
    private const long MostOfChainWithLimits = 1L << 18;
    private const long MostOfOthers = 1L << 13;

    /// <summary>The best notes for each goal; goals that can't be paid in full are paid as far as possible.</summary>
    public static NoteChoice Solve(NoteProblem problem)
    {
        if (problem.Values.Length == 0 || problem.Goals.Length == 0)
        {
            return new NoteChoice([.. problem.Goals.Select(_ => new long[problem.Values.Length])], true);
        }

        List<NoteChoice> choices = [];
        foreach (Func<NoteProblem, NoteChoice?> search in (ReadOnlySpan<Func<NoteProblem, NoteChoice?>>)[ChainOf, General])
        {
            if (Tried(search, problem) is { } choice)
            {
                choices.Add(choice);
                if (choice.Proven)
                {
                    return choice;
                }
            }
        }

        problem.Effort.Charge(OneByOne.Work(problem));
        choices.Add(OneByOne.Solve(problem));
        return choices.MinBy(choice => ChoiceRank.Of(problem, choice.Counts))!;
    }

    // Null where it has no answer, or none within half of the effort that is left, or would reckon beyond 64 bits.
    private static NoteChoice? Tried(Func<NoteProblem, NoteChoice?> search, NoteProblem problem)
    {
        try
        {
            return search(problem with { Effort = problem.Effort.Half() });
        }
        catch (Exception fault) when (fault is EffortSpentException or OverflowException)
        {
            return null;
        }
    }

    private static NoteChoice? ChainOf(NoteProblem problem)
    {
        if (ChainSystem.TryMake(problem.Values) is not { } system)
        {
            return null;
        }

        bool limits = Array.Exists(problem.Fetchable, fetchable => !fetchable);
        Bulk bulk = Bulk.Of(problem, (limits ? MostOfChainWithLimits : MostOfChain) / problem.Goals.Length);
        return SolveChain(system, bulk.Rest) is { } choice ? bulk.AddTo(choice) : null;
    }

    private static NoteChoice? General(NoteProblem problem)
    {
        Bulk large = Bulk.Of(problem, MostOfOthers);
        return large.AddTo(GeneralSearch.Solve(large.Rest));
    }

    // What a part can be paid at most doesn't hang on other parts, unless notes that can't be fetched would help it.
    private static NoteChoice? SolveChain(ChainSystem system, NoteProblem problem)
    {
        NoteGoal[] fetched = Nearest(problem, problem.Fetchable);
        NoteGoal[] atBest = Nearest(problem, [.. problem.Values.Select(_ => true)]);
        if (fetched.AsSpan().SequenceEqual(atBest))
        {
            NoteProblem settled = problem.With(fetched);
            return ChainSearch.Solve(system, settled, NoteCost.Of(settled));
        }

        if (!fetched.Select(goal => goal.AtLeast).SequenceEqual(atBest.Select(goal => goal.AtLeast)))
        {
            return null;
        }

        NoteProblem whole = problem.With([.. problem.Goals.Zip(fetched, (goal, nearest) => goal with { AtLeast = nearest.AtLeast })]);
        return KeptBackLevel.Solve(whole, problem.Goals.Sum(goal => goal.Amount) - fetched.Sum(goal => goal.Amount));
    }

    private static NoteGoal[] Nearest(NoteProblem problem, bool[] usable)
    {
        GoalReach reach = new(problem.Values, usable, problem.Goals.Max(goal => goal.Amount), problem.Effort);
        return [.. problem.Goals.Select(reach.Nearest)];
    }
}
