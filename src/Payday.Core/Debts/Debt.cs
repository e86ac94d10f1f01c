using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>Money owed to a lender.</summary>
/// <param name="Id">Stable name that the ledger refers to.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Opening">What was owed when the household began, zero or more; the ledger has today's balance.</param>
/// <param name="YearlyRate">A fraction, e.g. 0.1999 for 19.99 % a year; 0 to 10.</param>
/// <param name="Minimum">The least that must be paid on each due date.</param>
/// <param name="Schedule">When the minimum is due; a date off the working week stays where it is.</param>
public sealed record Debt(
    DebtId Id,
    string Name,
    Money Opening,
    decimal YearlyRate,
    MinimumRule Minimum,
    Schedule Schedule)
{
    /// <summary>One that is due once a month.</summary>
    public Debt(DebtId id, string name, Money opening, decimal yearlyRate, MinimumRule minimum, MonthDay due)
        : this(id, name, opening, yearlyRate, minimum, new Schedule.Monthly(due))
    {
    }
}
