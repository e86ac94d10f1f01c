using System.Collections.Immutable;
using System.Text;
using NodaTime;
using Payday.Core.Cash;

namespace Payday.Store.Fields;

/// <summary>Writes the fields of records without their names, in as few bytes as is easy; each text is written once.</summary>
/// <param name="to">Where to.</param>
/// <param name="texts">The texts, for which their numbers stand; 0 stands for none.</param>
internal sealed class PackedWriter(BinaryWriter to, TextTable texts) : IFieldWriter
{
    private MemoryStream? sized;

    /// <summary>How many records follow.</summary>
    public void Count(int count) => to.Write7BitEncodedInt(count);

    /// <summary>A record with its length before it, so that it can be passed over.</summary>
    public void Sized<T>(T record, Action<IFieldWriter, T> write)
    {
        sized ??= new MemoryStream();
        sized.SetLength(0);
        using (var part = new BinaryWriter(sized, Encoding.UTF8, leaveOpen: true))
        {
            write(new PackedWriter(part, texts), record);
        }

        Count((int)sized.Length);
        Bytes(sized.GetBuffer().AsSpan(0, (int)sized.Length));
    }

    /// <summary>Bytes as they are.</summary>
    public void Bytes(ReadOnlySpan<byte> bytes) => to.Write(bytes);

    // Small numbers of either sign are short: 0, -1, 1, -2 are 0, 1, 2, 3.
    public void Whole(string name, long value) => to.Write7BitEncodedInt64((value << 1) ^ (value >> 63));

    public void OptionalWhole(string name, long? value)
    {
        to.Write(value.HasValue);
        if (value is { } number)
        {
            Whole(name, number);
        }
    }

    public void OptionalText(string name, string? value) => to.Write7BitEncodedInt(value is null ? 0 : texts.NumberOf(value));

    public void OptionalFlag(string name, bool? value) => to.Write((byte)(value switch { null => 0, false => 1, true => 2 }));

    public void OptionalDate(string name, LocalDate? value) => to.Write7BitEncodedInt(value is { } date ? PackedDate.Of(date) : 0);

    public void OptionalNotes(string name, Notes? value)
    {
        to.Write7BitEncodedInt(value is null ? 0 : value.Count() + 1);
        foreach ((long note, int count) in value ?? Notes.None)
        {
            Whole(name, note);
            Whole(name, count);
        }
    }

    public void Texts(string name, IReadOnlyCollection<string> value) => OptionalList(name, value, static (item, text) => item.Text("", text));

    public void OptionalList<T>(string name, IReadOnlyCollection<T>? items, Action<IFieldWriter, T> write)
    {
        to.Write7BitEncodedInt(items is null ? 0 : items.Count + 1);
        foreach (T item in items ?? [])
        {
            write(this, item);
        }
    }

    public void OptionalPart<T>(string name, T? part, Action<IFieldWriter, T> write)
        where T : class
    {
        to.Write(part is not null);
        if (part is not null)
        {
            write(this, part);
        }
    }

    public void Derived(string name, string value)
    {
    }
}
