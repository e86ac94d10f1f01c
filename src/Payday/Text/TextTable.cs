using System.Collections.Immutable;

namespace Payday.Text;

/// <summary>A small table of text: cells in, lines out.</summary>
/// <remarks>
/// Only a column that <see cref="TextColumn.Shrinks"/> is ever cut, and one that <see cref="TextColumn.Drops"/> is left
/// out whole, so that no amount loses a digit: a table that can't be as narrow as asked comes out as wide as
/// <see cref="NarrowestWidth"/>. Cells are cleaned.
/// </remarks>
internal sealed class TextTable
{
    private readonly ImmutableArray<TextColumn> columns;
    private readonly ImmutableArray<ImmutableArray<string>> rows;
    private readonly ImmutableArray<ImmutableArray<string>> totals;
    private readonly ImmutableArray<string> header;
    private readonly ImmutableArray<int> natural;

    /// <summary>A table.</summary>
    /// <param name="columns">At least one; at most one grows, and one stays.</param>
    /// <param name="rows">One cell for each column.</param>
    /// <param name="totals">Rows under a rule of their own; may be empty.</param>
    /// <param name="gap">Blanks between columns, zero or more.</param>
    /// <param name="decimalMark">The mark that <see cref="Align.Decimal"/> lines up.</param>
    /// <exception cref="ArgumentException">There is no column that stays, two grow, or a row has another number of cells.</exception>
    public TextTable(
        ImmutableArray<TextColumn> columns,
        ImmutableArray<ImmutableArray<string>> rows,
        ImmutableArray<ImmutableArray<string>> totals = default,
        int gap = 2,
        string decimalMark = ".")
    {
        ArgumentOutOfRangeException.ThrowIfNegative(gap);
        this.columns = columns;
        Gap = gap;
        if (columns.IsDefaultOrEmpty || columns.All(c => c.Drops > 0) || columns.Count(c => c.Grows) > 1)
        {
            throw new ArgumentException("A table has columns that stay, and one of them at most grows.", nameof(columns));
        }

        this.totals = totals.IsDefault ? [] : totals;
        if (rows.Concat(this.totals).Any(row => row.Length != columns.Length))
        {
            throw new ArgumentException("A row has one cell for each column.", nameof(rows));
        }

        (this.rows, this.totals) = Aligned(rows, this.totals, decimalMark);
        header = [.. columns.Select(column => CleanText.OneLine(column.Header))];
        natural = [.. columns.Select((column, i) => Math.Max(column.MinWidth, Widest(i)))];
    }

    /// <summary>Blanks between columns.</summary>
    public int Gap { get; }

    /// <summary>The fewest columns in which no cell is cut that may not be.</summary>
    public int NarrowestWidth => Narrowest([.. Enumerable.Range(0, columns.Length).Where(i => columns[i].Drops == 0)]);

    /// <summary>The lines of the table in a width in columns, without blanks at their ends.</summary>
    public TextTableLines Lay(int width)
    {
        ImmutableArray<int> kept = Kept(width);
        int[] widths = Widths(kept, width);
        string rule = new('-', widths.Sum() + Gaps(kept));
        bool headed = header.Any(text => text.Length > 0);
        return new TextTableLines(
            headed ? [Line(header, kept, widths), rule] : [],
            [.. rows.Select(row => Line(row, kept, widths))],
            totals.IsEmpty ? [] : [rule, .. totals.Select(row => Line(row, kept, widths))]);
    }

    /// <summary>The headers of the columns that are left out in a width.</summary>
    public ImmutableArray<string> LeftOut(int width) => [.. Enumerable.Range(0, columns.Length).Except(Kept(width)).Select(i => header[i])];

    private ImmutableArray<int> Kept(int width)
    {
        ImmutableArray<int> kept = [.. Enumerable.Range(0, columns.Length)];
        while (Narrowest(kept) > width && kept.Max(i => columns[i].Drops) is > 0 and var first)
        {
            kept = kept.Remove(kept.First(i => columns[i].Drops == first));
        }

        return kept;
    }

    private int[] Widths(ImmutableArray<int> kept, int width)
    {
        int[] widths = [.. kept.Select(i => natural[i])];
        int spare = width - widths.Sum() - Gaps(kept);
        if (spare > 0 && Array.FindIndex([.. kept], i => columns[i].Grows) is >= 0 and var grows)
        {
            widths[grows] += spare;
        }

        for (; spare < 0; spare++)
        {
            int[] cut = [.. Enumerable.Range(0, kept.Length).Where(at => columns[kept[at]].Shrinks && widths[at] > columns[kept[at]].MinWidth)];
            if (cut.Length == 0)
            {
                break;
            }

            widths[cut.MaxBy(at => widths[at])]--;
        }

        return widths;
    }

    private int Narrowest(ImmutableArray<int> kept) =>
        kept.Sum(i => columns[i].Shrinks ? Math.Min(natural[i], columns[i].MinWidth) : natural[i]) + Gaps(kept);

    private int Gaps(ImmutableArray<int> kept) => Gap * (kept.Length - 1);

    private string Line(ImmutableArray<string> cells, ImmutableArray<int> kept, int[] widths) =>
        string.Join(new string(' ', Gap), kept.Select((i, at) => Cell(cells[i], columns[i].Align, widths[at]))).TrimEnd(' ');

    private static string Cell(string text, Align align, int width)
    {
        string cut = TextColumns.Truncate(text, width);
        return align == Align.Left ? TextColumns.PadRight(cut, width) : TextColumns.PadLeft(cut, width);
    }

    private int Widest(int column) =>
        rows.Concat(totals).Append(header).Max(row => TextColumns.Width(row[column]));

    // Cells of a decimal column all get as much room behind the mark as the longest fraction.
    private (ImmutableArray<ImmutableArray<string>> Rows, ImmutableArray<ImmutableArray<string>> Totals) Aligned(
        ImmutableArray<ImmutableArray<string>> body, ImmutableArray<ImmutableArray<string>> foot, string mark)
    {
        string[][] cells = [.. body.Concat(foot).Select(row => row.Select(CleanText.OneLine).ToArray())];
        for (int i = 0; i < columns.Length; i++)
        {
            if (columns[i].Align != Align.Decimal || cells.Length == 0)
            {
                continue;
            }

            int longest = cells.Max(row => Fraction(row[i], mark));
            foreach (string[] row in cells)
            {
                row[i] += new string(' ', longest - Fraction(row[i], mark));
            }
        }

        ImmutableArray<ImmutableArray<string>> all = [.. cells.Select(row => row.ToImmutableArray())];
        return (all[..body.Length], all[body.Length..]);
    }

    private static int Fraction(string text, string mark)
    {
        int at = text.LastIndexOf(mark, StringComparison.Ordinal);
        return at < 0 ? 0 : TextColumns.Width(text[at..]);
    }
}
