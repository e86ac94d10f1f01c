namespace Payday.Core.Drafts;

/// <summary>What becomes of what a count finds left of a cash pot.</summary>
public enum LeftOverTo
{
    /// <summary>It stays in the pot.</summary>
    Stays,

    /// <summary>It moves on to the account's buffer.</summary>
    Buffer,

    /// <summary>It moves on to another pot.</summary>
    Pot,

    /// <summary>It moves on to a debt.</summary>
    Debt,
}
