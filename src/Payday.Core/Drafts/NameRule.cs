using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace Payday.Core.Drafts;

/// <summary>Which names a source, bill, debt or pot may have: one that can be seen whole, and that Payday doesn't give to something else.</summary>
/// <remarks>
/// What can't be seen is Unicode's Default_Ignorable_Code_Point (DerivedCoreProperties.txt, from memory), the blanks
/// that are no white space, and all that <see cref="LineRule"/> finds harmful: two names must not differ in that alone.
/// The joiners U+200C and U+200D, and the variation selectors U+FE0E and U+FE0F, are let through where scripts and emoji
/// need them: right behind a letter or sign beyond ASCII, a joiner also before one.
/// </remarks>
internal static class NameRule
{
    // Where money of a household can be, and stand in a list beside bills, debts and pots.
    private static readonly FrozenSet<string> Purposes = Words("buffer", "kept back", "owed back", "not in notes", "to pay back", "left to place");

    // What stands in a list beside pots alone; a debt may well be an overdraft.
    private static readonly FrozenSet<string> BesidePots = Words("overdraft", "wallet", "loose notes", "set aside");

    /// <summary>What is wrong with the name of an item, or null.</summary>
    /// <param name="name">A line of text that is not empty.</param>
    /// <param name="isPot">Whether a pot is to have it.</param>
    /// <param name="place">Where it stands.</param>
    public static DraftFault? Fault(string name, bool isPot, DraftPlace place) => Unseen(name, place)
        ?? (Purposes.Contains(Plain(name)) || (isPot && BesidePots.Contains(Plain(name))) ? new DraftFault.NameReserved(place, name) : null);

    /// <summary>That a name can't be seen whole, or null.</summary>
    /// <inheritdoc cref="Fault"/>
    public static DraftFault? Unseen(string name, DraftPlace place)
    {
        Rune[] runes = [.. name.EnumerateRunes()];
        int at = Enumerable.Range(0, runes.Length).FirstOrDefault(i => IsUnseen(runes[i]) && !IsNeeded(runes, i), -1);
        return at < 0 ? null : new DraftFault.NameUnseen(place, runes[at].Value);
    }

    private static FrozenSet<string> Words(params string[] words) => words.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    // Words as they are read, however they are spaced and joined.
    private static string Plain(string name) => string.Join(' ', name.Split([' ', '\u00A0', '-', '_'], StringSplitOptions.RemoveEmptyEntries));

    private static bool IsNeeded(Rune[] runes, int at) => runes[at].Value switch
    {
        0xFE0E or 0xFE0F => at > 0 && !IsUnseen(runes[at - 1]),
        0x200C or 0x200D => at > 0 && at < runes.Length - 1 && IsBeyondAscii(runes[at + 1])
            && (IsBeyondAscii(runes[at - 1]) || (at > 1 && runes[at - 1].Value is 0xFE0E or 0xFE0F)),
        _ => false,
    };

    private static bool IsBeyondAscii(Rune rune) => !rune.IsAscii && !IsUnseen(rune) && !Rune.IsWhiteSpace(rune);

    private static bool IsUnseen(Rune rune) => Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format
            or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        || rune.Value is 0x034F or (>= 0x115F and <= 0x1160) or (>= 0x17B4 and <= 0x17B5) or (>= 0x180B and <= 0x180F) or 0x2800
            or 0x3164 or (>= 0xFE00 and <= 0xFE0F) or 0xFFA0 or (>= 0xFFF0 and <= 0xFFFB) or (>= 0xE0000 and <= 0xE0FFF);
}
