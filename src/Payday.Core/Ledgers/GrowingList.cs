using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Payday.Core.Ledgers;

/// <summary>A list that only grows, as a value: adding gives another list, and the old one stays as it was.</summary>
/// <remarks>
/// The items are in pieces of an array, which lists that grow from one another share; each sees its own beginning of
/// the last one. So reading costs about what an array costs, and adding what is added: the ledger of a long life is
/// read whole many times an evening, and each proposal adds to it and is thrown away. Only the first to add to a list
/// takes the room behind it in its last piece, the next one copies that piece.
/// </remarks>
[CollectionBuilder(typeof(GrowingList), nameof(GrowingList.Of))]
public sealed class GrowingList<T> : IReadOnlyList<T>
{
    private const int PieceBits = 9;
    private const int PieceLength = 1 << PieceBits;

    // What it begins with, what is in the place of some of that, and how many items it has; the pieces come behind it.
    private readonly IReadOnlyList<T> begun;
    private readonly ImmutableDictionary<int, T> replaced;
    private readonly int behind;
    private readonly Piece[] pieces;

    private GrowingList(IReadOnlyList<T> begun, ImmutableDictionary<int, T> replaced, Piece[] pieces, int count)
    {
        this.begun = begun;
        this.replaced = replaced;
        behind = begun.Count;
        this.pieces = pieces;
        Count = count;
    }

    /// <summary>The list without items.</summary>
    internal static GrowingList<T> Empty { get; } = new([], ImmutableDictionary<int, T>.Empty, [], 0);

    /// <inheritdoc cref="GrowingList.After"/>
    internal static GrowingList<T> After(IReadOnlyList<T> begun) => new(begun, ImmutableDictionary<int, T>.Empty, [], begun.Count);

    /// <inheritdoc/>
    public int Count { get; }

    // How much of the last piece is of this list.
    private int InLast => Count == behind ? PieceLength : ((Count - behind - 1) & (PieceLength - 1)) + 1;

    /// <inheritdoc/>
    public T this[int index]
    {
        get
        {
            int at = index - behind;
            return index < 0 || index >= Count ? throw new ArgumentOutOfRangeException(nameof(index))
                : at < 0 ? !replaced.IsEmpty && replaced.TryGetValue(index, out T? other) ? other : begun[index]
                : pieces[at >> PieceBits].Items[at & (PieceLength - 1)];
        }
    }

    /// <summary>The list with more items behind its own.</summary>
    public GrowingList<T> Add(params ReadOnlySpan<T> items)
    {
        if (items.IsEmpty)
        {
            return this;
        }

        int count = checked(Count + items.Length);
        var grown = new Piece[((count - behind - 1) >> PieceBits) + 1];
        pieces.CopyTo(grown, 0);
        int first = Math.Min(items.Length, PieceLength - InLast);
        if (first > 0)
        {
            grown[pieces.Length - 1] = pieces[^1].Add(InLast, items[..first]);
        }

        for (int at = pieces.Length; at < grown.Length; at++)
        {
            ReadOnlySpan<T> left = items[first..];
            int length = Math.Min(left.Length, PieceLength);
            grown[at] = new Piece(left[..length]);
            first += length;
        }

        return new GrowingList<T>(begun, replaced, grown, count);
    }

    /// <summary>The list with another item in the place of one.</summary>
    /// <param name="index">The index of that one.</param>
    /// <param name="item">The other.</param>
    public GrowingList<T> SetItem(int index, T item)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, Count);
        if (index < behind)
        {
            return new GrowingList<T>(begun, replaced.SetItem(index, item), pieces, Count);
        }

        int at = index - behind;
        Piece[] changed = [.. pieces];
        changed[at >> PieceBits] = pieces[at >> PieceBits].SetItem(at & (PieceLength - 1), item);
        return new GrowingList<T>(begun, replaced, changed, Count);
    }

    /// <summary>Its items that are other objects than those at their places in another list, without a look at what both begin with.</summary>
    /// <param name="list">The other list.</param>
    public IEnumerable<T> OtherThanIn(GrowingList<T> list)
    {
        ArgumentNullException.ThrowIfNull(list);
        int same = ReferenceEquals(begun, list.begun) ? behind : 0;
        IEnumerable<int> changed = same == 0 ? [] : replaced.Keys.Union(list.replaced.Keys).Order();
        return changed.Concat(Enumerable.Range(same, Count - same)).Where(at => at >= list.Count || !ReferenceEquals(this[at], list[at])).Select(at => this[at]);
    }

    /// <summary>Its items from one on, without a look at those before it.</summary>
    /// <param name="first">The index of the first.</param>
    public IEnumerable<T> From(int first)
    {
        for (int at = first; at < Count; at++)
        {
            yield return this[at];
        }
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator()
    {
        for (int i = 0; i < behind; i++)
        {
            yield return this[i];
        }

        int left = Count - behind;
        foreach (Piece piece in pieces)
        {
            T[] items = piece.Items;
            for (int i = 0; i < items.Length && left > 0; i++, left--)
            {
                yield return items[i];
            }
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private sealed class Piece
    {
        private int taken;

        /// <param name="items">The first of its items, not more than fit in it.</param>
        public Piece(ReadOnlySpan<T> items)
        {
            // A list with few items stays small; there are many of these, one for each end of the ledger.
            Items = new T[Math.Min(PieceLength, Math.Max(4, items.Length))];
            items.CopyTo(Items);
            taken = items.Length;
        }

        private Piece(T[] items, int taken)
        {
            Items = items;
            this.taken = taken;
        }

        public T[] Items { get; }

        /// <summary>A piece with another item in the place of one; what is added to this one doesn't come into it.</summary>
        public Piece SetItem(int at, T item)
        {
            T[] changed = [.. Items];
            changed[at] = item;
            return new Piece(changed, taken);
        }

        /// <summary>A piece with items behind a number of its own: this one if nobody has added there and they fit.</summary>
        public Piece Add(int from, ReadOnlySpan<T> items)
        {
            int to = from + items.Length;
            if (to <= Items.Length && Interlocked.CompareExchange(ref taken, to, from) == from)
            {
                items.CopyTo(Items.AsSpan(from));
                return this;
            }

            var room = new T[Math.Min(PieceLength, Math.Max(to, from * 2))];
            Items.AsSpan(0, from).CopyTo(room);
            items.CopyTo(room.AsSpan(from));
            return new Piece(room, to);
        }
    }
}
