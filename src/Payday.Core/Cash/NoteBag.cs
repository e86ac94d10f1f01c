using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Cash;

/// <summary>Notes and coins by value in minor units: how many, always above zero.</summary>
public static class NoteBag
{
    /// <summary>Nothing in it.</summary>
    public static ImmutableSortedDictionary<long, int> Empty { get; } = ImmutableSortedDictionary<long, int>.Empty;

    /// <summary>What they come to.</summary>
    /// <exception cref="OverflowException">It doesn't fit 64 bits.</exception>
    public static Money Worth(ImmutableSortedDictionary<long, int> notes, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(notes);
        return Money.FromMinorUnits(notes.Sum(note => note.Key * note.Value), currency);
    }

    /// <summary>How many pieces.</summary>
    public static int Count(ImmutableSortedDictionary<long, int> notes)
    {
        ArgumentNullException.ThrowIfNull(notes);
        return notes.Values.Sum();
    }

    /// <summary>Both together.</summary>
    public static ImmutableSortedDictionary<long, int> Plus(ImmutableSortedDictionary<long, int> left, ImmutableSortedDictionary<long, int> right)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        return left.SetItems(right.Select(note => KeyValuePair.Create(note.Key, left.GetValueOrDefault(note.Key) + note.Value)));
    }

    /// <summary>What is left when as many as there are of some are taken out.</summary>
    public static ImmutableSortedDictionary<long, int> Less(ImmutableSortedDictionary<long, int> from, ImmutableSortedDictionary<long, int> taken)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(taken);
        return from
            .Select(note => (note.Key, Count: note.Value - taken.GetValueOrDefault(note.Key)))
            .Where(note => note.Count > 0)
            .ToImmutableSortedDictionary(note => note.Key, note => note.Count);
    }

    /// <summary>Whether all of some are among others.</summary>
    public static bool Contains(ImmutableSortedDictionary<long, int> all, ImmutableSortedDictionary<long, int> some)
    {
        ArgumentNullException.ThrowIfNull(all);
        ArgumentNullException.ThrowIfNull(some);
        return some.All(note => all.GetValueOrDefault(note.Key) >= note.Value);
    }
}
