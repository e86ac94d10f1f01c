namespace Payday.Core.Bills;

/// <summary>The least concave line that starts in (0, 0) and is nowhere below given points.</summary>
/// <remarks>
/// Andrew's monotone chain, upper half: one pass over points that are in order already. Every comparison and every
/// height is exact: factors of 64 bits, products of 128.
/// </remarks>
internal static class ConcaveMajorant
{
    /// <summary>The heights of the line over the points, rounded up to whole numbers.</summary>
    /// <param name="x">Zero or more, in order; doubles are allowed.</param>
    /// <param name="y">For each x, zero or more, in order.</param>
    /// <returns>For each x, a height; the last one is the last y itself.</returns>
    public static long[] RoundedUp(ReadOnlySpan<long> x, ReadOnlySpan<long> y)
    {
        var corners = new List<(long X, long Y)>(x.Length + 1) { (0, 0) };
        for (int i = 0; i < x.Length; i++)
        {
            while (corners.Count > 1 && !TurnsDown(corners[^2], corners[^1], (x[i], y[i])))
            {
                corners.RemoveAt(corners.Count - 1);
            }

            // Only the start can still be at this x: its height is then the upper end, which comes last.
            if (x[i] == corners[^1].X)
            {
                corners[^1] = (x[i], y[i]);
            }
            else
            {
                corners.Add((x[i], y[i]));
            }
        }

        var heights = new long[x.Length];
        int right = 0;
        for (int i = 0; i < x.Length; i++)
        {
            while (corners[right].X < x[i])
            {
                right++;
            }

            heights[i] = corners[right].X == x[i] ? corners[right].Y : CeilingBetween(corners[right - 1], corners[right], x[i]);
        }

        return heights;
    }

    // Two products are compared rather than their difference with zero: each fits 128 bits, the difference may not.
    private static bool TurnsDown((long X, long Y) a, (long X, long Y) b, (long X, long Y) c) =>
        (Int128)(b.Y - a.Y) * (c.X - a.X) > (Int128)(c.Y - a.Y) * (b.X - a.X);

    private static long CeilingBetween((long X, long Y) a, (long X, long Y) b, long x)
    {
        (Int128 rise, Int128 rest) = Int128.DivRem((Int128)(b.Y - a.Y) * (x - a.X), b.X - a.X);
        return a.Y + (long)rise + (rest > 0 ? 1 : 0);
    }
}
