namespace Payday.Core.NotePlanning;

/// <summary>The fewest notes for each sum, any number of each value (change-making by dynamic programming).</summary>
internal sealed class Fewest
{
    private readonly int[] values;
    private readonly long[] worth;
    private readonly int[] count;
    private readonly int[] lastNote;
    private readonly int[] floor;

    /// <param name="problem">Whose values are meant.</param>
    /// <param name="from">The first value's index.</param>
    /// <param name="to">The index after the last; only values that can be fetched count.</param>
    /// <param name="most">The largest sum.</param>
    public Fewest(NoteProblem problem, int from, int to, long most)
    {
        worth = problem.Values;
        values = [.. Enumerable.Range(from, to - from).Where(i => problem.Fetchable[i])];
        problem.Effort.Spend((most + 1) * (values.Length + 1));
        count = new int[most + 1];
        lastNote = new int[most + 1];
        floor = new int[most + 1];
        for (int sum = 1; sum <= most; sum++)
        {
            count[sum] = int.MaxValue;
            foreach (int i in values)
            {
                // Of equals the larger note, so that the choice doesn't hang on the order of the search.
                if (worth[i] <= sum && count[sum - worth[i]] < int.MaxValue && count[sum - worth[i]] + 1 <= count[sum])
                {
                    count[sum] = count[sum - worth[i]] + 1;
                    lastNote[sum] = i;
                }
            }

            floor[sum] = count[sum] < int.MaxValue ? sum : floor[sum - 1];
        }
    }

    /// <summary>Whether a sum can be made.</summary>
    public bool Contains(long sum) => floor[sum] == sum;

    /// <summary>The largest sum up to a bound that can be made.</summary>
    public long Floor(long bound) => floor[bound];

    /// <summary>The fewest notes for a sum that can be made.</summary>
    public long Count(long sum) => count[sum];

    /// <summary>Adds the notes of a sum that can be made.</summary>
    public void AddTo(long[] notes, long sum)
    {
        while (sum > 0)
        {
            int note = lastNote[sum];
            notes[note]++;
            sum -= worth[note];
        }
    }
}
