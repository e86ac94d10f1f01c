using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Drawing;
using Payday.Slips;
using Payday.Text;

namespace Payday.Pages;

/// <summary>Some weeks of a filling sheet beside each other, in a size of type: how wide each column is, and each line of them.</summary>
internal sealed class FillingBand
{
    private const double LongestName = 13;
    private const double ShortestName = 7;
    private const double Gap = 0.8;
    private const double GroupGap = 1.1;
    private readonly FillingSheetData data;
    private readonly FillingMatrix matrix;
    private readonly ImmutableArray<int> groups;
    private readonly double size;
    private readonly double name;
    private readonly ImmutableArray<Column> columns;
    private readonly double total;

    /// <summary>Measures them.</summary>
    /// <param name="data">The sheet.</param>
    /// <param name="matrix">The same as a matrix.</param>
    /// <param name="groups">Which groups of it.</param>
    /// <param name="size">In points.</param>
    /// <param name="leading">From row to row, in that size.</param>
    public FillingBand(FillingSheetData data, FillingMatrix matrix, ImmutableArray<int> groups, double size, double leading)
    {
        (this.data, this.matrix, this.groups, this.size) = (data, matrix, groups, size);
        RowHeight = size * leading;
        Rows = [.. matrix.Rows.Where(row => groups.Any(group => !row.Groups[group].IsEmpty))];
        name = Math.Clamp(Rows.Select(row => Width(row.Pot)).Append(Width(Together, bold: true)).Max(), ShortestName * size, LongestName * size);
        columns = [.. groups.Select(Measured)];
        total = IsWhole && groups.Length > 1 ? Rows.Select(row => Width(Worth(row.Notes))).Append(Width(Worth(matrix.Rows.SelectMany(row => row.Notes)), bold: true)).Max() + (Gap * size) : 0;
    }

    /// <summary>The label of the sums.</summary>
    public const string Together = "In the pots";

    /// <summary>The pots that get something then.</summary>
    public ImmutableArray<FillingMatrixRow> Rows { get; }

    /// <summary>How wide it is.</summary>
    public double Across => name + columns.Sum(column => column.Across) + total + (total > 0 ? GroupGap * size : 0);

    /// <summary>From row to row.</summary>
    public double RowHeight { get; }

    /// <summary>The height of the two lines above the rows.</summary>
    public double HeadHeight => size * 3.1;

    /// <summary>The height of all of it.</summary>
    public double Height => HeadHeight + (RowHeight * (Rows.Length + 1));

    private bool IsWhole => groups.Length == matrix.Groups.Length;

    /// <summary>Draws what stands above the rows.</summary>
    public void Head(Sketch page, double y, double wide)
    {
        double first = y + (size * 1.1);
        double second = y + (size * 2.6);
        page.Words(page.Left, second, "Pot", size, bold: true);
        foreach ((Column column, double x) in Placed(page, wide))
        {
            FillingGroup group = matrix.Groups[column.Group];
            page.Words(x, first, group.Week is { } week ? $"Week of {DateText.Weekday(week)}" : "At once", size, bold: true);
            page.Rule(x, x + column.Inner, first + (size * 0.4), 0.5, Sketch.Black);
            foreach ((NoteLine note, double right) in Notes(column, x))
            {
                page.Ending(right, second, NoteCounts.Name(note.Value, data.Style), size, bold: true);
            }

            page.Ending(x + column.Inner, second, data.Currency.Code, size, shade: Sketch.Quiet);
        }

        if (total > 0)
        {
            page.Ending(page.Left + wide, second, "Together", size, bold: true);
        }

        page.Rule(page.Left, page.Left + wide, y + HeadHeight, 1, Sketch.Black);
    }

    /// <summary>Draws a pot.</summary>
    public void Row(Sketch page, double y, double wide, FillingMatrixRow row)
    {
        double line = y + (RowHeight / 2) + (size * 0.33);
        page.Words(page.Left, line, row.Pot, size, room: Placed(page, wide).First().X - (size * 0.5) - page.Left);
        foreach ((Column column, double x) in Placed(page, wide))
        {
            ImmutableArray<NoteLine> notes = row.Groups[column.Group];
            if (notes.IsEmpty)
            {
                continue;
            }

            page.Box(x, line, size);
            Counts(page, line, column, x, notes, bold: false);
        }

        if (total > 0)
        {
            page.Ending(page.Left + wide, line, Worth(row.Notes), size);
        }

        page.Rule(page.Left, page.Left + wide, y + RowHeight);
    }

    /// <summary>Draws the sums of the weeks.</summary>
    public void Sums(Sketch page, double y, double wide)
    {
        double line = y + (RowHeight / 2) + (size * 0.33);
        page.Rule(page.Left, page.Left + wide, y, 1, Sketch.Black);
        page.Words(page.Left, line, Together, size, bold: true);
        foreach ((Column column, double x) in Placed(page, wide))
        {
            Counts(page, line, column, x, matrix.Groups[column.Group].Notes, bold: true);
        }

        if (total > 0)
        {
            page.Ending(page.Left + wide, line, Worth(matrix.Rows.SelectMany(row => row.Notes)), size, bold: true);
        }
    }

    private Column Measured(int group)
    {
        FillingGroup its = matrix.Groups[group];
        ImmutableArray<double> notes =
        [
            .. its.Notes.Select(note => (Gap * size) + Math.Max(
                Width(NoteCounts.Name(note.Value, data.Style), bold: true),
                Width(NoteCounts.Number(note.Count, data.Style), bold: true))),
        ];
        double amount = (Gap * size) + Math.Max(Width(Worth(its.Notes), bold: true), Width(data.Currency.Code));
        string title = its.Week is { } week ? $"Week of {DateText.Weekday(week)}" : "At once";
        return new Column(group, Math.Max(Sketch.BoxOf(size) + notes.Sum() + amount, Width(title, bold: true)), notes, amount, GroupGap * size);
    }

    // What is wider than needed goes before the weeks, alike.
    private IEnumerable<(Column Column, double X)> Placed(Sketch page, double wide)
    {
        double more = (wide - Across) / (columns.Length + (total > 0 ? 1 : 0));
        double x = page.Left + name;
        foreach (Column column in columns)
        {
            x += column.Before + more;
            yield return (column, x);
            x += column.Inner;
        }
    }

    private static IEnumerable<(NoteLine Note, double Right)> Notes(FillingGroup group, Column column, double x)
    {
        double right = x + column.Inner - column.Amount - column.Notes.Sum();
        for (int i = 0; i < group.Notes.Length; i++)
        {
            right += column.Notes[i];
            yield return (group.Notes[i], right);
        }
    }

    private IEnumerable<(NoteLine Note, double Right)> Notes(Column column, double x) => Notes(matrix.Groups[column.Group], column, x);

    private void Counts(Sketch page, double line, Column column, double x, ImmutableArray<NoteLine> notes, bool bold)
    {
        foreach ((NoteLine note, double right) in Notes(column, x))
        {
            long count = NoteCounts.Of(note.Value, notes);
            if (count > 0)
            {
                page.Ending(right, line, NoteCounts.Number(count, data.Style), size, bold);
            }
        }

        page.Ending(x + column.Inner, line, Worth(notes), size, bold, bold ? Sketch.Black : Sketch.Quiet);
    }

    private string Worth(IEnumerable<NoteLine> notes) => NoteCounts.Worth(notes, data.Currency).ToString(data.Style);

    private double Width(string words, bool bold = false) => TypeWidths.Of(CleanText.OneLine(words), size, bold);

    private sealed record Column(int Group, double Inner, ImmutableArray<double> Notes, double Amount, double Before)
    {
        public double Across => Before + Inner;
    }
}
