using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Routines;
using Payday.Text;

namespace Payday.Reports;

/// <summary>What comes in, source by source, for the report and the screen alike.</summary>
internal static class IncomeTable
{
    /// <summary>The columns.</summary>
    public static ImmutableArray<TextColumn> Columns => [Report.Names("From"), Report.Amounts("expected"), Report.Amounts("came in")];

    /// <summary>The cells of a line.</summary>
    public static ImmutableArray<string> Cells(IncomeLine line, NumberStyle style) =>
        [line.Name, line.SourceId is null ? "one-off" : line.Expected.ToString(style), Report.Marked(line.Amount, line.Changed, style)];
}
