using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Text;

namespace Payday.Slips;

/// <summary>The filling sheet in blocks, for narrow paper: pot and amount, the week, and the notes in words.</summary>
internal static class FillingBlocks
{
    private const string Box = "[ ] ";
    private const string Indent = "    ";

    /// <summary>A block for each pot and week, and one for the totals.</summary>
    public static IEnumerable<ImmutableArray<string>> Lay(FillingSheetData data, ImmutableArray<FillingTotal> totals, int width)
    {
        for (int i = 0; i < data.Rows.Length; i++)
        {
            FillingRow row = data.Rows[i];
            string week = row.Week is { } date ? $"{Indent}week of {DateText.Weekday(date)}" : "";
            yield return
            [
                .. i > 0 ? [""] : Array.Empty<string>(),
                .. Named(Box + CleanText.OneLine(row.Pot), NoteCounts.Worth(row.Notes, data.Currency), data.Style, width),
                .. week.Length > 0 ? [week] : Array.Empty<string>(),
                .. Notes(row.Notes, data.Style, width),
            ];
        }

        yield return
        [
            new string('-', width),
            .. totals.SelectMany(total =>
                (ImmutableArray<string>)[.. Named(total.Label, total.Amount, data.Style, width), .. Notes(total.Notes, data.Style, width)]),
        ];
    }

    // A name with the amount at the line's end, or below it where the name would be cut too short to know.
    private static IEnumerable<string> Named(string name, Money amount, NumberStyle style, int width)
    {
        const int ShortestName = 16;
        string text = amount.ToString(style);
        int room = width - TextColumns.Width(text) - 1;
        return room >= ShortestName
            ? [TextColumns.Ends(TextColumns.Truncate(name, room), text, width)]
            : [TextColumns.Truncate(name, width), TextColumns.PadLeft(text, width)];
    }

    // A line ends after a comma, never within "3 x 20": that blank holds the line together until it is wrapped.
    private static IEnumerable<string> Notes(ImmutableArray<NoteLine> notes, NumberStyle style, int width)
    {
        const char Held = '\u00A0';
        string text = NoteCounts.Words(notes, style).Replace(' ', Held).Replace($",{Held}", ", ", StringComparison.Ordinal);
        return TextWrap.Lines(text, width - Indent.Length).Select(line => Indent + line.Replace(Held, ' '));
    }
}
