using System.Collections.Immutable;
using System.Runtime.InteropServices;
using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;
using Payday.Store.Documents;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Contents;

/// <summary>All records of one kind in the order of a book, with the digests of their documents.</summary>
/// <remarks>Of a snapshot a record is made when it is looked at.</remarks>
/// <param name="form">How they are stored.</param>
internal sealed class Column<T>(RecordForm<T> form) : IColumn
    where T : class
{
    private GrowingList<Digest> digests = [];
    private GrowingList<(byte Traits, byte Pot)> marks = [];

    /// <summary>The records in the order of a book.</summary>
    public GrowingList<T> Records { get; private set; } = [];

    /// <summary>All of them, for who looks at each.</summary>
    public ImmutableArray<T> All
    {
        get
        {
            ImmutableArray<T>.Builder all = ImmutableArray.CreateBuilder<T>(Records.Count);
            all.AddRange(Records);
            return all.MoveToImmutable();
        }
    }

    /// <summary>The one that there is; null where there is none.</summary>
    public T? One => Records.Count > 0 ? Records[0] : null;

    /// <summary>The mark of each, of a form that has any.</summary>
    /// <param name="of">A mark by the numbers that it is stored as.</param>
    public TMark[] Marks<TMark>(Func<byte, byte, TMark> of)
    {
        var all = new TMark[Count];
        for (int i = 0; i < all.Length; i++)
        {
            all[i] = of(marks[i].Traits, marks[i].Pot);
        }

        return all;
    }

    public string Collection => form.Collection;

    public int Count => Records.Count;

    public IEnumerable<KeyValuePair<object, Digest>> Digests => digests.Select((digest, i) => KeyValuePair.Create(KeyOf(i), digest));

    public IEnumerable<BsonDocument> Documents => Records.Select(form.From);

    // From 1 without a gap, as their ids rise.
    private bool IsWhole => form.IsNumbered && (Count == 0 || form.Id(Records[Count - 1]).AsInt64 == Count);

    public Digest? Find(object key)
    {
        int at = form.IsNumbered ? Search((long)key) : Count - 1;
        while (!form.IsNumbered && at >= 0 && !KeyOf(at).Equals(key))
        {
            at--;
        }

        return at < 0 ? null : digests[at];
    }

    public void Take(IEnumerable<Stored<BsonDocument>> documents, Currency currency) =>
        Put(documents.Select(document => new Stored<T>(form.To(document.Record, currency), document.Digest)));

    public bool Apply(IEnumerable<Edit> edits, Currency currency)
    {
        // Of several edits of one document the last one counts.
        Dictionary<object, Edit> changed = [];
        foreach (Edit edit in edits)
        {
            changed[Edit.Key(edit.Id)] = edit;
        }

        if (IsWhole && changed.Values.All(edit => edit.Document is not null))
        {
            foreach (Edit edit in changed.Values.OrderBy(edit => edit.Id.AsInt64))
            {
                Put((int)edit.Id.AsInt64 - 1, Of(edit, currency));
            }

            return true;
        }

        Put(
        [
            .. Enumerable.Range(0, Count).Where(at => !changed.ContainsKey(KeyOf(at))).Select(at => new Stored<T>(Records[at], digests[at])),
            .. changed.Values.Where(edit => edit.Document is not null).Select(edit => Of(edit, currency)),
        ]);
        return true;
    }

    public void Write(PackedWriter to)
    {
        to.Count(Count);
        foreach (T record in Records)
        {
            to.Sized(record, form.Write);
        }

        if (form.Mark is { } markOf)
        {
            to.Bytes([.. Records.Select(markOf).SelectMany(mark => new[] { mark.Traits, mark.Pot })]);
        }

        Span<byte> bytes = stackalloc byte[Digest.Length];
        foreach (Digest digest in digests)
        {
            digest.CopyTo(bytes);
            to.Bytes(bytes);
        }
    }

    public void Read(PackedReader from)
    {
        Records = GrowingList.After(from.Sized(form.Read));
        marks = form.Mark is null ? [] : [.. MemoryMarshal.Cast<byte, (byte, byte)>(from.Bytes(2 * Count).Span)];
        digests = GrowingList.After(new PackedDigests(from.Bytes(Count * Digest.Length)));
    }

    private object KeyOf(int at) => Edit.Key(form.Id(Records[at]));

    private Stored<T> Of(Edit edit, Currency currency) => new(form.To(edit.Document!, currency), Digest.Of(Collection, edit.Document!));

    // Of the many that are numbered not each is asked for its id.
    private int Search(long number)
    {
        (int low, int high) = (0, Count - 1);
        while (low <= high)
        {
            int middle = (low + high) / 2;
            long at = form.Id(Records[middle]).AsInt64;
            if (at == number)
            {
                return middle;
            }

            (low, high) = at < number ? (middle + 1, high) : (low, middle - 1);
        }

        return -1;
    }

    // In the place of another, or behind all.
    private void Put(int at, Stored<T> one)
    {
        (byte, byte)[] mark = form.Mark is { } markOf ? [markOf(one.Record)] : [];
        if (at == Count)
        {
            (Records, digests, marks) = (Records.Add(one.Record), digests.Add(one.Digest), marks.Add(mark));
        }
        else
        {
            (Records, digests) = (Records.SetItem(at, one.Record), digests.SetItem(at, one.Digest));
            marks = mark is [var known] ? marks.SetItem(at, known) : marks;
        }
    }

    private void Put(IEnumerable<Stored<T>> all)
    {
        Stored<T>[] ordered = [.. all];
        Array.Sort(ordered, (left, right) => form.Order(left.Record, right.Record));
        Records = [.. ordered.Select(one => one.Record)];
        digests = [.. ordered.Select(one => one.Digest)];
        marks = form.Mark is { } markOf ? [.. ordered.Select(one => markOf(one.Record))] : [];
    }
}
