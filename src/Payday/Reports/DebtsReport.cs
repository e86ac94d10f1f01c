using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Routines;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Debts and their minimums.</summary>
internal static class DebtsReport
{
    /// <summary>Step 3 of the routine.</summary>
    public static IEnumerable<string> Step(RoutinePlan plan, NumberStyle style) =>
    [
        .. Report.Heading("3 Debt minimums"),
        .. plan.Debts.Rows.IsEmpty
            ? ["No debts."]
            : Report.Table(
                style,
                DebtTable.Columns,
                plan.Debts.Rows.Select(row => DebtTable.Cells(row, style)),
                [["Paid", "", "", "", "", "", plan.Debts.Total.ToString(style), ""]]),
        .. plan.Surplus.Without.Never
            .Select(id => plan.Debts.Rows.First(row => row.DebtId == id))
            .SelectMany(row => Report.Prose($"! {row.Name} never ends at its minimum. Pay more on it, or talk to the lender.")),
    ];
}
