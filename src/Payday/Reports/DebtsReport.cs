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
                ["rate", "interest"],
                [
                    Report.Names("Debt"), new("due"), new("rate", Align.Right), Report.Amounts("balance"),
                    Report.Amounts("interest"), Report.Amounts("minimum"), Report.Amounts("pay"), Report.Amounts("then"), new(""),
                ],
                plan.Debts.Rows.Select(row => ImmutableArray.Create(
                    row.Name,
                    row.Due is { } due ? DateText.Short(due) : row.Balance.IsZero ? "paid off" : "later",
                    Percent(row.YearlyRate, style),
                    row.Balance.ToString(style),
                    row.Interest.ToString(style),
                    row.Minimum.ToString(style),
                    Report.Marked(row.Payment.ToString(style), row.Changed),
                    row.NewBalance.ToString(style),
                    State(row))),
                [["Together", "", "", "", "", "", plan.Debts.Due.ToString(style), "", ""]]),
        .. plan.Debts.Due != plan.Debts.Total
            ? Report.Prose($"{(plan.Debts.Due - plan.Debts.Total).ToString(style)} of it was in the account for it before; {plan.Debts.Total.ToString(style)} comes from this payday.")
            : [],
        .. plan.Surplus.Without.Never
            .Select(id => plan.Debts.Rows.First(row => row.DebtId == id))
            .SelectMany(row => Report.Prose($"! {row.Name} never ends at its minimum. Pay more on it, or talk to the lender.")),
    ];

    /// <summary>Whether a minimum has left the account; empty where none is due.</summary>
    public static string State(DebtRow row) => row.Due is null ? "" : row.Paid ? "paid" : "held until due";

    /// <summary>A yearly rate, e.g. 19.99 %, with at most four decimals, as a household has it.</summary>
    public static string Percent(decimal rate, NumberStyle style) => style.Written((rate * 100).ToString("0.####", CultureInfo.InvariantCulture)) + " %";
}
