namespace Payday.Core.CardPurchases;

/// <summary>Where the pot of a list's line comes from.</summary>
public enum PotChoice
{
    /// <summary>It isn't known yet, and the line can't be entered.</summary>
    Open,

    /// <summary>From a purchase like it that was entered before.</summary>
    Guessed,

    /// <summary>From another line of the same shop, for which the person chose it.</summary>
    Alike,

    /// <summary>The person chose it for this line.</summary>
    Chosen,
}
