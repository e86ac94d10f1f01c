using System.Globalization;
using System.Text;

namespace Payday.Text;

/// <summary>Makes text from outside safe to show: one line that holds nothing a terminal, printer or PDF would obey.</summary>
internal static class CleanText
{
    private const int ZeroWidthNonJoiner = 0x200C;
    private const int ZeroWidthJoiner = 0x200D;

    /// <summary>The text as one harmless line.</summary>
    /// <param name="text">Anything; null is taken as empty.</param>
    /// <returns>
    /// Line breaks of every kind and tabs become a blank. Other control characters (C0, DEL, C1, so also
    /// ESC), code points that are no characters, and broken surrogates become <c>?</c>. Invisible format
    /// characters (bidirectional overrides and isolates, zero-width blanks, soft hyphens, tags) are dropped;
    /// only the two joiners stay, which emoji and several scripts are written with. Cleaning twice changes nothing.
    /// </returns>
    public static string OneLine(string? text)
    {
        if (string.IsNullOrEmpty(text) || !text.AsSpan().ContainsAnyExceptInRange(' ', '~'))
        {
            return text ?? "";
        }

        var clean = new StringBuilder(text.Length);
        Rune before = default;
        foreach (Rune rune in text.EnumerateRunes())
        {
            bool secondOfPair = before.Value == '\r' && rune.Value == '\n';
            if (!secondOfPair)
            {
                Append(clean, rune);
            }

            before = rune;
        }

        return clean.ToString();
    }

    private static void Append(StringBuilder clean, Rune rune)
    {
        switch (Rune.GetUnicodeCategory(rune))
        {
            case UnicodeCategory.Control:
                clean.Append(Rune.IsWhiteSpace(rune) ? ' ' : '?');
                break;
            case UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator:
                clean.Append(' ');
                break;
            case UnicodeCategory.Format:
                if (rune.Value is ZeroWidthJoiner or ZeroWidthNonJoiner)
                {
                    clean.Append((char)rune.Value);
                }

                break;
            default:
                clean.Append(IsNoCharacter(rune) ? "?" : rune.ToString());
                break;
        }
    }

    // U+FFFD is what the enumeration gives for half a surrogate pair.
    private static bool IsNoCharacter(Rune rune) =>
        rune == Rune.ReplacementChar || rune.Value is >= 0xFDD0 and <= 0xFDEF || (rune.Value & 0xFFFE) == 0xFFFE;
}
