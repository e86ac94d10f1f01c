namespace Payday.Statements.Texts;

/// <summary>The words of a text that say who it is: folded, two letters or more, without figures.</summary>
/// <remarks>Card and terminal numbers, dates, times and references change from line to line, names don't.</remarks>
internal static class LineWords
{
    private const int MostWords = 12;

    // Common practice of banks' texts, no source.
    private static readonly HashSet<string> Idle = new(StringComparer.Ordinal)
    {
        "CARD", "PURCHASE", "PAYMENT", "POS", "DEBIT", "CREDIT", "DIRECT", "TRANSFER", "ONLINE", "BANK", "REF", "THE", "OF", "TO", "FROM", "AND", "FOR",
        "EUR", "USD", "GBP", "SEPA", "NR", "NO", "CO", "LTD", "INC", "LLC", "GMBH", "AB", "OY", "AS", "BV", "SA", "AM", "PM", "VISA", "CONTACTLESS",
    };

    /// <summary>Whether a word says how a bank moves money, not who it is for.</summary>
    public static bool IsIdle(string word) => Idle.Contains(Folding.Fold(word.Trim(':', '.', ',', '-', '*')));

    /// <summary>The words, each once, in order; at most twelve.</summary>
    public static List<string> Of(params ReadOnlySpan<string> texts)
    {
        var words = new List<string>();
        foreach (string text in texts)
        {
            int start = -1;
            bool hasFigures = false;
            for (int i = 0; i <= text.Length && words.Count < MostWords; i++)
            {
                char c = i < text.Length ? text[i] : ' ';
                if (char.IsLetterOrDigit(c) || (c is '\'' && start >= 0))
                {
                    start = start < 0 ? i : start;
                    hasFigures |= char.IsDigit(c);
                    continue;
                }

                if (start >= 0 && i - start >= 2 && !hasFigures)
                {
                    string word = Folding.Fold(text[start..i]);
                    if (!Idle.Contains(word) && !words.Contains(word))
                    {
                        words.Add(word);
                    }
                }

                start = -1;
                hasFigures = false;
            }
        }

        return words;
    }
}
