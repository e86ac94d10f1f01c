using Payday.Core.Books;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Taking;

/// <summary>Which of the person's rules a line falls under.</summary>
/// <remarks>A rule's words must all be there, whatever their case and marks; or they are its mandate or the other side's account. Of several rules the one with the most words counts, then the first in their order.</remarks>
public static class RuleMatch
{
    /// <summary>The rule of a line; null for none.</summary>
    public static StatementRule? Of(IEnumerable<StatementRule> rules, StatementLine line)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(line);
        HashSet<string> words = [.. WordsOf(line.Party + " " + line.Text)];
        return rules
            .Select(rule => (Rule: rule, Words: WordsOf(rule.Words)))
            .Where(pair => IsKnown(line, pair.Rule.Words) || (pair.Words.Count > 0 && pair.Words.TrueForAll(words.Contains)))
            .OrderByDescending(pair => IsKnown(line, pair.Rule.Words))
            .ThenByDescending(pair => pair.Words.Count)
            .Select(pair => pair.Rule)
            .FirstOrDefault();
    }

    /// <summary>The words that a rule for lines like this one would have: its party's, or else those of its text.</summary>
    public static string Suggested(StatementLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        List<string> words = LineWords.Of(line.Party.Length > 0 ? line.Party : line.Text);
        return string.Join(' ', words.Take(3)).ToLowerInvariant();
    }

    private static bool IsKnown(StatementLine line, string words) =>
        words.Length > 0 && (string.Equals(words, line.Mandate, StringComparison.OrdinalIgnoreCase) || string.Equals(words, line.PartyAccount, StringComparison.OrdinalIgnoreCase));

    // All words, those of banks too: the person chose them.
    private static List<string> WordsOf(string text)
    {
        var words = new List<string>();
        int start = -1;
        for (int i = 0; i <= text.Length; i++)
        {
            bool isPart = i < text.Length && (char.IsLetterOrDigit(text[i]) || (text[i] == '\'' && start >= 0));
            if (isPart)
            {
                start = start < 0 ? i : start;
            }
            else if (start >= 0)
            {
                words.Add(Folding.Fold(text[start..i]));
                start = -1;
            }
        }

        return words;
    }
}
