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
        params ImmutableArray<ImmutableArray<string>> totals)
    {
        TextTableLines lines = new TextTable(columns, [.. rows], totals, decimalMark: style.DecimalMark).Lay(Width);
        return [.. lines.Header, .. lines.Rows, .. lines.Totals];
    }

    /// <summary>A column of amounts.</summary>
    public static TextColumn Amounts(string header) => new(header, Align.Decimal);

    /// <summary>A column of names, which gives way when the table is too wide.</summary>
    public static TextColumn Names(string header) => new(header) { Shrinks = true, MinWidth = 12 };

    /// <summary>The mark of a figure that the person changed.</summary>
    public static string Marked(string amount, bool changed) => changed ? "*" + amount : amount;
}
