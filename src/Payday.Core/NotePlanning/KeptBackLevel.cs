using Payday.Core.Cash;

namespace Payday.Core.NotePlanning;

/// <summary>The plan where notes on hand that can't be fetched let parts be paid more.</summary>
/// <remarks>
/// What is kept back then hangs on who gets those notes. It is treated as if paid in notes of one unit, below all
/// others, so that every part is paid in full and the chain stays a chain. Such a unit counts as small money in the
/// search but isn't: where a part would lack small money for it, there is no answer from here.
/// </remarks>
internal static class KeptBackLevel
{
    /// <summary>Solves a problem, or returns null if the answer would lack small money.</summary>
    /// <param name="problem">The problem, with small money that can be had.</param>
    /// <param name="mostKeptBack">The most units that need to be kept back in all.</param>
    public static NoteChoice? Solve(NoteProblem problem, long mostKeptBack)
    {
        NoteProblem deeper = new(
            problem.Unit,
            [1, .. problem.Values],
            [mostKeptBack, .. problem.OnHand],
            [false, .. problem.Fetchable],
            [.. problem.Goals.Select(goal => goal with { Top = goal.Top + 1, Small = goal.Small + 1 })],
            problem.Effort);
        NoteCost[] costs = [NoteCost.OfKeepingBack(problem, mostKeptBack), .. NoteCost.Of(problem)];
        if (ChainSystem.TryMake(deeper.Values) is not { } system || ChainSearch.Solve(system, deeper, costs) is not { } choice)
        {
            return null;
        }

        long[][] counts = [.. choice.Counts.Select(notes => notes[1..])];
        bool small = problem.Goals.Zip(counts).All(part => SmallMoney(problem, part.First, part.Second) >= part.First.AtLeast);
        return small ? choice with { Counts = counts } : null;
    }

    private static long SmallMoney(NoteProblem problem, NoteGoal goal, long[] notes)
    {
        long sum = 0;
        for (int i = 0; i < goal.Small; i++)
        {
            sum += problem.Values[i] * notes[i];
        }

        return sum;
    }
}
