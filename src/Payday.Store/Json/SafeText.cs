using System.Globalization;
using System.Text;

namespace Payday.Store.Json;

/// <summary>Keeps text from a file harmless where it is shown: in a terminal, on a slip, in a sentence.</summary>
/// <remarks>
/// Harmful are control characters (they can drive a terminal), line and paragraph separators, and
/// characters that can't be seen but change what is seen, such as the bidirectional overrides.
/// The joiners U+200C and U+200D are let through: scripts and emoji need them.
/// </remarks>
public static class SafeText
{
    private const int LongestShown = 40;

    /// <summary>The first harmful character, or null.</summary>
    public static Rune? FirstHarmful(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (IsHarmful(rune))
            {
                return rune;
            }
        }

        return null;
    }

    /// <summary>The text with <c>?</c> for what is harmful, cut with an ellipsis after 40 characters.</summary>
    public static string Shown(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length <= LongestShown && FirstHarmful(text) is null)
        {
            return text;
        }

        var shown = new StringBuilder();
        int count = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (++count > LongestShown)
            {
                return shown.Append('…').ToString();
            }

            shown.Append(IsHarmful(rune) ? "?" : rune.ToString());
        }

        return shown.ToString();
    }

    private static bool IsHarmful(Rune rune) =>
        Rune.GetUnicodeCategory(rune) switch
        {
            UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => true,
            UnicodeCategory.Format => rune.Value is not (0x200C or 0x200D),
            _ => false,
        };
}
