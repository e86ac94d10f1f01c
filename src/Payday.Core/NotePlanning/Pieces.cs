namespace Payday.Core.NotePlanning;

/// <summary>For each sum, the least value in dear notes and then the fewest notes that come to it, with so many on hand.</summary>
internal sealed class Pieces
{
    // Above any number of notes, so that one dear step counts for more than all of them.
    private const long Step = 1L << 24;
    private const long Never = long.MaxValue / 4;

    private readonly List<(int Value, int Count, long Worth, bool[] Taken)> items = [];
    private readonly long[] cost;
    private readonly int[] floor;

    /// <param name="problem">Whose values are meant.</param>
    /// <param name="onHand">Value by value, how many are on hand.</param>
    /// <param name="usable">Which values count.</param>
    /// <param name="step">The units of one sum to the next; all values are multiples of it.</param>
    /// <param name="sums">The largest sum, in steps.</param>
    /// <param name="spares">Whether notes that can't be fetched are dear; otherwise it is those that have to be.</param>
    public Pieces(NoteProblem problem, long[] onHand, int[] usable, long step, int sums, bool spares)
    {
        cost = new long[sums + 1];
        Array.Fill(cost, Never, 1, sums);
        foreach (int value in usable)
        {
            long worth = problem.Values[value] / step;
            long left = Math.Min(onHand[value], sums / worth);
            for (long count = 1; left > 0; count *= 2)
            {
                long taken = Math.Min(count, left);
                AddOnce(value, (int)taken, worth, spares && !problem.Fetchable[value]);
                left -= taken;
            }

            if (problem.Fetchable[value])
            {
                AddAny(value, worth, !spares);
            }
        }

        floor = new int[cost.Length];
        for (int sum = 1; sum < cost.Length; sum++)
        {
            floor[sum] = cost[sum] < Never ? sum : floor[sum - 1];
        }
    }

    /// <summary>Whether a sum can be made with no more than so many dear steps.</summary>
    public bool Has(int sum, long most) => cost[sum] < Never && Dear(sum) <= most;

    /// <summary>The largest sum up to a bound that can be made so; zero always can.</summary>
    public int Floor(int bound, long most)
    {
        int sum = floor[bound];
        while (sum > 0 && Dear(sum) > most)
        {
            sum = floor[sum - 1];
        }

        return sum;
    }

    /// <summary>How many dear steps there are in a sum that can be made.</summary>
    public long Dear(int sum) => cost[sum] / Step;

    /// <summary>What a sum that can be made costs, to be compared.</summary>
    public long Cost(int sum) => cost[sum];

    /// <summary>Adds the notes of a sum that can be made.</summary>
    public void AddTo(long[] notes, int sum)
    {
        for (int i = items.Count - 1; i >= 0; i--)
        {
            (int value, int count, long worth, bool[] taken) = items[i];
            while (taken[sum])
            {
                notes[value] += Math.Abs(count);
                sum -= (int)(worth * Math.Abs(count));
                if (count > 0)
                {
                    break;
                }
            }
        }
    }

    // So many of those on hand, all or none.
    private void AddOnce(int value, int count, long worth, bool isDear)
    {
        bool[] taken = new bool[cost.Length];
        int all = (int)(worth * count);
        long each = count + (isDear ? all * Step : 0);
        for (int sum = cost.Length - 1; sum >= all; sum--)
        {
            long with = cost[sum - all] + each;
            if (with < cost[sum])
            {
                cost[sum] = with;
                taken[sum] = true;
            }
        }

        items.Add((value, count, worth, taken));
    }

    // Any number fetched; said by a count below zero.
    private void AddAny(int value, long worth, bool isDear)
    {
        bool[] taken = new bool[cost.Length];
        long each = 1 + (isDear ? worth * Step : 0);
        for (int sum = (int)worth; sum < cost.Length; sum++)
        {
            long with = cost[sum - worth] + each;
            if (with < cost[sum])
            {
                cost[sum] = with;
                taken[sum] = true;
            }
        }

        items.Add((value, -1, worth, taken));
    }
}
