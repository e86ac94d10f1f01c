using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Routines;

/// <summary>One due date of one bill.</summary>
/// <param name="BillId">The bill.</param>
/// <param name="Date">When it falls due.</param>
public readonly record struct DueKey(string BillId, LocalDate Date) : IComparable<DueKey>
{
    /// <summary>By date, then by bill.</summary>
    public int CompareTo(DueKey other)
    {
        int byDate = Date.CompareTo(other.Date);
        return byDate != 0 ? byDate : string.CompareOrdinal(BillId, other.BillId);
    }

    /// <summary>Whether it comes before.</summary>
    public static bool operator <(DueKey left, DueKey right) => left.CompareTo(right) < 0;

    /// <summary>Whether it comes after.</summary>
    public static bool operator >(DueKey left, DueKey right) => left.CompareTo(right) > 0;

    /// <summary>Whether it comes before or is the same.</summary>
    public static bool operator <=(DueKey left, DueKey right) => left.CompareTo(right) <= 0;

    /// <summary>Whether it comes after or is the same.</summary>
    public static bool operator >=(DueKey left, DueKey right) => left.CompareTo(right) >= 0;
}

/// <summary>What the person knows of a due.</summary>
/// <param name="Actual">The actual amount, or null for the usual one.</param>
/// <param name="Paid">Whether it has left the account, or null for the proposal.</param>
public sealed record DueDecision(Money? Actual = null, bool? Paid = null);
