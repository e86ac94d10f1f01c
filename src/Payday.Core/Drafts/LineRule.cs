using System.Globalization;
using System.Text;

namespace Payday.Core.Drafts;

/// <summary>Which texts can be shown anywhere: in a terminal, on a slip, in a sentence.</summary>
/// <remarks>
/// Harmful are control characters (they can drive a terminal), line and paragraph separators, and
/// characters that can't be seen but change what is seen, such as the bidirectional overrides.
/// The joiners U+200C and U+200D are let through: scripts and emoji need them.
/// </remarks>
public static class LineRule
{
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

    /// <summary>Whether a character is harmful.</summary>
    public static bool IsHarmful(Rune rune) =>
        Rune.GetUnicodeCategory(rune) switch
        {
            UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => true,
            UnicodeCategory.Format => rune.Value is not (0x200C or 0x200D),
            _ => false,
        };

    /// <summary>What is wrong with a line of text, or null.</summary>
    /// <param name="text">The text, without blanks around it.</param>
    /// <param name="longest">The most characters (Unicode scalar values); the least is 1.</param>
    /// <param name="place">Where it stands.</param>
    internal static DraftFault? Fault(string text, int longest, DraftPlace place)
    {
        int length = text.EnumerateRunes().Count();
        return length == 0 ? new DraftFault.TextEmpty(place)
            : length > longest ? new DraftFault.TextTooLong(place, length, longest)
            : FirstHarmful(text) is { } rune ? new DraftFault.TextUnshowable(place, rune.Value)
            : null;
    }
}
