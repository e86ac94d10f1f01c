using System.Collections.Immutable;
using System.Runtime.InteropServices;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ledgers;

namespace Payday.Store.Fields;

/// <summary>Reads what <see cref="PackedWriter"/> wrote.</summary>
/// <param name="from">Where from.</param>
/// <param name="texts">The texts that it wrote.</param>
/// <param name="currency">The currency of all amounts.</param>
internal sealed class PackedReader(PackedBytes from, string[] texts, Currency currency) : IFieldReader
{
    private const int FewNotes = 16;

    // By the number of their text. Of all columns few have any, and a long life has many texts.
    private LedgerEnd?[]? ends;

    // Days repeat, and the last one mostly.
    private int lastPacked;
    private LocalDate lastDate;

    public Currency Currency => currency;

    /// <summary>How many records follow.</summary>
    public int Count() => from.CountOfItems();

    /// <summary>Bytes as they are.</summary>
    public ReadOnlySpan<byte> Bytes(int length) => from.Span(length);

    public long Whole(string name)
    {
        long packed = from.Number();
        return (packed >>> 1) ^ -(packed & 1);
    }

    public long? OptionalWhole(string name) => from.Byte() != 0 ? Whole(name) : null;

    public string? OptionalText(string name) => from.Count() is var number and > 0 ? texts[number - 1] : null;

    public bool? OptionalFlag(string name) => from.Byte() switch { 0 => null, 1 => false, _ => true };

    public LocalDate? OptionalDate(string name)
    {
        int packed = from.Count();
        if (packed == 0)
        {
            return null;
        }

        if (packed != lastPacked)
        {
            (lastPacked, lastDate) = (packed, PackedDate.To(packed));
        }

        return lastDate;
    }

    public LedgerEnd End(string name)
    {
        int number = from.Count();
        ends ??= new LedgerEnd?[texts.Length];
        return ends[number - 1] ??= LedgerEnd.FromKey(texts[number - 1]);
    }

    public Notes? OptionalNotes(string name)
    {
        int count = from.Count() - 1;
        if (count <= 0)
        {
            return count < 0 ? null : Notes.None;
        }

        // Few values at a time: those of a currency's notes.
        Span<KeyValuePair<long, int>> notes = count <= FewNotes ? stackalloc KeyValuePair<long, int>[FewNotes] : new KeyValuePair<long, int>[count];
        notes = notes[..count];
        for (int i = 0; i < count; i++)
        {
            notes[i] = KeyValuePair.Create(Whole(name), (int)Whole(name));
        }

        return Notes.Of(notes);
    }

    public IReadOnlyList<string>? OptionalTexts(string name) => OptionalList(name, static item => item.Text(""));

    public ImmutableArray<T>? OptionalList<T>(string name, Func<IFieldReader, T> read)
    {
        int count = from.CountOfItems() - 1;
        if (count <= 0)
        {
            return count < 0 ? null : [];
        }

        var items = new T[count];
        for (int i = 0; i < items.Length; i++)
        {
            items[i] = read(this);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(items);
    }

    public T? OptionalPart<T>(string name, Func<IFieldReader, T> read)
        where T : class => from.Byte() != 0 ? read(this) : null;
}
