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
internal sealed class PackedReader(PackedBytes from, IReadOnlyList<string> texts, Currency currency) : IFieldReader
{
    private const int FewNotes = 16;

    // By the number of their text: there are few, and a long life has many texts.
    private Dictionary<int, LedgerEnd>? ends;

    // Days repeat, and the last one mostly.
    private int lastPacked;
    private LocalDate lastDate;

    public Currency Currency => currency;

    /// <summary>All texts.</summary>
    public IReadOnlyList<string> AllTexts => texts;

    /// <summary>How many records follow.</summary>
    public int Count() => from.CountOfItems();

    /// <summary>Bytes as they are.</summary>
    public ReadOnlyMemory<byte> Bytes(int length) => from.Memory(length);

    /// <summary>Records with their count before them, and before each its length; each is made when it is looked at.</summary>
    public IReadOnlyList<T> Sized<T>(Func<IFieldReader, T> read)
        where T : class
    {
        int[] begins = from.Begins();

        // Of who looks at the same time one makes a reader of its own.
        PackedReader? spare = null;
        return new MadeList<T>(begins.Length, at =>
        {
            PackedReader reader = Interlocked.Exchange(ref spare, null) ?? new PackedReader(from.At(0), texts, currency);
            reader.GoTo(begins[at]);
            T record = read(reader);
            spare = reader;
            return record;
        });
    }

    private void GoTo(int position)
    {
        from.GoTo(position);
        from.Count();
    }

    public long Whole(string name)
    {
        long packed = from.Number();
        return (packed >>> 1) ^ -(packed & 1);
    }

    public long? OptionalWhole(string name) => from.Byte() != 0 ? Whole(name) : null;

    public string? OptionalText(string name) => from.Count() is var number and > 0 ? texts[number - 1] : null;

    /// <summary>Where a text that is there is among <see cref="AllTexts"/>; it isn't looked at.</summary>
    /// <exception cref="FormatException">It is not there.</exception>
    public int TextIndex(string name) => from.Count() is > 0 and var number && number <= texts.Count ? number - 1 : throw new FormatException($"The field '{name}' is missing.");

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
        int text = TextIndex(name);
        ends ??= [];
        if (!ends.TryGetValue(text, out LedgerEnd? end))
        {
            ends[text] = end = LedgerEnd.FromKey(texts[text]);
        }

        return end;
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
