using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Routines;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Debts with their minimums, for the report and the screen alike.</summary>
internal static class DebtTable
{
    /// <summary>The columns.</summary>
    public static ImmutableArray<TextColumn> Columns =>
    [
        Report.Names("Debt"), new("due"), new("rate", Align.Right) { Drops = 1 }, Report.Amounts("balance"),
        Report.Amounts("interest") with { Drops = 2 }, Report.Amounts("minimum") with { Drops = 3 }, Report.Amounts("pay"), Report.Amounts("then"), new(""),
    ];

    /// <summary>The cells of a row.</summary>
    public static ImmutableArray<string> Cells(DebtRow row, NumberStyle style) =>
    [
        row.Name,
        row.Due is { } due ? DateText.Short(due) : row.Balance.IsZero ? "paid off" : "not yet",
        Percent(row.YearlyRate, style),
        row.Balance.ToString(style),
        row.Interest.ToString(style),
        row.Minimum.ToString(style),
        Report.Marked(row.Payment, row.Changed, style),
        row.NewBalance.ToString(style),
        row.Due is null ? "" : row.Paid ? "paid" : "to pay",
    ];

    /// <summary>What they come to.</summary>
    public static ImmutableArray<string> Totals(DebtsStep debts, NumberStyle style)
    {
        string Sum(Func<DebtRow, Money> of) => Money.Sum(debts.Rows.Select(of), debts.Total.Currency).ToString(style);
        return ["Together", "", "", Sum(row => row.Balance), Sum(row => row.Interest), Sum(row => row.Minimum), debts.Due.ToString(style), Sum(row => row.NewBalance), ""];
    }

    /// <summary>A yearly rate, e.g. 19.99 %, with at most four decimals, as a household has it.</summary>
    public static string Percent(decimal rate, NumberStyle style) => style.Written((rate * 100).ToString("0.####", CultureInfo.InvariantCulture)) + " %";
}
