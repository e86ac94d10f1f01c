using System.Buffers;
using Payday.Core.Amounts;

namespace Payday.Statements.Texts;

/// <summary>Reads an amount as banks write it.</summary>
internal static class AmountText
{
    // Longer texts are descriptions.
    private const int Longest = 40;

    // A hundred thousand millions of a currency with two decimals: sums of as many lines as are read still fit 64 bits.
    private const long Largest = 10_000_000_000_000;

    // What may stand beside the digits: a currency's sign or code, such as R$, kr, EUR.
    private const int MostLetters = 4;

    private static readonly string[] WrittenCurrencies = ["kr", "z\u0142", "K\u010D", "Ft", "Fr", "SFr", "Rs", "R", "lei"];

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
        if (!TakeBeside(ref text, ref negative, ref signed))
        {
            return AmountReading.Refused;
        }

        return Digits(text, mark, decimals, negative);
    }

    // Signs, brackets and currencies at both ends, in any order; each sign once.
    private static bool TakeBeside(ref ReadOnlySpan<char> text, ref bool negative, ref bool signed)
    {
        while (text.Length > 0 && !char.IsAsciiDigit(text[0]) && text[0] is not ('.' or ','))
        {
            if (IsMinus(text[0]) || text[0] is '+' or '(')
            {
                if (signed || (text[0] == '(' && text[^1] != ')'))
                {
                    return false;
                }

                signed = true;
                negative = text[0] != '+';
                text = text[0] == '(' ? text[1..^1].Trim() : text[1..].TrimStart();
                continue;
            }

            int letters = 0;
            while (letters < text.Length && IsOfACurrency(text[letters]))
            {
                letters++;
            }

            if (!IsCurrency(text[..letters]))
            {
                return false;
            }

            text = text[letters..].TrimStart();
        }

        return TakeBehind(ref text, ref negative, ref signed);
    }

    private static bool TakeBehind(ref ReadOnlySpan<char> text, ref bool negative, ref bool signed)
    {
        while (text.Length > 0 && !char.IsAsciiDigit(text[^1]) && text[^1] is not ('.' or ','))
        {
            if (IsMinus(text[^1]) || text[^1] == '+')
            {
                if (signed)
                {
                    return false;
                }

                signed = true;
                negative = text[^1] != '+';
                text = text[..^1].TrimEnd();
                continue;
            }

            int letters = 0;
            while (letters < text.Length && IsOfACurrency(text[^(letters + 1)]))
            {
                letters++;
            }

            ReadOnlySpan<char> word = text[^letters..];
            if (word.Equals("DR", StringComparison.OrdinalIgnoreCase) || word.Equals("CR", StringComparison.OrdinalIgnoreCase))
            {
                if (signed)
                {
                    return false;
                }

                signed = true;
                negative = char.ToUpperInvariant(word[0]) == 'D';
            }
            else if (!IsCurrency(word))
            {
                return false;
            }

            text = text[..^letters].TrimEnd();
        }

        return text.Length > 0;
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

    private static bool IsMinus(char c) => c is '-' or '\u2212' or '\u2013';

    // A code of ISO 4217, a sign with or without letters (R$, US$), or what is written for crowns, francs, rupees and the like.
    private static bool IsCurrency(ReadOnlySpan<char> word)
    {
        if (word.Length is 0 or > MostLetters)
        {
            return false;
        }

        foreach (char c in word)
        {
            if (!char.IsLetter(c))
            {
                return true;
            }
        }

        string code = word.ToString();
        return WrittenCurrencies.Contains(code, StringComparer.OrdinalIgnoreCase) || Currency.TryFromCode(code, out _);
    }

    private static bool IsOfACurrency(char c) => char.IsLetter(c) || char.GetUnicodeCategory(c) == System.Globalization.UnicodeCategory.CurrencySymbol;
}
