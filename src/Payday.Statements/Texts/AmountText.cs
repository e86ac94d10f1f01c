using System.Buffers;

namespace Payday.Statements.Texts;

/// <summary>Reads an amount as banks write it.</summary>
internal static class AmountText
{
    // Longer texts are descriptions.
    private const int Longest = 40;

    // A hundred thousand millions of a currency with two decimals: sums of as many lines as are read still fit 64 bits.
    private const long Largest = 10_000_000_000_000;

    private static readonly SearchValues<char> Groups = SearchValues.Create(".,'\u2019\u00B4 \u00A0\u202F\u2009");

    /// <summary>The decimal mark of an amount by itself: the last mark, where it stands once.</summary>
    /// <remarks>For formats without group marks: one mark alone is the decimal mark, one that repeats isn't.</remarks>
    public static char MarkOf(ReadOnlySpan<char> text)
    {
        int at = text.LastIndexOfAny('.', ',');
        return at >= 0 && text.Count(text[at]) == 1 ? text[at] : at >= 0 && text[at] == '.' ? ',' : '.';
    }

    /// <summary>Reads an amount.</summary>
    /// <param name="text">
    /// Digits, group marks before groups of three (of two in Indian amounts), a sign before or behind or brackets for below zero,
    /// a currency beside it, <c>CR</c> or <c>DR</c> behind it.
    /// </param>
    /// <param name="mark">The decimal mark, a point or a comma.</param>
    /// <param name="decimals">How many the currency has. Further ones must be zeros.</param>
    public static AmountReading Read(ReadOnlySpan<char> text, char mark, int decimals)
    {
        text = text.Trim();
        if (text.IsEmpty)
        {
            return AmountReading.Missing;
        }

        if (text.Length > Longest)
        {
            return AmountReading.Refused;
        }

        bool negative = false;
        bool signed = false;
        if (!AmountSigns.Take(ref text, ref negative, ref signed))
        {
            return AmountReading.Refused;
        }

        return Digits(text, mark, decimals, negative);
    }

    private static AmountReading Digits(ReadOnlySpan<char> text, char mark, int decimals, bool negative)
    {
        int point = text.LastIndexOf(mark);
        ReadOnlySpan<char> whole = point < 0 ? text : text[..point];
        ReadOnlySpan<char> fraction = point < 0 ? [] : text[(point + 1)..];
        if ((whole.IsEmpty && fraction.IsEmpty) || fraction.ContainsAnyExceptInRange('0', '9'))
        {
            return AmountReading.Refused;
        }

        Int128 minor = 0;
        int sinceGroup = -1;
        foreach (char c in whole)
        {
            if (char.IsAsciiDigit(c))
            {
                minor = (minor * 10) + (c - '0');
                sinceGroup += sinceGroup >= 0 ? 1 : 0;
            }
            else if (c != mark && Groups.Contains(c) && sinceGroup is -1 or 2 or 3)
            {
                sinceGroup = 0;
            }
            else
            {
                return AmountReading.Refused;
            }
        }

        if (sinceGroup >= 0 && sinceGroup != 3)
        {
            return AmountReading.Refused;
        }

        for (int i = 0; i < decimals; i++)
        {
            minor = (minor * 10) + (i < fraction.Length ? fraction[i] - '0' : 0);
        }

        if (fraction.Length > decimals && fraction[decimals..].ContainsAnyExcept('0'))
        {
            return AmountReading.Precise;
        }

        return minor > Largest ? AmountReading.Refused : AmountReading.Of((long)(negative ? -minor : minor));
    }
}
