using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Counts;
using Payday.Text;

namespace Payday.Reports;

/// <summary>The week-end count pot by pot, for the command and the screen alike.</summary>
internal static class CountTable
{
    /// <summary>From this width on each column has two blanks before it, also where something is missing.</summary>
    public const int Roomy = 74;

    /// <summary>The columns: from what was filled on, each row adds up across them.</summary>
    /// <param name="rows">The rows; where something is missing or was found in one of them, it has a column.</param>
    public static ImmutableArray<TextColumn> Columns(IEnumerable<CountRow> rows) =>
    [
        Report.Names("Pot"), Report.Amounts("filled"), Report.Amounts("card") with { Drops = 1 }, Report.Amounts("expected"),
        Report.Amounts("left"), Report.Amounts("spent"), .. HasGaps(rows) ? [Report.Amounts("missing")] : ImmutableArray<TextColumn>.Empty, new("then") { Shrinks = true, MinWidth = 5 },
    ];

    /// <summary>The cells of all rows.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="then">What becomes of what is left of one, in a few words.</param>
    /// <param name="style">How numbers are written.</param>
    public static IEnumerable<ImmutableArray<string>> Cells(IReadOnlyCollection<CountRow> rows, Func<CountRow, string> then, NumberStyle style)
    {
        bool gaps = HasGaps(rows);
        return rows.Select(row => Cells(row, gaps, then(row), style));
    }

    /// <summary>Whether something is missing or was found in one of them.</summary>
    public static bool HasGaps(IEnumerable<CountRow> rows) => rows.Any(row => !row.Difference.IsZero);

    private static ImmutableArray<string> Cells(CountRow row, bool gaps, string then, NumberStyle style) =>
    [
        row.Pot.Name,
        row.WasIn.ToString(style),
        row.OwedBack.ToString(style),
        row.Expected.ToString(style),
        row.Entry is null ? "" : row.Left.ToString(style),
        row.Entry is null || row.Fault is not null ? "" : row.Spent.ToString(style),
        .. gaps ? [Gap(row, style)] : ImmutableArray<string>.Empty,
        then,
    ];

    private static string Gap(CountRow row, NumberStyle style) => row.Difference.IsZero ? ""
        : row.Difference.IsPositive ? row.Difference.ToString(style)
        : $"found {(-row.Difference).ToString(style)}";
}
