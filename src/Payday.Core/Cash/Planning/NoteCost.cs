namespace Payday.Core.Cash.Planning;

/// <summary>What some number of notes of one value costs a plan: a sum to be made least.</summary>
/// <remarks>
/// What is paid is fixed, so the least value fetched is the most value reused: each unit reused counts for more
/// than all notes together, and each note counts one. In the number of notes this is convex, with one kink at the
/// number on hand, and ends there for a value that can't be fetched.
/// </remarks>
internal sealed class NoteCost
{
    private readonly long hand;
    private readonly long reuse;

    private NoteCost(long hand, long reuse, bool fetchable)
    {
        this.hand = hand;
        this.reuse = reuse;
        Most = fetchable ? long.MaxValue : hand;
    }

    /// <summary>The most notes there are.</summary>
    public long Most { get; }

    /// <summary>The costs of each value of a problem.</summary>
    public static NoteCost[] Of(NoteProblem problem)
    {
        long unitReused = problem.Goals.Sum(goal => goal.Amount) + 1;
        return
        [
            .. problem.Values.Select((value, i) => new NoteCost(problem.Hand[i], unitReused * value, problem.Fetchable[i])),
        ];
    }

    /// <summary>The cost of a number of notes.</summary>
    public long Of(long notes) => notes - (reuse * Math.Min(notes, hand));
}
