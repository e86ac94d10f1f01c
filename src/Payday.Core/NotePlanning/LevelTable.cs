namespace Payday.Core.NotePlanning;

/// <summary>The least cost of having each of an even row of totals in notes up to some level.</summary>
/// <param name="Start">The first total.</param>
/// <param name="Step">From one total to the next.</param>
/// <param name="Cost">The costs; <see cref="Never"/> where a total can't be had.</param>
internal sealed record LevelTable(long Start, long Step, long[] Cost)
{
    /// <summary>Above every cost, and far enough from overflow to be added to.</summary>
    public const long Never = long.MaxValue / 4;

    /// <summary>No notes at all.</summary>
    public static LevelTable Nothing { get; } = new(0, 1, [0]);

    /// <summary>The total at an index.</summary>
    public long Total(int index) => Start + (Step * index);

    /// <summary>The index of a total in the table.</summary>
    public int IndexOf(long total) => (int)((total - Start) / Step);

    /// <summary>The totals from a least one on that leave the same rest as another over a unit, a multiple of the step.</summary>
    public LevelTable? Select(long least, long like, long unit)
    {
        long start = Whole.Next(Math.Max(least, Start), like, unit);
        if (start > Total(Cost.Length - 1))
        {
            return null;
        }

        int index = IndexOf(start);
        int stride = (int)(unit / Step);
        long[] cost = new long[((Cost.Length - 1 - index) / stride) + 1];
        for (int i = 0; i < cost.Length; i++)
        {
            cost[i] = Cost[index + (stride * i)];
        }

        return new LevelTable(start, unit, cost);
    }
}
