using System.Numerics;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Matching;

/// <summary>How much two texts have in common, words that few lines have counting more.</summary>
/// <remarks>The weight by inverse frequency of Cohen, Ravikumar and Fienberg (2003), in whole numbers: 1 + log2(lines / lines with the word), rounded down.</remarks>
internal sealed class WordRarity
{
    private readonly Dictionary<string, int> counts = new(StringComparer.Ordinal);
    private readonly int lines;

    /// <summary>Counts the words of the lines.</summary>
    public WordRarity(IEnumerable<IReadOnlyList<string>> texts)
    {
        foreach (IReadOnlyList<string> words in texts)
        {
            lines++;
            foreach (string word in words)
            {
                counts[word] = counts.GetValueOrDefault(word) + 1;
            }
        }
    }

    /// <summary>The words of a statement line.</summary>
    public static List<string> WordsOf(StatementLine line) => LineWords.Of(line.Party, line.Text);

    /// <summary>0 to 100: what part of the lighter text's weight both have.</summary>
    public int Overlap(IReadOnlyList<string> one, IReadOnlyList<string> other)
    {
        int common = 0;
        int first = 0;
        int second = 0;
        foreach (string word in one)
        {
            first += Weight(word);
            common += Contains(other, word) ? Weight(word) : 0;
        }

        foreach (string word in other)
        {
            second += Weight(word);
        }

        int lighter = Math.Min(first, second);
        return lighter == 0 ? 0 : 100 * common / lighter;
    }

    private int Weight(string word) => 1 + BitOperations.Log2((uint)Math.Max(1, lines / Math.Max(1, counts.GetValueOrDefault(word))));

    private static bool Contains(IReadOnlyList<string> words, string word)
    {
        for (int i = 0; i < words.Count; i++)
        {
            if (words[i] == word)
            {
                return true;
            }
        }

        return false;
    }
}
