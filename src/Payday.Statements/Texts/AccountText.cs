namespace Payday.Statements.Texts;

/// <summary>Account numbers in texts.</summary>
internal static class AccountText
{
    private const int ShortestIban = 15;
    private const int LongestIban = 34;

    /// <summary>The IBAN in a text, without blanks; empty for none. Its check digits must be right (ISO 13616, ISO 7064 mod 97-10).</summary>
    public static string FindIban(string text)
    {
        string plain = text.Replace(" ", "", StringComparison.Ordinal).Replace("\u00A0", "", StringComparison.Ordinal);
        for (int start = 0; start + ShortestIban <= plain.Length && start < LongestIban; start++)
        {
            if (!IsLetters(plain, start) || (start > 0 && char.IsAsciiLetterOrDigit(plain[start - 1]) && IsUpper(plain[start - 1])))
            {
                continue;
            }

            int end = start;
            while (end < plain.Length && end - start < LongestIban && char.IsAsciiLetterOrDigit(plain[end]))
            {
                end++;
            }

            if (end - start >= ShortestIban && IsIban(plain.AsSpan(start, end - start)))
            {
                return plain[start..end];
            }
        }

        return "";
    }

    private static bool IsLetters(string text, int at) =>
        IsUpper(text[at]) && IsUpper(text[at + 1]) && char.IsAsciiDigit(text[at + 2]) && char.IsAsciiDigit(text[at + 3]);

    private static bool IsUpper(char c) => char.IsAsciiLetterUpper(c);

    private static bool IsIban(ReadOnlySpan<char> iban)
    {
        int rest = 0;
        for (int i = 0; i < iban.Length; i++)
        {
            char c = char.ToUpperInvariant(iban[(i + 4) % iban.Length]);
            rest = char.IsAsciiDigit(c) ? ((rest * 10) + (c - '0')) % 97 : ((rest * 100) + (c - 'A' + 10)) % 97;
        }

        return rest == 1;
    }
}
