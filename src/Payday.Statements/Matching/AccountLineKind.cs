namespace Payday.Statements.Matching;

/// <summary>What an account line of the household is.</summary>
public enum AccountLineKind
{
    /// <summary>Any other entry: a gift, a transfer, a refund.</summary>
    Other,

    /// <summary>Income of a source.</summary>
    Income,

    /// <summary>A bill or a debt's payment.</summary>
    Bill,

    /// <summary>Cash fetched: one whole withdrawal.</summary>
    Withdrawal,

    /// <summary>Cash brought: one whole deposit.</summary>
    Deposit,

    /// <summary>A purchase by card.</summary>
    CardPurchase,

    /// <summary>A cheque.</summary>
    Cheque,

    /// <summary>A fee or interest.</summary>
    Fee,
}
