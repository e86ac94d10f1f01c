using System.Text;

namespace Payday.Statements.Texts;

/// <summary>Bytes to text, whatever the file claims about its encoding.</summary>
/// <remarks>
/// In order: a byte order mark; zeros in every other byte (UTF-16 without a mark); strict UTF-8; else Windows-1252, which any
/// bytes are. What a file declares is often wrong, and ASCII is all of them, so it isn't asked.
/// </remarks>
internal static class TextDecoder
{
    private const int Sample = 4096;

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    // 0x80 to 0x9F as the table of Windows-1252 has them (WHATWG Encoding, index-windows-1252); the rest is Latin-1.
    private const string HighControls = "\u20AC\u0081\u201A\u0192\u201E\u2026\u2020\u2021\u02C6\u2030\u0160\u2039\u0152\u008D\u017D\u008F"
        + "\u0090\u2018\u2019\u201C\u201D\u2022\u2013\u2014\u02DC\u2122\u0161\u203A\u0153\u009D\u017E\u0178";

    /// <summary>The text, without a byte order mark.</summary>
    public static string Decode(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
        {
            bytes = bytes[3..];
        }
        else if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]))
        {
            return Encoding.Unicode.GetString(bytes[2..]);
        }
        else if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
        {
            return Encoding.BigEndianUnicode.GetString(bytes[2..]);
        }
        else if (Utf16Of(bytes) is { } utf16)
        {
            return utf16.GetString(bytes);
        }

        return IsUtf8(bytes) ? StrictUtf8.GetString(bytes) : FromWindows1252(bytes);
    }

    private static bool IsUtf8(ReadOnlySpan<byte> bytes) => System.Text.Unicode.Utf8.IsValid(bytes);

    private static UnicodeEncoding? Utf16Of(ReadOnlySpan<byte> bytes)
    {
        ReadOnlySpan<byte> sample = bytes[..Math.Min(bytes.Length, Sample)];
        int even = 0;
        int odd = 0;
        for (int i = 0; i < sample.Length; i++)
        {
            if (sample[i] == 0)
            {
                _ = i % 2 == 0 ? even++ : odd++;
            }
        }

        // Statements are mostly ASCII, so one byte of each pair is mostly zero.
        int pairs = sample.Length / 2;
        return pairs < 2 ? null
            : odd * 2 > pairs && even == 0 ? new UnicodeEncoding(bigEndian: false, byteOrderMark: false)
            : even * 2 > pairs && odd == 0 ? new UnicodeEncoding(bigEndian: true, byteOrderMark: false)
            : null;
    }

    private static string FromWindows1252(ReadOnlySpan<byte> bytes) => string.Create(bytes.Length, bytes, static (chars, source) =>
    {
        for (int i = 0; i < source.Length; i++)
        {
            chars[i] = source[i] is >= 0x80 and <= 0x9F ? HighControls[source[i] - 0x80] : (char)source[i];
        }
    });
}
