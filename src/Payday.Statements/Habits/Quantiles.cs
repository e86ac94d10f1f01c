namespace Payday.Statements.Habits;

/// <summary>Quantiles that are one of the values: an amount that occurred, exact in minor units.</summary>
/// <remarks>Hyndman and Fan (1996), definition 1: the smallest value with at least that part of the values up to it.</remarks>
internal static class Quantiles
{
    /// <summary>The lower median.</summary>
    public static long LowerMedian(IReadOnlyCollection<long> values) => Of(values, 50);

    /// <summary>The quantile.</summary>
    /// <param name="values">One or more.</param>
    /// <param name="percent">1 to 100.</param>
    public static long Of(IReadOnlyCollection<long> values, int percent)
    {
        long[] inOrder = [.. values.Order()];
        return inOrder[(((inOrder.Length * percent) + 99) / 100) - 1];
    }
}
