namespace Payday.Core.BankLines;

/// <summary>What the bank would call an account line.</summary>
public enum AccountLineKind
{
    /// <summary>Money that came in from outside.</summary>
    Income,

    /// <summary>Money that went out.</summary>
    Payment,

    /// <summary>Cash fetched, all that was fetched together.</summary>
    Withdrawal,

    /// <summary>Cash taken to the bank, all that was taken there together.</summary>
    Deposit,
}
