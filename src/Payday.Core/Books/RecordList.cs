using System.Collections;
using System.Runtime.CompilerServices;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Books;

/// <summary>All records of a kind that there ever were, undone ones too; the one at index i has number i + 1.</summary>
/// <remarks>A value: adding gives another. Of a long life few are ever looked at, so rules ask for those with the traits that they are about.</remarks>
/// <typeparam name="T">The kind.</typeparam>
/// <typeparam name="TTraits">What rules look for among them.</typeparam>
[CollectionBuilder(typeof(RecordList), nameof(RecordList.Of))]
public sealed class RecordList<T, TTraits> : IReadOnlyList<T>
    where T : class, IRecord<TTraits>
    where TTraits : struct, Enum
{
    private readonly GrowingList<T> all;
    private readonly GrowingList<RecordMark<TTraits>> marks;

    internal RecordList(GrowingList<T> all, GrowingList<RecordMark<TTraits>> marks) => (this.all, this.marks) = (all, marks);

    /// <inheritdoc/>
    public int Count => all.Count;

    /// <inheritdoc/>
    public T this[int index] => all[index];

    /// <summary>Those and others.</summary>
    public RecordList<T, TTraits> Add(params ReadOnlySpan<T> records)
    {
        var marksOf = new RecordMark<TTraits>[records.Length];
        for (int i = 0; i < marksOf.Length; i++)
        {
            marksOf[i] = RecordMark<TTraits>.Of(records[i]);
        }

        return new RecordList<T, TTraits>(all.Add(records), marks.Add(marksOf));
    }

    /// <summary>Those, with another in the place of the one of its number.</summary>
    public RecordList<T, TTraits> Put(T record)
    {
        ArgumentNullException.ThrowIfNull(record);
        int at = (int)record.Number - 1;
        return new RecordList<T, TTraits>(all.SetItem(at, record), marks.SetItem(at, RecordMark<TTraits>.Of(record)));
    }

    /// <summary>Those that have some traits, all of them, in order; no other is looked at.</summary>
    public IEnumerable<T> With(TTraits wanted)
    {
        int at = 0;
        foreach (RecordMark<TTraits> mark in marks)
        {
            if (mark.Traits.HasFlag(wanted))
            {
                yield return all[at];
            }

            at++;
        }
    }

    /// <summary>Those of a pot that have some traits, all of them, in order; hardly any other is looked at.</summary>
    public IEnumerable<T> With(TTraits wanted, PotId pot)
    {
        byte ofPot = RecordMark<TTraits>.Of(pot);
        int at = 0;
        foreach (RecordMark<TTraits> mark in marks)
        {
            if (mark.Pot == ofPot && mark.Traits.HasFlag(wanted) && all[at].Pot == pot)
            {
                yield return all[at];
            }

            at++;
        }
    }

    /// <summary>Those that have some traits, all of them, the last one first; no other is looked at.</summary>
    public IEnumerable<T> Latest(TTraits wanted)
    {
        for (int at = Count - 1; at >= 0; at--)
        {
            if (marks[at].Traits.HasFlag(wanted))
            {
                yield return all[at];
            }
        }
    }

    /// <summary>The last one of a pot that has some traits, all of them; null where there is none. Hardly any other is looked at.</summary>
    public T? LastWith(TTraits wanted, PotId pot)
    {
        byte ofPot = RecordMark<TTraits>.Of(pot);
        for (int at = Count - 1; at >= 0; at--)
        {
            if (marks[at].Pot == ofPot && marks[at].Traits.HasFlag(wanted) && all[at].Pot == pot)
            {
                return all[at];
            }
        }

        return null;
    }

    /// <summary>Those from one on, without a look at those before it.</summary>
    /// <param name="first">The index of the first.</param>
    public IEnumerable<T> From(int first) => all.From(first);

    /// <inheritdoc cref="GrowingList{T}.OtherThanIn"/>
    public IEnumerable<T> OtherThanIn(RecordList<T, TTraits> list)
    {
        ArgumentNullException.ThrowIfNull(list);
        return all.OtherThanIn(list.all);
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => all.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
