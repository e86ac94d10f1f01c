using System.Globalization;
using System.Text.RegularExpressions;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Texts;

namespace Payday.Lists;

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
                return Result.Refused<Notes>(new NotesTextFault.NoNotes(text[at..].Trim()));
            }

            Result<Money> value = Money.ParseSum(piece.Groups["value"].Value, currency, style);
            if (!value.Ok)
            {
                return Result.Refused<Notes>(new ArgumentFault.Of(piece.Groups["value"].Value, value.Fault));
            }

            if (!int.TryParse(piece.Groups["count"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int count) || count > Most)
            {
                return Result.Refused<Notes>(new NotesTextFault.TooMany(piece.Value.Trim(' ', ',', ';'), Most));
            }

            if (!value.Value.IsPositive)
            {
                return Result.Refused<Notes>(new NotesTextFault.Worthless(piece.Groups["value"].Value));
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
