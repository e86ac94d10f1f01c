using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Counts;
using Payday.Text;

namespace Payday.Reports;

/// <summary>The week-end count pot by pot, for the command and the screen alike.</summary>
internal static class CountTable
{
    /// <summary>From this width on each column has its whole name, and two blanks before it.</summary>
    public const int Roomy = 74;

    /// <summary>The columns in a width.</summary>
    public static ImmutableArray<TextColumn> Columns(int width) =>
    [
        Report.Names("Pot"), Report.Amounts("filled"), Report.Amounts(width < Roomy ? "pay back" : "to pay back") with { Drops = 1 }, Report.Amounts("expected"),
        Report.Amounts("left"), Report.Amounts("spent"), new("then") { Shrinks = true, MinWidth = 5 },
    ];

    /// <summary>The cells of a row.</summary>
    /// <param name="row">The row.</param>
    /// <param name="then">What becomes of what is left, in a few words.</param>
    /// <param name="style">How numbers are written.</param>
    public static ImmutableArray<string> Cells(CountRow row, string then, NumberStyle style) =>
    [
        row.Pot.Name,
        row.WasIn.ToString(style),
        row.OwedBack.ToString(style),
        row.Expected.ToString(style),
        row.Entry is null ? "" : row.Left.ToString(style),
        row.Entry is null || row.Fault is not null ? "" : row.Spent.ToString(style),
        then,
    ];
}
