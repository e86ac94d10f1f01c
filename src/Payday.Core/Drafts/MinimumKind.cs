namespace Payday.Core.Drafts;

/// <summary>How a lender works out a debt's minimum.</summary>
public enum MinimumKind
{
    /// <summary>Always the same amount.</summary>
    Fixed,

    /// <summary>A part of what is owed, with a floor.</summary>
    Part,
}
