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
                [["Together", "", "", "", "", "", plan.Debts.Due.ToString(style), "", ""]]),
        .. (plan.Debts.Due != plan.Debts.Total, plan.Debts.Total.IsNegative) switch
        {
            (false, _) => Array.Empty<string>(),
            (_, false) => Report.Prose($"{(plan.Debts.Due - plan.Debts.Total).ToString(style)} of it was in the account for it before; {plan.Debts.Total.ToString(style)} comes from this payday."),
            _ => Report.Prose($"{(plan.Debts.Due - plan.Debts.Total).ToString(style)} was in the account for it before; {(-plan.Debts.Total).ToString(style)} of that isn't needed and is left to place."),
        },
        .. plan.Surplus.Without.Never
            .Select(id => plan.Debts.Rows.First(row => row.DebtId == id))
            .SelectMany(row => Report.Prose($"! {row.Name} never ends at its minimum. Pay more on it, or talk to the lender.")),
    ];
}
