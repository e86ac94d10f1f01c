namespace Payday.Statements.Lines;

/// <summary>What kind of line the bank says it is. Where the bank says nothing, <see cref="Other"/>.</summary>
public enum LineKind
{
    /// <summary>The bank says nothing of its kind.</summary>
    Other,

    /// <summary>A transfer, sent or received.</summary>
    Transfer,

    /// <summary>A standing order.</summary>
    StandingOrder,

    /// <summary>A direct debit.</summary>
    DirectDebit,

    /// <summary>A purchase by card.</summary>
    Card,

    /// <summary>Cash fetched or brought.</summary>
    Cash,

    /// <summary>A cheque.</summary>
    Cheque,

    /// <summary>A charge of the bank.</summary>
    Fee,

    /// <summary>Interest, either way.</summary>
    Interest,

    /// <summary>Pay, a pension or the like.</summary>
    Pay,
}
