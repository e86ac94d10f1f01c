using System.Collections;
using Payday.Core.Amounts;

namespace Payday.Core.Cash;

/// <summary>Notes and coins in a heap: of each value, in minor units, how many pieces.</summary>
/// <remarks>
/// A value: two heaps with the same pieces are equal. A value that was written down with a count of zero is kept, so that
/// what is stored is given back as it was, but counts for nothing: heaps that differ in those alone are equal.
/// Enumerated by value, smallest first.
/// </remarks>
public sealed class Notes : IEnumerable<KeyValuePair<long, int>>, IEquatable<Notes>
{
    // By value, each value once. Heaps have few values, so an array is smaller and faster than a tree.
    private readonly KeyValuePair<long, int>[] counts;

    private Notes(KeyValuePair<long, int>[] counts) => this.counts = counts;

    /// <summary>No notes at all.</summary>
    public static Notes None { get; } = new([]);

    /// <summary>Whether there is not a single piece.</summary>
    public bool IsEmpty => Array.TrueForAll(counts, note => note.Value == 0);

    /// <summary>How many pieces there are.</summary>
    /// <exception cref="OverflowException">They don't fit 32 bits.</exception>
    public int Pieces => counts.Sum(note => note.Value);

    /// <summary>The values that were written down, in minor units, smallest first; with those of a count of zero.</summary>
    public IEnumerable<long> Values => counts.Select(note => note.Key);

    /// <summary>How many pieces of a value there are.</summary>
    /// <param name="value">In minor units.</param>
    public int this[long value]
    {
        get
        {
            int at = IndexOf(value);
            return at < 0 ? 0 : counts[at].Value;
        }
    }

    /// <summary>A heap of pieces of one value.</summary>
    /// <param name="value">In minor units.</param>
    /// <param name="count">Zero or more.</param>
    public static Notes Of(long value, int count) => Of([KeyValuePair.Create(value, count)]);

    /// <summary>A heap of counted pieces; counts of one value add up.</summary>
    /// <param name="notes">By value in minor units, each count zero or more.</param>
    /// <exception cref="ArgumentException">A count is below zero.</exception>
    public static Notes Of(IEnumerable<(long Value, int Count)> notes) => Of(notes.Select(note => KeyValuePair.Create(note.Value, note.Count)));

    /// <summary>A heap of counted pieces; counts of one value add up.</summary>
    /// <param name="notes">By value in minor units, each count zero or more.</param>
    /// <exception cref="ArgumentException">A count is below zero.</exception>
    public static Notes Of(IEnumerable<KeyValuePair<long, int>> notes)
    {
        KeyValuePair<long, int>[] counts = [.. notes];
        return OfOwn(counts, nameof(notes));
    }

    /// <summary>A heap of counted pieces; counts of one value add up.</summary>
    /// <param name="notes">By value in minor units, each count zero or more.</param>
    /// <exception cref="ArgumentException">A count is below zero.</exception>
    public static Notes Of(ReadOnlySpan<KeyValuePair<long, int>> notes) => OfOwn(notes.ToArray(), nameof(notes));

    // The array is kept.
    private static Notes OfOwn(KeyValuePair<long, int>[] counts, string name)
    {
        if (Array.Exists(counts, static note => note.Value < 0))
        {
            throw new ArgumentException("No heap has fewer than no pieces of a value.", name);
        }

        Array.Sort(counts, static (left, right) => left.Key.CompareTo(right.Key));
        int kept = 0;
        for (int i = 0; i < counts.Length; i++)
        {
            if (kept > 0 && counts[kept - 1].Key == counts[i].Key)
            {
                counts[kept - 1] = KeyValuePair.Create(counts[i].Key, counts[kept - 1].Value + counts[i].Value);
            }
            else
            {
                counts[kept++] = counts[i];
            }
        }

        return kept == 0 ? None : new(kept == counts.Length ? counts : counts[..kept]);
    }

    /// <summary>All the heaps together.</summary>
    public static Notes Sum(IEnumerable<Notes> heaps) => Of(heaps.SelectMany(heap => heap.counts));

    /// <summary>What they come to.</summary>
    /// <exception cref="OverflowException">It doesn't fit 64 bits.</exception>
    public Money Worth(Currency currency) => Money.FromMinorUnits(counts.Sum(note => note.Key * note.Value), currency);

    /// <summary>Both heaps together.</summary>
    public Notes Plus(Notes other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return other.counts.Length == 0 ? this : counts.Length == 0 ? other : Of(counts.Concat(other.counts));
    }

    /// <summary>What is left when as many as there are of some are taken out; what isn't there can't be.</summary>
    public Notes Less(Notes taken)
    {
        ArgumentNullException.ThrowIfNull(taken);
        return taken.counts.Length == 0 && Array.TrueForAll(counts, note => note.Value > 0)
            ? this
            : Of(counts.Select(note => KeyValuePair.Create(note.Key, note.Value - taken[note.Key])).Where(note => note.Value > 0));
    }

    /// <summary>The pieces that are in both heaps.</summary>
    public Notes Common(Notes other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Of(counts.Select(note => KeyValuePair.Create(note.Key, Math.Min(note.Value, other[note.Key]))).Where(note => note.Value > 0));
    }

    /// <summary>The heap so many times over.</summary>
    /// <param name="times">Zero or more.</param>
    /// <exception cref="OverflowException">A count doesn't fit 32 bits.</exception>
    public Notes Times(int times)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(times);
        return Of(counts.Select(note => KeyValuePair.Create(note.Key, note.Value * times)).Where(note => note.Value > 0));
    }

    /// <summary>Whether all pieces of another heap are among these.</summary>
    public bool Covers(Notes some)
    {
        ArgumentNullException.ThrowIfNull(some);
        return Array.TrueForAll(some.counts, note => this[note.Key] >= note.Value);
    }

    /// <summary>The heap with another count of a value.</summary>
    /// <param name="value">In minor units.</param>
    /// <param name="count">Zero or more; zero takes the value out.</param>
    public Notes With(long value, int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        IEnumerable<KeyValuePair<long, int>> others = counts.Where(note => note.Key != value);
        return Of(count == 0 ? others : others.Append(KeyValuePair.Create(value, count)));
    }

    /// <summary>The pieces of some values alone.</summary>
    /// <param name="isOne">Whether a value, in minor units, is one of them.</param>
    public Notes Only(Func<long, bool> isOne) => Of(counts.Where(note => isOne(note.Key)));

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<long, int>> GetEnumerator() => ((IEnumerable<KeyValuePair<long, int>>)counts).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => counts.GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(Notes? other) => other is not null
        && (ReferenceEquals(this, other) || counts.Where(note => note.Value > 0).SequenceEqual(other.counts.Where(note => note.Value > 0)));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Notes);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (KeyValuePair<long, int> note in counts.Where(note => note.Value > 0))
        {
            hash.Add(note);
        }

        return hash.ToHashCode();
    }

    /// <summary>E.g. <c>3x2000 1x500</c>, in minor units.</summary>
    public override string ToString() => string.Join(' ', counts.Select(note => FormattableString.Invariant($"{note.Value}x{note.Key}")));

    /// <summary>Whether two heaps have the same pieces.</summary>
    public static bool operator ==(Notes? left, Notes? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two heaps differ in a piece.</summary>
    public static bool operator !=(Notes? left, Notes? right) => !(left == right);

    private int IndexOf(long value) => Array.FindIndex(counts, note => note.Key == value);
}
