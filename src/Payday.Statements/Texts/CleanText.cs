using System.Globalization;
using System.Text;

namespace Payday.Statements.Texts;

/// <summary>Makes outside text fit for a terminal, a printer and a spreadsheet.</summary>
internal static class CleanText
{
    /// <summary>
    /// The text in one line: control, format and private characters and halves of surrogate pairs are gone, each run of blanks
    /// and line breaks is one blank, none stands at either end, and it has at most <see cref="ReadingLimits.MostText"/> characters.
    /// </summary>
    public static string Of(string? text) => Of(text, ReadingLimits.MostText);

    /// <summary>A text to be repeated in a fault, cut to <see cref="ReadingLimits.MostEcho"/> characters.</summary>
    public static string Echo(string? text) => Of(text, ReadingLimits.MostEcho);

    /// <summary>Texts joined by a blank, empty ones and repeated ones left out.</summary>
    public static string Join(params IEnumerable<string?> texts) =>
        Of(string.Join(' ', texts.Select(text => Of(text)).Where(text => text.Length > 0).Distinct(StringComparer.Ordinal)));

    private static string Of(string? text, int most)
    {
        if (string.IsNullOrEmpty(text))
        {
            return "";
        }

        if (text.Length <= most && IsClean(text))
        {
            return text;
        }

        var clean = new StringBuilder(Math.Min(text.Length, most));
        bool blank = false;
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (IsBlank(rune))
            {
                blank = clean.Length > 0;
                continue;
            }

            if (!IsShown(rune))
            {
                continue;
            }

            if (clean.Length + (blank ? 1 : 0) + rune.Utf16SequenceLength > most)
            {
                break;
            }

            clean.Append(blank ? " " : "").Append(rune.ToString());
            blank = false;
        }

        return clean.ToString();
    }

    // Nearly all texts are plain and in order: they are passed on as they are.
    private static bool IsClean(string text)
    {
        bool blank = true;
        foreach (char c in text)
        {
            bool isBlank = c == ' ';
            if (c is < ' ' or > '~' || (isBlank && blank))
            {
                return false;
            }

            blank = isBlank;
        }

        return !blank;
    }

    private static bool IsBlank(Rune rune) => Rune.IsWhiteSpace(rune) || rune.Value is '\u0085' or '\u2028' or '\u2029';

    // A broken half of a pair comes out of the enumeration as U+FFFD, which is shown as such: something was there.
    private static bool IsShown(Rune rune) => Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format
        or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned);
}
