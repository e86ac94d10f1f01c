namespace Payday.Core.NotePlanning;

/// <summary>One way to pay a goal: what it takes of the notes on hand, and the best notes for the rest.</summary>
/// <param name="OnHand">Value by value, notes taken from those on hand.</param>
/// <param name="Notes">Value by value, all notes.</param>
/// <param name="Short">Small money missing, in minor units.</param>
/// <param name="KeptBack">Units not paid.</param>
/// <param name="Reused">Units paid with notes on hand.</param>
internal sealed record GoalWay(long[] OnHand, long[] Notes, long Short, long KeptBack, long Reused)
{
    /// <summary>How many notes.</summary>
    public long Count { get; } = Notes.Sum();
}

/// <summary>Lists the ways to pay a goal.</summary>
internal sealed class GoalWays
{
    private readonly NoteProblem problem;
    private readonly NoteGoal goal;
    private readonly int most;
    private readonly Fewest small;
    private readonly Fewest large;
    private readonly List<GoalWay> ways = [];
    private readonly long[] onHand;

    private GoalWays(NoteProblem problem, NoteGoal goal, int most)
    {
        this.problem = problem;
        this.goal = goal;
        this.most = most;
        small = new Fewest(problem, 0, goal.Small, goal.Amount);
        large = new Fewest(problem, goal.Small, goal.Top, goal.Amount);
        onHand = new long[problem.Values.Length];
    }

    /// <summary>
    /// One way for each choice of notes on hand, those that use larger notes first; at most so many.
    /// </summary>
    public static (List<GoalWay> Ways, bool Complete) Of(NoteProblem problem, NoteGoal goal, int most)
    {
        GoalWays list = new(problem, goal, most);
        bool complete = list.Take(goal.Top - 1, goal.Amount, 0);
        if (!complete)
        {
            // That which takes nothing is possible whatever the other parts take.
            list.ways[^1] = list.Rest(goal.Amount, 0);
        }

        return (list.ways, complete);
    }

    private bool Take(int value, long left, long smallTaken)
    {
        if (value < 0)
        {
            if (ways.Count == most)
            {
                return false;
            }

            ways.Add(Rest(left, smallTaken));
            return true;
        }

        long worth = problem.Values[value];
        bool complete = true;
        for (long count = Math.Min(problem.OnHand[value], left / worth); count >= 0 && complete; count--)
        {
            onHand[value] = count;
            complete = Take(value - 1, left - (count * worth), value < goal.Small ? smallTaken + (count * worth) : smallTaken);
        }

        onHand[value] = 0;
        return complete;
    }

    // Least small money missing, then least kept back, then fewest notes.
    private GoalWay Rest(long left, long smallTaken)
    {
        problem.Effort.Spend(left + 1);
        (long Short, long Kept, long Count) best = (long.MaxValue, 0, 0);
        long bestSmall = 0;
        for (long part = 0; part <= left; part++)
        {
            if (small.Contains(part))
            {
                long other = large.Floor(left - part);
                (long, long, long) rank = (
                    Math.Max(0, ((goal.AtLeast - smallTaken - part) * problem.Unit) - goal.RoundedBy),
                    left - part - other,
                    small.Count(part) + large.Count(other));
                if (rank.CompareTo(best) < 0)
                {
                    best = rank;
                    bestSmall = part;
                }
            }
        }

        long[] notes = [.. onHand];
        small.AddTo(notes, bestSmall);
        large.AddTo(notes, large.Floor(left - bestSmall));
        return new GoalWay([.. onHand], notes, best.Short, best.Kept, goal.Amount - left);
    }
}
