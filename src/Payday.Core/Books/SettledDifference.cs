using NodaTime;

namespace Payday.Core.Books;

/// <summary>The difference of a count, cleared up since.</summary>
/// <param name="Count">The number of the count.</param>
/// <param name="How">How it was cleared up.</param>
/// <param name="Date">When.</param>
/// <param name="Movement">The number of its movement.</param>
public sealed record SettledDifference(long Count, DifferenceEnd How, LocalDate Date, long Movement);

/// <summary>How a difference ends.</summary>
public enum DifferenceEnd
{
    /// <summary>It is known what it went for: missing money was spent; what was found had not been spent after all.</summary>
    Explained,

    /// <summary>Missing money turned up and is in the pot again.</summary>
    TurnedUp,
}
