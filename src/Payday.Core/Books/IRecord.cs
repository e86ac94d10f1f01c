using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>Something that happened between paydays, known by its number.</summary>
/// <typeparam name="TTraits">What rules look for among all of its kind.</typeparam>
public interface IRecord<out TTraits>
    where TTraits : struct, Enum
{
    /// <summary>1 for the first, then without a gap.</summary>
    long Number { get; }

    /// <summary>What rules look for; known of it without a look at it.</summary>
    TTraits Traits { get; }

    /// <summary>The pot that it is of; null where it is of none.</summary>
    PotId? Pot { get; }
}
