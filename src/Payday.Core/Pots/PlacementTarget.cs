namespace Payday.Core.Pots;

/// <summary>Where surplus can go.</summary>
public enum PlacementTarget
{
    /// <summary>An extra payment on a debt.</summary>
    Debt,

    /// <summary>More in a pot.</summary>
    Pot,

    /// <summary>The buffer.</summary>
    Buffer,

    /// <summary>More set aside for a bill.</summary>
    Bill,
}
