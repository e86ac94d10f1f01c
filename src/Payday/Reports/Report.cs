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
        params ImmutableArray<ImmutableArray<string>> totals) => new TextTable(columns, [.. rows], totals, decimalMark: style.DecimalMark).Lay(Width).All;

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
    public static string Marked(Money amount, bool changed, NumberStyle style) => changed ? "*" + amount.ToString(style) : amount.ToString(style);
}
