using System.Globalization;
using System.Text.RegularExpressions;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>Reads notes by value, e.g. <c>20=22,10=15</c>.</summary>
internal static partial class NotesInput
{
    private const int Most = 10_000;

    /// <summary>The notes; a value that stands there twice adds up.</summary>
    public static Result<Notes> Read(string text, Currency currency, NumberStyle style)
    {
        var notes = new List<(long Value, int Count)>();
        int at = 0;
        while (at < text.Length)
        {
            if (Piece().Match(text, at) is not { Success: true } piece)
            {
                return EdgeFault.Refused<Notes>($"'{text[at..].Trim()}': write notes like 20=22,10=15, the value and how many.");
            }

            Result<Money> value = Money.ParseSum(piece.Groups["value"].Value, currency, style);
            if (!value.Ok)
            {
                return EdgeFault.Refused<Notes>($"{piece.Groups["value"].Value}: {FaultTexts.Of(value.Fault)}");
            }

            if (!int.TryParse(piece.Groups["count"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int count) || count > Most)
            {
                return EdgeFault.Refused<Notes>($"{piece.Value.Trim(' ', ',', ';')}: at most {Most} of one value.");
            }

            if (!value.Value.IsPositive)
            {
                return EdgeFault.Refused<Notes>($"{piece.Groups["value"].Value}: a note is worth more than zero.");
            }

            notes.Add((value.Value.MinorUnits, count));
            at += piece.Length;
        }

        return Result.Of(Notes.Of(notes.Where(note => note.Count > 0)));
    }

    // A decimal comma within a value is no separator: one stands only behind a count.
    [GeneratedRegex(@"\G\s*(?<value>[^=;\s]+)\s*=\s*(?<count>[0-9]+)\s*(?:[,;]\s*|$|(?<=\s))", RegexOptions.CultureInvariant)]
    private static partial Regex Piece();
}
