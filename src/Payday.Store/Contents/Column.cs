using System.Runtime.InteropServices;
using LiteDB;
using Payday.Core.Amounts;
using Payday.Store.Documents;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Contents;

/// <summary>All records of one kind in the order of a book, with the digests of their documents.</summary>
/// <param name="form">How they are stored.</param>
internal sealed class Column<T>(RecordForm<T> form) : IColumn
{
    private readonly List<T> records = [];
    private readonly List<Digest> digests = [];

    /// <summary>Whether they are numbered from 1, are only ever added to, and so need no digests kept.</summary>
    public bool OnlyGrows { get; init; }

    /// <summary>The records in the order of a book.</summary>
    public ReadOnlySpan<T> Records => CollectionsMarshal.AsSpan(records);

    public string Collection => form.Collection;

    public int Count => records.Count;

    public IEnumerable<KeyValuePair<object, Digest>> Digests => digests.Select((digest, i) => KeyValuePair.Create(Edit.Key(form.Id(records[i])), digest));

    public IEnumerable<BsonDocument> Documents => records.Select(form.From);

    public Digest? Find(object key)
    {
        int at = form.IsNumbered ? Search((long)key) : records.FindLastIndex(record => Edit.Key(form.Id(record)).Equals(key));
        return at < 0 ? null : digests[at];
    }

    public void Take(IEnumerable<Stored<BsonDocument>> documents, Currency currency)
    {
        Stored<T>[] taken = [.. documents.Select(document => new Stored<T>(form.To(document.Record, currency), document.Digest))];
        Array.Sort(taken, (left, right) => form.Order(left.Record, right.Record));
        foreach (Stored<T> one in taken)
        {
            Add(one.Record, one.Digest);
        }
    }

    public bool Apply(IEnumerable<Edit> edits, Currency currency)
    {
        if (OnlyGrows)
        {
            return edits.All(edit => Grow(edit, currency));
        }

        // Of several edits of one document the last one counts.
        Dictionary<object, Edit> changed = [];
        foreach (Edit edit in edits)
        {
            changed[Edit.Key(edit.Id)] = edit;
        }

        Stored<T>[] before = [.. records.Zip(digests, (record, digest) => new Stored<T>(record, digest))];
        IEnumerable<Stored<T>> after =
        [
            .. before.Where(one => !changed.ContainsKey(Edit.Key(form.Id(one.Record)))),
            .. changed.Values.Where(edit => edit.Document is not null)
                .Select(edit => new Stored<T>(form.To(edit.Document!, currency), Digest.Of(Collection, edit.Document!))),
        ];
        records.Clear();
        digests.Clear();
        foreach (Stored<T> one in after.Order(Comparer<Stored<T>>.Create((left, right) => form.Order(left.Record, right.Record))))
        {
            Add(one.Record, one.Digest);
        }

        return true;
    }

    public void Write(PackedWriter to)
    {
        to.Count(records.Count);
        foreach (T record in records)
        {
            form.Write(to, record);
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
        int count = from.Count();
        CollectionsMarshal.SetCount(records, count);
        Span<T> read = CollectionsMarshal.AsSpan(records);
        for (int i = 0; i < read.Length; i++)
        {
            read[i] = form.Read(from);
        }

        if (!OnlyGrows)
        {
            CollectionsMarshal.SetCount(digests, count);
            Digest.CopyAll(from.Bytes(count * Digest.Length), CollectionsMarshal.AsSpan(digests));
        }
    }

    // Of the many that are numbered not each is asked for its id.
    private int Search(long number)
    {
        (int low, int high) = (0, records.Count - 1);
        while (low <= high)
        {
            int middle = (low + high) / 2;
            long at = form.Id(records[middle]).AsInt64;
            if (at == number)
            {
                return middle;
            }

            (low, high) = at < number ? (middle + 1, high) : (low, middle - 1);
        }

        return -1;
    }

    private bool Grow(Edit edit, Currency currency)
    {
        if (edit.Document is not { } document || !edit.Id.IsNumber || edit.Id.AsInt64 != records.Count + 1)
        {
            return false;
        }

        records.Add(form.To(document, currency));
        return true;
    }

    private void Add(T record, Digest digest)
    {
        records.Add(record);
        if (!OnlyGrows)
        {
            digests.Add(digest);
        }
    }
}
