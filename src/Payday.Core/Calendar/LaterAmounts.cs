using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Calendar;

/// <summary>What an amount of a household changes to, each from a date on: a rent that rises in January.</summary>
/// <remarks>
/// Of a bill or a wage that is asked for by the date its schedule gives, before any move off a weekend: January's rent is
/// January's, also where it is due on the last working day of December. Common practice, no source.
/// </remarks>
public sealed class LaterAmounts : IEquatable<LaterAmounts>
{
    private LaterAmounts(ImmutableArray<LaterAmount> all) => All = all;

    /// <summary>It never changes.</summary>
    public static LaterAmounts None { get; } = new([]);

    /// <summary>The changes, by rising date; each date once.</summary>
    public ImmutableArray<LaterAmount> All { get; }

    /// <summary>Changes, which are by rising date.</summary>
    /// <exception cref="ArgumentException">A date isn't after the one before it.</exception>
    public static LaterAmounts Of(params ImmutableArray<LaterAmount> changes)
    {
        for (int i = 1; i < changes.Length; i++)
        {
            if (changes[i].From <= changes[i - 1].From)
            {
                throw new ArgumentException($"{changes[i].From} is not after {changes[i - 1].From}.", nameof(changes));
            }
        }

        return changes.IsEmpty ? None : new(changes);
    }

    /// <summary>The amount that holds on a day.</summary>
    /// <param name="day">The day; a change holds on its own day already.</param>
    /// <param name="first">What holds before the first change.</param>
    public Money On(LocalDate day, Money first)
    {
        for (int i = All.Length - 1; i >= 0; i--)
        {
            if (All[i].From <= day)
            {
                return All[i].Amount;
            }
        }

        return first;
    }

    /// <summary>The first change after a day, or null.</summary>
    public LaterAmount? After(LocalDate day) => All.Where(change => change.From > day).Select(change => (LaterAmount?)change).FirstOrDefault();

    /// <summary>Whether both change to the same on the same days.</summary>
    public bool Equals(LaterAmounts? other) => other is not null && All.SequenceEqual(other.All);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as LaterAmounts);

    /// <inheritdoc/>
    public override int GetHashCode() => All.Aggregate(0, HashCode.Combine);

    /// <summary>For tests, never for a person.</summary>
    public override string ToString() => string.Join("; ", All);
}
