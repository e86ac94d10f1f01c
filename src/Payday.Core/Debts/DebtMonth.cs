using Payday.Core.Amounts;

namespace Payday.Core.Debts;

/// <summary>What a calendar month asks of a debt.</summary>
/// <param name="Dues">How many due dates it has, zero or more.</param>
/// <param name="IsCharged">Whether its interest is charged already.</param>
internal readonly record struct DebtMonth(int Dues, bool IsCharged)
{
    /// <summary>What was paid early of its minimums, so that it isn't owed any more, and bears this month's interest all the same; null for nothing.</summary>
    public Money? PaidEarly { get; init; }
}
