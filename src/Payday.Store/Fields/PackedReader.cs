using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;

namespace Payday.Store.Fields;

/// <summary>Reads what <see cref="PackedWriter"/> wrote.</summary>
/// <param name="from">Where from.</param>
/// <param name="texts">The texts that it wrote.</param>
/// <param name="currency">The currency of all amounts.</param>
internal sealed class PackedReader(BinaryReader from, string[] texts, Currency currency) : IFieldReader
{
    private readonly LedgerEnd?[] ends = new LedgerEnd?[texts.Length];

    // Days repeat, and the last one mostly.
    private int lastPacked;
    private LocalDate lastDate;

    public Currency Currency => currency;

    /// <summary>How many records follow.</summary>
    public int Count() => from.Read7BitEncodedInt();

    /// <summary>Bytes as they are.</summary>
    public void Bytes(Span<byte> bytes) => from.BaseStream.ReadExactly(bytes);

    public long Whole(string name)
    {
        long packed = from.Read7BitEncodedInt64();
        return (packed >>> 1) ^ -(packed & 1);
    }

    public long? OptionalWhole(string name) => from.ReadBoolean() ? Whole(name) : null;

    public string? OptionalText(string name) => from.Read7BitEncodedInt() is var number and > 0 ? texts[number - 1] : null;

    public bool? OptionalFlag(string name) => from.ReadByte() switch { 0 => null, 1 => false, _ => true };

    public LocalDate? OptionalDate(string name)
    {
        int packed = from.Read7BitEncodedInt();
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
        int number = from.Read7BitEncodedInt();
        return ends[number - 1] ??= LedgerEnd.FromKey(texts[number - 1]);
    }

    public ImmutableSortedDictionary<long, int>? OptionalNotes(string name)
    {
        int count = from.Read7BitEncodedInt() - 1;
        if (count <= 0)
        {
            return count < 0 ? null : ImmutableSortedDictionary<long, int>.Empty;
        }

        ImmutableSortedDictionary<long, int>.Builder notes = ImmutableSortedDictionary.CreateBuilder<long, int>();
        for (int i = 0; i < count; i++)
        {
            notes.Add(Whole(name), (int)Whole(name));
        }

        return notes.ToImmutable();
    }

    public IReadOnlyList<string>? OptionalTexts(string name) => OptionalList(name, static item => item.Text(""));

    public List<T>? OptionalList<T>(string name, Func<IFieldReader, T> read)
    {
        int count = from.Read7BitEncodedInt() - 1;
        if (count < 0)
        {
            return null;
        }

        var items = new List<T>(count);
        for (int i = 0; i < count; i++)
        {
            items.Add(read(this));
        }

        return items;
    }

    public T? OptionalPart<T>(string name, Func<IFieldReader, T> read)
        where T : class => from.ReadBoolean() ? read(this) : null;
}
