namespace Payday.Statements.Matching;

/// <summary>What a statement line without a partner looks like.</summary>
public enum LeftoverKind
{
    /// <summary>Nothing tells.</summary>
    Unknown,

    /// <summary>A charge of the bank.</summary>
    Fee,

    /// <summary>Interest, either way.</summary>
    Interest,

    /// <summary>Money back from where some went before.</summary>
    Refund,

    /// <summary>A standing payment or direct debit for which there is no bill.</summary>
    StandingPayment,
}
