using Payday.Core.Amounts;

namespace Payday.Statements.Texts;

/// <summary>What stands beside the digits of an amount.</summary>
internal static class AmountSigns
{
    // What may stand beside the digits: a currency's sign or code, such as R$, kr, EUR.
    private const int MostLetters = 4;

    private static readonly string[] WrittenCurrencies = ["kr", "z\u0142", "K\u010D", "Ft", "Fr", "SFr", "Rs", "R", "lei"];

    /// <summary>Takes signs, brackets and currencies off both ends, in any order; each sign once.</summary>
    /// <param name="text">The amount; afterwards the digits and marks alone.</param>
    /// <param name="negative">Whether it is below zero.</param>
    /// <param name="signed">Whether it has a sign, so that another is one too many.</param>
    /// <returns>Whether nothing else stands there.</returns>
    public static bool Take(ref ReadOnlySpan<char> text, ref bool negative, ref bool signed)
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
