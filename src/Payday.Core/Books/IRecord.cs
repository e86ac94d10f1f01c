namespace Payday.Core.Books;

/// <summary>Something that happened between paydays, known by its number.</summary>
/// <typeparam name="TTraits">What rules look for among all of its kind.</typeparam>
public interface IRecord<out TTraits>
    where TTraits : struct, Enum
{
    /// <summary>1 for the first, then without a gap.</summary>
    long Number { get; }

    /// <summary>What is known of it without a look at it.</summary>
    TTraits Traits { get; }
}
