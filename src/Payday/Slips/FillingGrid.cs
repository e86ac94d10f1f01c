using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Text;

namespace Payday.Slips;

/// <summary>The filling sheet as a grid: a row for each pot and week, a column for each note.</summary>
internal static class FillingGrid
{
    // Where no note goes, so that the eye can follow the row.
    private const string NoNotes = ".";

    /// <summary>The grid, whose pot names may be cut to 14 columns, as long as the longest label of a total.</summary>
    public static TextTable Table(FillingSheetData data, ImmutableArray<FillingTotal> totals)
    {
        ImmutableArray<Money> values = [.. NoteCounts.ByValue(totals.SelectMany(total => total.Notes)).Select(line => line.Value)];
        bool weekly = data.Rows.Any(row => row.Week is not null);
        ImmutableArray<string> Cells(string box, string name, string week, ImmutableArray<NoteLine> notes, Money amount) =>
        [
            box, name, .. weekly ? [week] : Array.Empty<string>(),
            .. values.Select(value => Cell(NoteCounts.Of(value, notes), data.Style)), amount.ToString(data.Style),
        ];
        return new TextTable(
            [
                new TextColumn(""),
                new TextColumn("Pot") { Shrinks = true, Grows = true, MinWidth = 14 },
                .. weekly ? [new TextColumn("Week of", Align.Right)] : Array.Empty<TextColumn>(),
                .. values.Select(value => new TextColumn(NoteCounts.Name(value, data.Style), Align.Right)),
                new TextColumn($"Amount {data.Currency.Code}", Align.Right),
            ],
            [
                .. data.Rows.Select(row => Cells(
                    "[ ]", row.Pot, row.Week is { } week ? DateText.Short(week) : "", row.Notes, NoteCounts.Worth(row.Notes, data.Currency))),
            ],
            [.. totals.Select(total => Cells("", total.Label, "", total.Notes, total.Amount))]);
    }

    private static string Cell(long count, NumberStyle style) => count == 0 ? NoNotes : NoteCounts.Number(count, style);
}
