namespace Payday.Statements.Sums;

/// <summary>How a statement follows the one before it of the same account.</summary>
public enum ChainLink
{
    /// <summary>It opens with what the other closed with.</summary>
    Follows,

    /// <summary>Its days overlap the other's; which lines are new is told by <see cref="Repeats"/>.</summary>
    Overlaps,

    /// <summary>It opens with another balance, or its number isn't the next: a statement in between is missing.</summary>
    Missing,

    /// <summary>Nothing says whether one is missing: a balance isn't there.</summary>
    Unknown,
}
