namespace Payday.Core.Pots;

/// <summary>How far a sinking pot is.</summary>
public enum SinkingStage
{
    /// <summary>It is filled by its date, or full and waiting to be spent.</summary>
    Saving,

    /// <summary>Money was spent from it, so it counts as bought; whether it is finished, repeats or goes on is to be asked.</summary>
    Bought,

    /// <summary>Its date is past, it isn't full and nothing was spent; a new date is to be asked for.</summary>
    PastItsDate,

    /// <summary>It has done what it was for.</summary>
    Finished,
}
