using Payday.Core.Amounts;

namespace Payday.Slips;

/// <summary>Some notes (or coins) of one value.</summary>
internal readonly record struct NoteLine
{
    /// <summary>Some notes of one value.</summary>
    /// <param name="value">What one is worth, above zero.</param>
    /// <param name="count">How many, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not above zero, or the count is below it.</exception>
    public NoteLine(Money value, long count)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(value.MinorUnits, nameof(value));
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        Value = value;
        Count = count;
    }

    /// <summary>What one note is worth.</summary>
    public Money Value { get; }

    /// <summary>How many notes.</summary>
    public long Count { get; }

    /// <summary>What they are worth together.</summary>
    /// <exception cref="OverflowException">The amount doesn't fit 64 bits.</exception>
    public Money Amount => Value * Count;
}
