using System.Collections.Immutable;
using NodaTime;

namespace Payday.Core.Histories;

/// <summary>What was written down, in the order of its days: who wrote something down late looks for it on its day.</summary>
public static class DayOrder
{
    /// <summary>The earliest day first; those of a day in the order in which they are given.</summary>
    /// <typeparam name="T">What has a day.</typeparam>
    /// <param name="written">In the order of writing.</param>
    /// <param name="day">The day of one.</param>
    /// <returns>The same array where it is in order: a ledger of years without late entries costs one look at each.</returns>
    public static ImmutableArray<T> Of<T>(ImmutableArray<T> written, Func<T, LocalDate> day)
    {
        ArgumentNullException.ThrowIfNull(day);
        for (int i = 1; i < written.Length; i++)
        {
            if (day(written[i]) < day(written[i - 1]))
            {
                return [.. written.OrderBy(day)];
            }
        }

        return written;
    }
}
