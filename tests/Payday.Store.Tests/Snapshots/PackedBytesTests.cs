using CsCheck;
using Payday.Store.Fields;

namespace Payday.Store.Tests.Snapshots;

/// <summary>What the library's writer wrote is read as the library's own reader reads it.</summary>
public sealed class PackedBytesTests
{
    [Fact]
    public void Everything_Written_ReadsBack() => Gen.Select(Gen.Long, Gen.Int[0, int.MaxValue], Gen.String, Gen.Byte.Array[0, 40]).Array[0, 9].Sample(items =>
    {
        using var bytes = new MemoryStream();
        var writer = new BinaryWriter(bytes);
        foreach ((long number, int count, string text, byte[] raw) in items)
        {
            writer.Write7BitEncodedInt64(number);
            writer.Write7BitEncodedInt(count);
            writer.Write(text);
            writer.Write7BitEncodedInt(raw.Length);
            writer.Write(raw);
        }

        var packed = new PackedBytes(bytes.ToArray(), 0);
        var reader = new BinaryReader(new MemoryStream(bytes.ToArray()));
        foreach ((long number, int count, string _, byte[] raw) in items)
        {
            Assert.Equal(number, packed.Number());
            Assert.Equal(count, packed.Count());
            Assert.Equal((reader.Read7BitEncodedInt64(), reader.Read7BitEncodedInt()), (number, count));
            Assert.Equal(reader.ReadString(), packed.Text());
            Assert.Equal(raw, packed.Span(packed.Count()));
            Assert.Equal(raw, reader.ReadBytes(reader.Read7BitEncodedInt()));
        }

        Assert.Equal(bytes.Length, packed.Position);
    });

    [Fact]
    public void Number_CutShort_Throws() => Assert.Throws<IndexOutOfRangeException>(() => new PackedBytes([0x80], 0).Number());

    [Fact]
    public void Count_BeyondItsRange_Throws() => Assert.Throws<OverflowException>(() => new PackedBytes([0xFF, 0xFF, 0xFF, 0xFF, 0x7F], 0).Count());

    [Fact]
    public void Text_LongerThanTheBytes_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => new PackedBytes([5, 65], 0).Text());
}
