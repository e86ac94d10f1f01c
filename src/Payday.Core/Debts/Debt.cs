using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>Money owed to a lender.</summary>
/// <param name="Id">Stable name that the ledger refers to.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Opening">What was owed when the household began, zero or more; the ledger has today's balance.</param>
/// <param name="YearlyRate">A fraction, e.g. 0.1999 for 19.99 % a year; 0 to 10.</param>
/// <param name="Minimum">The least that must be paid each month.</param>
/// <param name="Due">The day of the month on which the minimum is due.</param>
public sealed record Debt(
    DebtId Id,
    string Name,
    Money Opening,
    decimal YearlyRate,
    MinimumRule Minimum,
    MonthDay Due);
