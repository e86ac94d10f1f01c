namespace Payday.Core.Ledgers;

/// <summary>What an account entry is.</summary>
public enum EntryKind
{
    /// <summary>Something paid that came back.</summary>
    Refund,

    /// <summary>What the bank pays for money that it holds; or, on a debt, what it charges beside its month's interest.</summary>
    Interest,

    /// <summary>Given to the household, or by it.</summary>
    Gift,

    /// <summary>From or to an account of the household's that is not in this book.</summary>
    Transfer,

    /// <summary>What the bank or a lender charges.</summary>
    Fee,

    /// <summary>A payment for a purpose.</summary>
    Payment,

    /// <summary>Pay of a source, or of a name, on a day that is no payday.</summary>
    Income,

    /// <summary>Money borrowed anew on a debt.</summary>
    Borrowing,

    /// <summary>Cash that is gone.</summary>
    Loss,
}
