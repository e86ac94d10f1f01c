using NodaTime;
using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>One pot's part for one week.</summary>
/// <param name="PotId">The pot.</param>
/// <param name="Week">The fill day, or null for the whole period.</param>
public readonly record struct PartKey(PotId PotId, LocalDate? Week) : IComparable<PartKey>
{
    /// <summary>By pot, then by week.</summary>
    public int CompareTo(PartKey other)
    {
        int byPot = PotId.CompareTo(other.PotId);
        return byPot != 0 ? byPot : Nullable.Compare(Week, other.Week);
    }

    /// <summary>Whether it comes before.</summary>
    public static bool operator <(PartKey left, PartKey right) => left.CompareTo(right) < 0;

    /// <summary>Whether it comes after.</summary>
    public static bool operator >(PartKey left, PartKey right) => left.CompareTo(right) > 0;

    /// <summary>Whether it comes before or is the same.</summary>
    public static bool operator <=(PartKey left, PartKey right) => left.CompareTo(right) <= 0;

    /// <summary>Whether it comes after or is the same.</summary>
    public static bool operator >=(PartKey left, PartKey right) => left.CompareTo(right) >= 0;
}
