using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Cash;

/// <summary>A withdrawal in as many trips to a machine as its limit needs.</summary>
/// <remarks>
/// Our own rule: one trip a day, from the payday on. Each takes the largest notes that still fit under the limit, so that
/// the first ones bring most.
/// </remarks>
public static class MachineTrips
{
    /// <summary>The notes of each trip, in their order; none for nothing. One trip where there is no limit.</summary>
    /// <param name="withdraw">What is to be fetched.</param>
    /// <param name="limit">The most that the machine gives in one visit; a note above it makes a trip of its own.</param>
    public static ImmutableArray<Notes> Of(Notes withdraw, Money? limit)
    {
        ArgumentNullException.ThrowIfNull(withdraw);
        if (withdraw.IsEmpty)
        {
            return [];
        }

        if (limit is not { } most)
        {
            return [withdraw];
        }

        var trips = ImmutableArray.CreateBuilder<Notes>();
        for (Notes left = withdraw; !left.IsEmpty;)
        {
            Notes trip = Trip(left, most.MinorUnits);
            trips.Add(trip);
            left = left.Less(trip);
        }

        return trips.ToImmutable();
    }

    private static Notes Trip(Notes left, long room)
    {
        var taken = new List<(long Value, int Count)>();
        foreach ((long value, int there) in left.Reverse().Where(note => note.Value > 0))
        {
            int count = (int)Math.Min(there, room / value);
            taken.Add((value, count));
            room -= value * count;
        }

        return taken.Exists(note => note.Count > 0)
            ? Notes.Of(taken.Where(note => note.Count > 0))
            : Notes.Of(left.Where(note => note.Value > 0).Min(note => note.Key), 1);
    }
}
