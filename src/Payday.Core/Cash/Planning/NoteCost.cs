namespace Payday.Core.Cash.Planning;

/// <summary>What some number of notes of one value costs a plan: a sum to be made least.</summary>
/// <remarks>
/// What is paid is fixed, so the least value fetched is the most value reused: each unit reused counts for more
/// than all notes together, and each note counts one. In the number of notes this is convex, with one kink at the
/// number on hand, and ends there for a value that can't be fetched.
/// </remarks>
internal sealed class NoteCost
{
    private readonly NoteProblem problem;
    private readonly long unitReused;

    public NoteCost(NoteProblem problem)
    {
        this.problem = problem;
        unitReused = problem.Goals.Sum(goal => goal.Amount) + 1;
    }

    /// <summary>The cost of a number of notes of the value at a level.</summary>
    public long Of(int level, long notes) =>
        notes - (unitReused * problem.Values[level] * Math.Min(notes, problem.Hand[level]));

    /// <summary>The most notes of the value at a level.</summary>
    public long Most(int level) => problem.Fetchable[level] ? long.MaxValue : problem.Hand[level];
}
