using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>What is known of a record without a look at it.</summary>
/// <param name="Traits">What rules look for.</param>
/// <param name="Pot">A number for its pot: records of one pot have the same, those of others mostly another.</param>
public readonly record struct RecordMark<TTraits>(TTraits Traits, byte Pot)
    where TTraits : struct, Enum
{
    // A number that is stored, so not one that differs from run to run.
    private const int Spread = 31;

    /// <summary>The mark of a record.</summary>
    internal static RecordMark<TTraits> Of(IRecord<TTraits> record) => new(record.Traits, Of(record.Pot));

    /// <summary>The number that stands for a pot, or for none.</summary>
    internal static byte Of(PotId? pot) => pot is { } id ? id.Text.Aggregate((byte)1, (mark, letter) => unchecked((byte)((mark * Spread) + letter))) : (byte)0;
}
