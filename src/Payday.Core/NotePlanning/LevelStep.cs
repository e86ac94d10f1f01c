namespace Payday.Core.NotePlanning;

/// <summary>One level of notes added to a table of totals.</summary>
/// <remarks>
/// For each new total the best old one is sought. Because the cost is convex in the number of notes, the best old
/// total never falls as the new one rises, so that halving the new totals also divides the old ones. Of equals the
/// smallest old total is taken: more of the larger note.
/// </remarks>
internal sealed class LevelStep
{
    // Halving goes over each total some times.
    private const long WorkOfTotal = 4;

    private readonly NoteCost cost;
    private readonly long value;
    private readonly long loose;
    private readonly int[] choice;

    private LevelStep(NoteCost cost, long value, long loose, LevelTable before, LevelTable after)
    {
        this.cost = cost;
        this.value = value;
        this.loose = loose;
        Before = before;
        After = after;
        choice = new int[after.Cost.Length];
    }

    /// <summary>Totals in notes below the level.</summary>
    public LevelTable Before { get; }

    /// <summary>Totals in notes up to the level.</summary>
    public LevelTable After { get; }

    /// <summary>Adds a level.</summary>
    /// <param name="cost">The cost of its notes.</param>
    /// <param name="value">The value of its notes.</param>
    /// <param name="loose">The fewest notes of it.</param>
    /// <param name="before">Totals below the level.</param>
    /// <param name="start">The first total wanted; it and the step agree with the totals before over their step.</param>
    /// <param name="step">From one total wanted to the next, a multiple of the step before.</param>
    /// <param name="last">The last total that can be wanted.</param>
    /// <param name="effort">The work it may cost.</param>
    /// <returns>The step, or null if no total wanted can be had.</returns>
    public static LevelStep? Add(
        NoteCost cost, long value, long loose, LevelTable before, long start, long step, long last, Effort effort)
    {
        long first = Whole.Next(Math.Max(start, before.Start + (value * loose)), start, step);
        if (cost.Most < loose)
        {
            return null;
        }

        if (cost.Most < long.MaxValue)
        {
            last = Math.Min(last, before.Total(before.Cost.Length - 1) + (value * cost.Most));
        }

        if (first > last)
        {
            return null;
        }

        effort.Spend((((last - first) / step) + 1 + before.Cost.Length) * WorkOfTotal);
        LevelTable after = new(first, step, new long[((last - first) / step) + 1]);
        LevelStep made = new(cost, value, loose, before, after);
        made.Fill(0, after.Cost.Length - 1, 0, before.Cost.Length - 1);
        return made;
    }

    /// <summary>The total below the level that a total up to it is best made from.</summary>
    public long Back(long total) => Before.Total(choice[After.IndexOf(total)]);

    private void Fill(int from, int to, int bestFrom, int bestTo)
    {
        if (from > to)
        {
            return;
        }

        int middle = (from + to) / 2;
        long total = After.Total(middle);
        long fit = (total - (value * loose) - Before.Start) / Before.Step;
        int lastBefore = (int)Math.Min(bestTo, fit);
        int best = FirstWithin(total, bestFrom);
        long least = long.MaxValue;
        long[] costs = Before.Cost;
        long notesFromFirst = (total - Before.Start) / value;
        long notesPerStep = Before.Step / value;
        for (int i = best; i <= lastBefore; i++)
        {
            long sum = costs[i] + cost.Of(notesFromFirst - (notesPerStep * i));
            if (sum < least)
            {
                least = sum;
                best = i;
            }
        }

        After.Cost[middle] = least >= LevelTable.Never / 2 ? LevelTable.Never : least;
        choice[middle] = best;
        Fill(from, middle - 1, bestFrom, best);
        Fill(middle + 1, to, best, bestTo);
    }

    // A value that can't be fetched ends at what is on hand: totals too far below are out of reach.
    private int FirstWithin(long total, int from)
    {
        if (cost.Most == long.MaxValue)
        {
            return from;
        }

        long missing = total - (value * cost.Most) - Before.Start;
        long steps = missing <= 0 ? 0 : (missing + Before.Step - 1) / Before.Step;
        return (int)Math.Max(from, steps);
    }
}
