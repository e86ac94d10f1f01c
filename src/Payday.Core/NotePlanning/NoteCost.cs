namespace Payday.Core.NotePlanning;

/// <summary>What some number of notes of one value costs a plan: a sum to be made least.</summary>
/// <remarks>
/// What is paid is fixed, so the least value fetched is the most value reused: each unit reused counts for more
/// than all notes together, and each note counts one. In the number of notes this is convex, with one kink at the
/// number on hand, and ends there for a value that can't be fetched.
/// </remarks>
internal sealed class NoteCost
{
    private readonly long each;
    private readonly long onHand;
    private readonly long reuse;

    private NoteCost(long each, long onHand, long reuse, bool fetchable)
    {
        this.each = each;
        this.onHand = onHand;
        this.reuse = reuse;
        Most = fetchable ? long.MaxValue : onHand;
    }

    /// <summary>The most notes there are.</summary>
    public long Most { get; }

    /// <summary>The costs of each value of a problem.</summary>
    public static NoteCost[] Of(NoteProblem problem)
    {
        long reuse = UnitReused(problem);
        return
        [
            .. problem.Values.Select((value, i) => new NoteCost(1, problem.OnHand[i], reuse * value, problem.Fetchable[i])),
        ];
    }

    /// <summary>The cost of keeping units of a problem back, which counts for more than all its notes.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="most">The most units that need to be kept back.</param>
    public static NoteCost OfKeepingBack(NoteProblem problem, long most)
    {
        long onHand = problem.Values.Zip(problem.OnHand, (value, count) => value * count).Sum();
        return new NoteCost(UnitReused(problem) * (onHand + 1), most, 0, false);
    }

    /// <summary>The cost of a number of notes.</summary>
    public long Of(long notes) => (each * notes) - (reuse * Math.Min(notes, onHand));

    private static long UnitReused(NoteProblem problem) => problem.Goals.Sum(goal => goal.Amount) + 1;
}
