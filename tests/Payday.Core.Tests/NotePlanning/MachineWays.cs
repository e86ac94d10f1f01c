namespace Payday.Core.Tests.NotePlanning;

/// <summary>All ways to move a pot's money between its weeks, tried one by one.</summary>
internal static class MachineWays
{
    /// <summary>The sums some notes can make, rising.</summary>
    public static IEnumerable<long> Payable(IEnumerable<long> notes, long most)
    {
        SortedSet<long> sums = [0];
        foreach (long note in notes)
        {
            for (long sum = note; sum <= most; sum++)
            {
                if (sums.Contains(sum - note))
                {
                    sums.Add(sum);
                }
            }
        }

        return sums;
    }

    /// <summary>The largest sum not above the wished one, then the least moved, then the most in earlier weeks.</summary>
    public static long[] Best(long[] wished, long[] payable)
    {
        IEnumerable<long[]> ways = [[]];
        foreach (long _ in wished)
        {
            ways = ways.SelectMany(way => payable.Select(sum => (long[])[.. way, sum])).Where(way => way.Sum() <= wished.Sum());
        }

        return ways.OrderByDescending(way => way.Sum())
            .ThenBy(way => way.Zip(wished, (paid, wish) => Math.Abs(paid - wish)).Sum())
            .ThenByDescending(way => string.Concat(way.Select(sum => (char)sum)), StringComparer.Ordinal)
            .First();
    }
}
