using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Faults;

namespace Payday.Core.ItemLines;

/// <summary>A line parted into name, amount and the words behind it.</summary>
/// <remarks>The name is what stands before the first amount behind which all can be read.</remarks>
internal static class SplitLine
{
    /// <summary>What stands between a ladder's first and last step: <c>1..20</c>.</summary>
    public const string Steps = "..";

    /// <summary>Reads an item where a name, an amount and words that are understood to their end stand.</summary>
    /// <param name="line">The line.</param>
    /// <param name="facts">The household.</param>
    /// <param name="read">Makes the item of name, amount and the words behind it; those it doesn't take it leaves.</param>
    public static Result<T> Read<T>(string line, LineFacts facts, Func<string, decimal, LineWords, T> read)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(facts);
        (string? quoted, string rest) = Quoted(line);
        ImmutableArray<string> words = Words(rest, facts, typeof(T) == typeof(PotDraft));
        int first = quoted is null ? 1 : 0;
        int last = quoted is null ? words.Length : Math.Min(1, words.Length);
        LineWords? unread = null;
        int change = Enumerable.Range(1, words.Length).FirstOrDefault(at => LineChanges.BeginsWithAChange(Plain(words.Skip(at)), facts), words.Length);
        for (int at = first; at < last; at++)
        {
            // What an amount changes to is in no name, where another amount stands before it.
            if (change < at || (change == at && unread is not null))
            {
                break;
            }

            Result<Money> amount = LineFigures.AmountOf(Word(words[at]), facts);
            if (!amount.Ok)
            {
                continue;
            }

            int cut = ChangesAt(words, at + 1, facts);
            var behind = new LineWords(Plain(words[(at + 1)..cut]), Plain(words[cut..]), facts);
            T item = read(quoted ?? Word(string.Join(' ', words[..at])), amount.Value.ToDecimal(), behind);
            if (behind.IsRead)
            {
                return behind.Doubt is { } doubt ? Result.Refused<T>(new LineFault.TwoWays(line.Trim(), doubt.Part, doubt.One, doubt.Other)) : Result.Of(item);
            }

            unread ??= behind;
        }

        return Result.Refused<T>(unread is { } left ? new LineFault.RestUnread(line.Trim(), left.Rest) : new LineFault.NoAmount(line.Trim()));
    }

    /// <summary>A name in quotes, which may hold anything, and what stands behind it; a quote in it is written twice. Null and the line where there is none.</summary>
    public static (string? Name, string Behind) Quoted(string line)
    {
        string text = line.TrimStart();
        if (!text.StartsWith('"'))
        {
            return (null, line);
        }

        for (int at = 1; at < text.Length; at++)
        {
            if (text[at] != '"')
            {
                continue;
            }

            if (at + 1 < text.Length && text[at + 1] == '"')
            {
                at++;
                continue;
            }

            return at == 1 ? (null, line) : (text[1..at].Replace("\"\"", "\"", StringComparison.Ordinal), text[(at + 1)..]);
        }

        return (null, line);
    }

    private static ImmutableArray<string> Words(string text, LineFacts facts, bool hasSteps)
    {
        var words = ImmutableArray.CreateBuilder<string>();
        foreach (string word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            int steps = hasSteps ? word.IndexOf(Steps, StringComparison.Ordinal) : -1;
            if (steps > 0 && LineFigures.AmountOf(word[..steps], facts).Ok)
            {
                words.Add(word[..steps]);
                words.Add(word[steps..]);
            }
            else if (facts.Numbers.GroupMark == " " && words.Count > 1 && IsGroup(word) && words[^1].Length <= 3 && words[^1].All(char.IsAsciiDigit))
            {
                // Where thousands are parted by a blank, 1 450,00 is one amount.
                words[^1] += " " + word;
            }
            else
            {
                words.Add(word);
            }
        }

        return words.ToImmutable();
    }

    private static bool IsGroup(string word)
    {
        string plain = Word(word);
        int mark = plain.IndexOf(',', StringComparison.Ordinal);
        string whole = mark < 0 ? plain : plain[..mark];
        return whole.Length == 3 && whole.All(char.IsAsciiDigit) && plain[(mark < 0 ? plain.Length : mark + 1)..].All(char.IsAsciiDigit);
    }

    // Where a comma ends what comes before a change, so that no date before it takes the amount for its year.
    private static int ChangesAt(ImmutableArray<string> words, int from, LineFacts facts)
    {
        ImmutableArray<string> plain = [.. words.Select(Word)];
        for (int at = from; at < words.Length; at++)
        {
            if (words[at - 1].Length > plain[at - 1].Length && LineChanges.IsChange(plain, at, facts))
            {
                return at;
            }
        }

        return words.Length;
    }

    private static IEnumerable<string> Plain(IEnumerable<string> words) => words.Select(Word).Where(word => word.Length > 0);

    // What parts the words is none of them.
    private static string Word(string word) => word.TrimEnd(',', ';');
}
