using System.Buffers.Binary;
using System.Globalization;
using LiteDB;
using Payday.Store.Hashing;

namespace Payday.Store.Edits;

/// <summary>A digest over a set of documents, kept up as single ones come and go.</summary>
/// <remarks>
/// The sum, in four lanes of 64 bits, of the SHA-256 of each document with its collection. It doesn't depend on the
/// order, so a change costs as much as the documents that it touches; the default is that of no documents.
/// It finds damage, not malice: who can write the files can write a fitting digest.
/// </remarks>
internal readonly record struct Digest(ulong A, ulong B, ulong C, ulong D)
{
    /// <summary>How many bytes it takes.</summary>
    public const int Length = 32;

    private const int LaneDigits = 16;

    /// <summary>That of a document alone.</summary>
    public static Digest Of(string collection, BsonDocument document)
    {
        Span<byte> hash = stackalloc byte[Sha256.Length];
        Sha256.Write(DocumentJson.Utf8(collection, document), hash);
        return From(hash);
    }

    /// <summary>The digest of both sets.</summary>
    public static Digest operator +(Digest left, Digest right) =>
        unchecked(new(left.A + right.A, left.B + right.B, left.C + right.C, left.D + right.D));

    /// <summary>The digest without some of the documents.</summary>
    public static Digest operator -(Digest left, Digest right) =>
        unchecked(new(left.A - right.A, left.B - right.B, left.C - right.C, left.D - right.D));

    /// <summary>Reads what <see cref="CopyTo"/> writes.</summary>
    public static Digest From(ReadOnlySpan<byte> bytes) => new(Lane(bytes), Lane(bytes[8..]), Lane(bytes[16..]), Lane(bytes[24..]));

    /// <summary>Reads many that <see cref="CopyTo"/> wrote one behind the other.</summary>
    public static void CopyAll(ReadOnlySpan<byte> bytes, Span<Digest> to)
    {
        for (int i = 0; i < to.Length; i++)
        {
            to[i] = From(bytes[(i * Length)..]);
        }
    }

    /// <summary>Reads what <see cref="ToString"/> writes.</summary>
    public static bool TryParse(string? text, out Digest digest)
    {
        digest = default;
        if (text?.Length != LaneDigits * 4
            || !Lane(text, 0, out ulong a) || !Lane(text, 1, out ulong b) || !Lane(text, 2, out ulong c) || !Lane(text, 3, out ulong d))
        {
            return false;
        }

        digest = new Digest(a, b, c, d);
        return true;
    }

    /// <summary>Writes it as <see cref="Length"/> bytes.</summary>
    public void CopyTo(Span<byte> bytes)
    {
        BinaryPrimitives.WriteUInt64BigEndian(bytes, A);
        BinaryPrimitives.WriteUInt64BigEndian(bytes[8..], B);
        BinaryPrimitives.WriteUInt64BigEndian(bytes[16..], C);
        BinaryPrimitives.WriteUInt64BigEndian(bytes[24..], D);
    }

    /// <summary>64 hexadecimal digits.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{A:x16}{B:x16}{C:x16}{D:x16}");

    private static ulong Lane(ReadOnlySpan<byte> hash) => BinaryPrimitives.ReadUInt64BigEndian(hash);

    private static bool Lane(string text, int lane, out ulong value) =>
        ulong.TryParse(text.AsSpan(lane * LaneDigits, LaneDigits), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out value);
}
