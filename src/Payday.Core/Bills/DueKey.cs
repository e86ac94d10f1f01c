using NodaTime;
using Payday.Core.Ids;

namespace Payday.Core.Bills;

/// <summary>What one due of a bill, or one minimum of a debt, is known by: whose it is, and the date its schedule gives it.</summary>
/// <param name="Owner">The bill, or the debt.</param>
/// <param name="Scheduled">
/// The date by the schedule alone. Where it lands after a move off a weekend says nothing: two dues can land on one day.
/// Paydays closed in the first versions of the store have the moved date here (<see cref="DueMatch"/>).
/// </param>
public readonly record struct DueKey(DueOwner Owner, LocalDate Scheduled) : IComparable<DueKey>
{
    /// <summary>Of a bill.</summary>
    public DueKey(BillId bill, LocalDate scheduled)
        : this(DueOwner.Of(bill), scheduled)
    {
    }

    /// <summary>Of a debt.</summary>
    public DueKey(DebtId debt, LocalDate scheduled)
        : this(DueOwner.Of(debt), scheduled)
    {
    }

    /// <summary>The bill; null where it is a debt's minimum.</summary>
    public BillId? Bill => Owner.Bill;

    /// <summary>The debt; null where it is a bill's due.</summary>
    public DebtId? Debt => Owner.Debt;

    /// <summary>By date, then by owner.</summary>
    public int CompareTo(DueKey other)
    {
        int byDate = Scheduled.CompareTo(other.Scheduled);
        return byDate != 0 ? byDate : Owner.CompareTo(other.Owner);
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
