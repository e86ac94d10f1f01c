using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Routines;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Bills due, and what is held for later ones.</summary>
internal static class BillsReport
{
    /// <summary>Step 2 of the routine.</summary>
    public static IEnumerable<string> Step(RoutinePlan plan, NumberStyle style)
    {
        BillsStep bills = plan.Bills;
        string mode = bills.Mode == SetAsideMode.Level ? "set aside level" : "set aside as they fall";
        IEnumerable<string> dues = bills.Dues.IsEmpty ? ["Nothing is due in this period."] : Dues(bills, style);
        IEnumerable<string> eased = bills.Total < bills.Planned
            ? [$"It doesn't fit: {(bills.Planned - bills.Total).ToString(style)} less than planned is set aside for later bills."]
            : [];
        return [.. Report.Heading("2 Bills", mode), .. dues, "", .. SetAsides(bills, style), .. eased, .. Late(bills, style)];
    }

    private static IEnumerable<string> Dues(BillsStep bills, NumberStyle style) => Report.Table(
        style,
        [Report.Names("Due in this period"), new("on"), Report.Amounts("amount"), new("")],
        bills.Dues.Select(due => ImmutableArray.Create(
            due.Name,
            DateText.Weekday(due.Key.Date),
            Report.Marked(due.Amount.ToString(style), due.Changed),
            due.Paid ? "paid" : "held until due")),
        [["Due", "", bills.Due.ToString(style), ""]]);

    private static IEnumerable<string> SetAsides(BillsStep bills, NumberStyle style) => Report.Table(
        style,
        [Report.Names("Held in the account"), Report.Amounts("held"), Report.Amounts("set aside"), Report.Amounts("now"), new("next")],
        bills.SetAsides.Select(line => ImmutableArray.Create(
            line.Name,
            line.HeldBefore.ToString(style),
            line.SetAside.ToString(style),
            line.HeldAfter.ToString(style),
            line.NextDue is { } date ? $"{line.NextAmount.ToString(style)} on {DateText.Short(date)}" : "")),
        [["Set aside today", bills.Held.ToString(style), bills.Total.ToString(style), (bills.Held + bills.Total).ToString(style), ""]]);

    private static IEnumerable<string> Late(BillsStep bills, NumberStyle style) => bills.Late.IsEmpty
        ? []
        :
        [
            "! With the pay expected, these can't be paid in full in time:",
            .. bills.Late.Select(late => $"  {late.Due.Name}, {DateText.Long(late.Due.Date)}: {late.Short.ToString(style)} short of {late.Due.Amount.ToString(style)}"),
        ];
}
