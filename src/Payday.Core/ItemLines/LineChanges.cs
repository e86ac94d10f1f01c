using System.Collections.Immutable;
using Payday.Core.Drafts;

namespace Payday.Core.ItemLines;

/// <summary>What an amount changes to, as the words of a line say it: <c>1480 from Jan 2027</c>.</summary>
internal static class LineChanges
{
    /// <summary>Takes what the amount changes to: <c>1480 from Jan 2027</c>, one or more; null where none stands there.</summary>
    public static ImmutableArray<LaterDraft>? Changes(this LineWords words)
    {
        var taken = ImmutableArray.CreateBuilder<LaterDraft>();
        while (words.Change() is { } change)
        {
            taken.Add(change);
        }

        if (words.IsEmpty)
        {
            words.GoOnToChanges();
            while (words.Change() is { } change)
            {
                taken.Add(change);
            }
        }

        return taken.Count == 0 ? null : taken.ToImmutable();
    }

    /// <summary>Whether an amount and <c>from</c> stand at a place of some words.</summary>
    public static bool IsChange(ImmutableArray<string> words, int at, LineFacts facts) =>
        at + 1 < words.Length && LineWords.Is(words[at + 1], "from") && LineFigures.AmountOf(words[at], facts).Ok;

    /// <summary>Whether words begin with what an amount changes to.</summary>
    public static bool BeginsWithAChange(IEnumerable<string> words, LineFacts facts) => new LineWords(words, [], facts).Change() is not null;

    private static LaterDraft? Change(this LineWords words)
    {
        ImmutableArray<string> before = words.Now;
        if (IsChange(words.Now, 0, words.Facts) && words.Amount() is { } amount && words.Take("from") && (words.MonthAlone() ?? words.Date()) is { } date)
        {
            return new LaterDraft { From = date, Amount = amount };
        }

        words.Now = before;
        return null;
    }
}
