namespace Payday.Core.Debts;

/// <summary>Which debt gets what is above the minimums.</summary>
public enum DebtOrder
{
    /// <summary>The smallest balance first.</summary>
    SmallestBalance,

    /// <summary>The highest yearly rate first.</summary>
    HighestRate,
}
