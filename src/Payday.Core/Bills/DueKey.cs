using NodaTime;

namespace Payday.Core.Bills;

/// <summary>What one due of a bill, or one minimum of a debt, is known by: whose it is, and the date its schedule gives it.</summary>
/// <param name="BillId">The bill, or the debt.</param>
/// <param name="Scheduled">
/// The date by the schedule alone. Where it lands after a move off a weekend says nothing: two dues can land on one day.
/// Paydays closed in the first versions of the store have the moved date here (<see cref="DueMatch"/>).
/// </param>
public readonly record struct DueKey(string BillId, LocalDate Scheduled) : IComparable<DueKey>
{
    /// <summary>By date, then by bill.</summary>
    public int CompareTo(DueKey other)
    {
        int byDate = Scheduled.CompareTo(other.Scheduled);
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
