using System.Collections;

namespace Payday.Core.Ledgers;

/// <summary>A list whose items are made when they are looked at, and are the same objects from then on.</summary>
/// <remarks>
/// A life of 30 years has some 200,000 movements, of which an evening looks at a few hundred; made all at once they take
/// more of the memory and of the time of a start than all else. Several threads may look.
/// </remarks>
/// <param name="count">How many there are.</param>
/// <param name="make">Makes the one at an index; asked again it may make an equal one.</param>
public sealed class MadeList<T>(int count, Func<int, T> make) : IReadOnlyList<T>
    where T : class
{
    private const int PieceBits = 7;
    private const int PieceLength = 1 << PieceBits;

    private readonly T?[]?[] pieces = new T[]?[(count + PieceLength - 1) >> PieceBits];

    /// <inheritdoc/>
    public int Count => count;

    /// <inheritdoc/>
    public T this[int index]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfNegative(index);
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, count);
            T?[] piece = Kept(ref pieces[index >> PieceBits]) ?? Keep(ref pieces[index >> PieceBits], new T?[PieceLength]);
            ref T? item = ref piece[index & (PieceLength - 1)];
            return Kept(ref item) ?? Keep(ref item, make(index));
        }
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator()
    {
        for (int i = 0; i < count; i++)
        {
            yield return this[i];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private static TKept? Kept<TKept>(ref TKept? place)
        where TKept : class => Volatile.Read(ref place);

    // Whoever comes second takes what the first one kept.
    private static TKept Keep<TKept>(ref TKept? place, TKept made)
        where TKept : class => Interlocked.CompareExchange(ref place, made, null) ?? made;
}
