namespace Payday.Core.Drafts;

/// <summary>What a pot is for, as a person says it; <see cref="Pots.PotKind"/> has what goes with each.</summary>
public enum PotUse
{
    /// <summary>Used up each period.</summary>
    Spending,

    /// <summary>A target by a date.</summary>
    Sinking,

    /// <summary>Savings in steps.</summary>
    Ladder,

    /// <summary>Kept for trouble.</summary>
    Reserve,
}
