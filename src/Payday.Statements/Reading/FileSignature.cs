namespace Payday.Statements.Reading;

/// <summary>Files that are no text, known by their first bytes.</summary>
internal static class FileSignature
{
    /// <summary>What the file is, with its article; null for anything that may be a text.</summary>
    public static string? NameOf(ReadOnlySpan<byte> bytes)
    {
        // The published signatures: ISO 32000 7.5.2 (PDF), APPNOTE.TXT 4.3.7 (ZIP), MS-CFB 2.2, RFC 1952 2.3.1 (gzip), PNG 5.2, JPEG B.1.
        if (bytes.StartsWith("%PDF-"u8))
        {
            return "a PDF";
        }

        if (bytes.StartsWith("PK\x03\x04"u8) || bytes.StartsWith("PK\x05\x06"u8))
        {
            return "a spreadsheet or a packed file";
        }

        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0]))
        {
            return "a spreadsheet";
        }

        if (bytes.StartsWith((ReadOnlySpan<byte>)[0x1F, 0x8B]))
        {
            return "a packed file";
        }

        return bytes.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G']) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])
            ? "a picture"
            : null;
    }
}
