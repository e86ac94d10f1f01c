using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Sums;

/// <summary>What a line is known by, whenever and from whatever file it comes: day, amount, words, and which of such lines of that day it is.</summary>
/// <remarks>
/// Two real purchases of one amount, day and text are two lines, told apart by their ordinal. A bank's own reference isn't in it:
/// banks change it from download to download and use it again.
/// </remarks>
/// <param name="Date">The booking date.</param>
/// <param name="MinorUnits">The signed amount.</param>
/// <param name="Words">The letters and digits of its texts, without marks and case.</param>
/// <param name="Ordinal">From 1, among the lines of the same day, amount and words.</param>
public readonly record struct LineKey(LocalDate Date, long MinorUnits, string Words, int Ordinal)
{
    private const int MostWords = 80;

    /// <summary>The key as it is stored: the same for the same line in every version.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{LocalDatePattern.Iso.Format(Date)}|{MinorUnits}|{Words}|{Ordinal}");

    /// <summary>The keys of lines, in their order.</summary>
    public static LineKey[] Of(IReadOnlyList<StatementLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var seen = new Dictionary<(LocalDate, long, string), int>();
        var keys = new LineKey[lines.Count];
        for (int i = 0; i < keys.Length; i++)
        {
            StatementLine line = lines[i];
            string words = WordsOf(line);
            int ordinal = seen.GetValueOrDefault((line.Date, line.Amount.MinorUnits, words)) + 1;
            seen[(line.Date, line.Amount.MinorUnits, words)] = ordinal;
            keys[i] = new LineKey(line.Date, line.Amount.MinorUnits, words, ordinal);
        }

        return keys;
    }

    // Blanks and marks differ between a bank's formats and cut texts; letters and digits don't.
    private static string WordsOf(StatementLine line)
    {
        var words = new StringBuilder();
        foreach (char c in line.Party + line.Text)
        {
            if (char.IsLetterOrDigit(c) && words.Length < MostWords)
            {
                words.Append(Folding.Fold(c));
            }
        }

        return words.ToString();
    }
}
