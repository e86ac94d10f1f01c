using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>A debt as it stands on a day.</summary>
/// <param name="Id">Stable name; no two of a list are the same.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Balance">What is owed. Zero or less is a debt that is paid.</param>
/// <param name="YearlyRate">A fraction, e.g. 0.1999 for 19.99 % a year; 0 to 10.</param>
/// <param name="Minimum">The least that must be paid each month.</param>
public sealed record DebtState(DebtId Id, string Name, Money Balance, decimal YearlyRate, MinimumRule Minimum)
{
    /// <summary>The largest yearly rate taken, 1,000 %.</summary>
    public const decimal HighestRate = 10m;

    /// <summary>What is paid on it at once, before the first interest: zero to the balance. Null for nothing.</summary>
    public Money? PaidAtOnce { get; init; }

    /// <summary>For how many of the first months its interest is charged and its minimum covered already, zero or more.</summary>
    public int MonthsCovered { get; init; }
}
