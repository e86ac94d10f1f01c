using System.Collections.Immutable;

namespace Payday.Core.ItemLines;

/// <summary>The words of a line behind its name, which are taken from their front.</summary>
/// <remarks>
/// <see cref="LineFigures"/> takes amounts, rates and counts, <see cref="LineDays"/> days of the month and weekdays,
/// <see cref="LineDates"/> dates, <see cref="LineChanges"/> what an amount changes to, <see cref="ScheduleWords"/> when something comes round.
/// </remarks>
internal sealed class LineWords
{
    private ImmutableArray<string> words;
    private ImmutableArray<string> changes;

    /// <param name="words">The words.</param>
    /// <param name="changes">Those behind them that say what the amount changes to, told by the comma before them; they are read by themselves.</param>
    /// <param name="facts">The household.</param>
    public LineWords(IEnumerable<string> words, IEnumerable<string> changes, LineFacts facts) =>
        (Facts, this.words, this.changes) = (facts, [.. words], [.. changes]);

    /// <summary>The household, by which figures and dates are read.</summary>
    public LineFacts Facts { get; }

    /// <summary>Whether nothing is left of what isn't a change.</summary>
    public bool IsEmpty => words.IsEmpty;

    /// <summary>Whether nothing is left at all.</summary>
    public bool IsRead => words.IsEmpty && changes.IsEmpty;

    /// <summary>What is left, as it was written.</summary>
    public string Rest => string.Join(' ', words.Concat(changes));

    /// <summary>What can be read two ways, the first of them; null where all is plain.</summary>
    public Doubt? Doubt { get; private set; }

    /// <summary>The word at the front as it was written; empty where none is left.</summary>
    public string Front => words.IsEmpty ? "" : words[0];

    /// <summary>The words as they are now, to come back to.</summary>
    public ImmutableArray<string> Now
    {
        get => words;
        set => words = value;
    }

    /// <summary>How many words are left of what isn't a change.</summary>
    public int Left => words.Length;

    /// <summary>Notes what can be read two ways.</summary>
    public void Ask(string part, string one, string other) => Doubt ??= new Doubt(part, one, other);

    /// <summary>Whether words stand at the front, whatever their case.</summary>
    public bool Begins(params ReadOnlySpan<string> wanted)
    {
        ImmutableArray<string> before = words;
        bool isThere = Take(wanted);
        words = before;
        return isThere;
    }

    /// <summary>Takes words where they stand at the front, whatever their case.</summary>
    public bool Take(params ReadOnlySpan<string> wanted)
    {
        for (int i = 0; i < wanted.Length; i++)
        {
            if (i >= words.Length || !Is(words[i], wanted[i]))
            {
                return false;
            }
        }

        words = words[wanted.Length..];
        return true;
    }

    /// <summary>Takes one of several words, or none.</summary>
    public bool TakeAny(params ReadOnlySpan<string> wanted)
    {
        foreach (string word in wanted)
        {
            if (Take(word.Split(' ')))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Takes so many words, whatever they are.</summary>
    public void Drop(int count) => words = words[count..];

    /// <summary>Goes on to the words that say what the amount changes to, where no others are left.</summary>
    public void GoOnToChanges() => (words, changes) = (changes, []);

    /// <summary>Whether a word is another, whatever their case.</summary>
    public static bool Is(string word, string wanted) => string.Equals(word, wanted, StringComparison.OrdinalIgnoreCase);
}
