using Org.BouncyCastle.Crypto.Digests;

namespace Payday.Store.Hashing;

/// <summary>SHA-256 (FIPS 180-4) in managed code.</summary>
/// <remarks>
/// On Linux the SHA-256 of .NET is OpenSSL's: it ends the process at once, without an exception, where that library is
/// missing. It is the same function, so what was hashed with it stays as it is.
/// </remarks>
internal static class Sha256
{
    /// <summary>How many bytes a hash has.</summary>
    public const int Length = 32;

    /// <summary>The hash of some bytes.</summary>
    public static byte[] Of(ReadOnlySpan<byte> bytes)
    {
        byte[] hash = new byte[Length];
        Write(bytes, hash);
        return hash;
    }

    /// <summary>Writes the hash of some bytes to the first <see cref="Length"/> bytes of a span.</summary>
    public static void Write(ReadOnlySpan<byte> bytes, Span<byte> to)
    {
        var digest = new Sha256Digest();
        digest.BlockUpdate(bytes);
        digest.DoFinal(to);
    }
}
