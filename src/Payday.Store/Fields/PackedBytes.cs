using System.Text;
using Payday.Core.Ledgers;

namespace Payday.Store.Fields;

/// <summary>A place in bytes that a <see cref="BinaryWriter"/> wrote, which goes on with what is read.</summary>
/// <remarks>
/// It is here for its speed: a <see cref="BinaryReader"/> asks its stream for each byte, and of the time it took to
/// open a store of 30 years that was the larger part.
/// </remarks>
/// <param name="bytes">The bytes.</param>
/// <param name="position">Where to begin.</param>
internal sealed class PackedBytes(byte[] bytes, int position)
{
    private const int BitsEach = 7;
    private const int More = 1 << BitsEach;

    /// <summary>Where it is.</summary>
    public int Position { get; private set; } = position;

    /// <summary>One byte.</summary>
    /// <exception cref="IndexOutOfRangeException">There are no more; as with all that is read here.</exception>
    public byte Byte() => bytes[Position++];

    /// <summary>What <see cref="BinaryWriter.Write7BitEncodedInt64"/> wrote, or that of 32 bits where not below zero.</summary>
    public long Number()
    {
        long read = bytes[Position++];
        if (read < More)
        {
            return read;
        }

        long number = read & (More - 1);
        for (int shift = BitsEach; ; shift += BitsEach)
        {
            read = bytes[Position++];
            number |= (read & (More - 1)) << shift;
            if (read < More)
            {
                return number;
            }
        }
    }

    /// <summary>The same, where it is a count or the number of something.</summary>
    /// <exception cref="OverflowException">It is none.</exception>
    public int Count() => checked((int)Number());

    /// <summary>The same, where so many things follow: no more than there are bytes left, and one for those that count from 1, so that a wrong one takes no memory.</summary>
    /// <exception cref="FormatException">They can't follow.</exception>
    public int CountOfItems() => Count() is >= 0 and var count && count <= bytes.Length - Position + 1
        ? count
        : throw new FormatException("A count is larger than what is left.");

    /// <summary>What <see cref="BinaryWriter.Write(string)"/> wrote.</summary>
    public string Text() => Encoding.UTF8.GetString(Span(Count()));

    /// <summary>Many texts with their count before them; each is made when it is looked at.</summary>
    public IReadOnlyList<string> Texts()
    {
        int[] begins = Begins();
        return new MadeList<string>(begins.Length, at => TextAt(begins[at]));
    }

    /// <summary>Where pieces begin that have their count before them and each its length; they are passed over.</summary>
    public int[] Begins()
    {
        int[] begins = new int[CountOfItems()];
        for (int i = 0; i < begins.Length; i++)
        {
            begins[i] = Position;
            Span(Count());
        }

        return begins;
    }

    // Without another place for each: there are many.
    private string TextAt(int place)
    {
        int length = 0;
        int shift = 0;
        byte read;
        do
        {
            read = bytes[place++];
            length |= (read & (More - 1)) << shift;
            shift += BitsEach;
        }
        while (read >= More);

        return Encoding.UTF8.GetString(bytes, place, length);
    }

    /// <summary>Another place in the same bytes.</summary>
    public PackedBytes At(int place) => new(bytes, place);

    /// <summary>Goes to a place.</summary>
    public void GoTo(int place) => Position = place;

    /// <summary>Bytes as they are, for later too.</summary>
    public ReadOnlyMemory<byte> Memory(int length)
    {
        ReadOnlyMemory<byte> memory = bytes.AsMemory(Position, length);
        Position += length;
        return memory;
    }

    /// <summary>Bytes as they are.</summary>
    public ReadOnlySpan<byte> Span(int length)
    {
        ReadOnlySpan<byte> span = bytes.AsSpan(Position, length);
        Position += length;
        return span;
    }
}
