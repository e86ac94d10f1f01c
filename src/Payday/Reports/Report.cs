using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Text;

namespace Payday.Reports;

/// <summary>What the text reports share: headings, tables of one width, amounts of one style.</summary>
internal static class Report
{
    /// <summary>The columns of a report.</summary>
    public const int Width = 80;

    /// <summary>A heading with a rule under it.</summary>
    public static IEnumerable<string> Heading(string left, string right = "") =>
        [TextColumns.Ends(CleanText.OneLine(left), right, Width).TrimEnd(), new string('-', Width)];

    /// <summary>A table as lines, header and totals included.</summary>
    public static IEnumerable<string> Table(
        NumberStyle style,
        ImmutableArray<TextColumn> columns,
        IEnumerable<ImmutableArray<string>> rows,
        params ImmutableArray<ImmutableArray<string>> totals) => Table(style, [], columns, rows, totals);

    /// <summary>A table that can do without some columns where amounts are so long that it would be too wide.</summary>
    /// <param name="style">How numbers are written.</param>
    /// <param name="spare">The headers of those columns, the first to go first; they have no totals.</param>
    /// <param name="columns">All columns.</param>
    /// <param name="rows">One cell for each column.</param>
    /// <param name="totals">Rows under a rule of their own.</param>
    public static IEnumerable<string> Table(
        NumberStyle style,
        ReadOnlySpan<string> spare,
        ImmutableArray<TextColumn> columns,
        IEnumerable<ImmutableArray<string>> rows,
        params ImmutableArray<ImmutableArray<string>> totals)
    {
        ImmutableArray<ImmutableArray<string>> body = [.. rows];
        var table = new TextTable(columns, body, totals, decimalMark: style.DecimalMark);
        if (table.NarrowestWidth <= Width || spare.IsEmpty)
        {
            return table.Lay(Width).All;
        }

        string goes = spare[0];
        int at = columns.ToList().FindIndex(column => column.Header == goes);
        return Table(
            style,
            spare[1..],
            columns.RemoveAt(at),
            body.Select(row => row.RemoveAt(at)),
            [.. totals.Select(row => row.RemoveAt(at))]);
    }

    /// <summary>A sentence, in lines where it is too long for one; what goes on stands two columns further in.</summary>
    public static IEnumerable<string> Prose(string text)
    {
        string clean = CleanText.OneLine(text);
        if (TextColumns.Width(clean) <= Width)
        {
            return [clean];
        }

        string lead = clean[..^clean.TrimStart(' ').Length];
        return TextWrap.Lines(clean, Width - lead.Length - 2).Select((line, i) => (i == 0 ? lead : lead + "  ") + line);
    }

    /// <summary>A column of amounts.</summary>
    public static TextColumn Amounts(string header) => new(header, Align.Decimal);

    /// <summary>A column of names, which gives way when the table is too wide.</summary>
    public static TextColumn Names(string header) => new(header) { Shrinks = true, MinWidth = 12 };

    /// <summary>The mark of a figure that the person changed.</summary>
    public static string Marked(string amount, bool changed) => changed ? "*" + amount : amount;
}
