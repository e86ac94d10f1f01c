using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Ids;
using Payday.Core.Routines;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Bills due, and what is held for later ones.</summary>
internal static class BillsReport
{
    /// <summary>Step 2 of the routine.</summary>
    public static IEnumerable<string> Step(RoutinePlan plan, NumberStyle style)
    {
        BillsStep bills = plan.Bills;
        string mode = bills.Mode == SetAsideMode.Level ? "set aside evenly" : "set aside when due";
        string until = DateText.Short(plan.Period.Last);
        IEnumerable<string> dues = bills.Dues.IsEmpty ? [$"Nothing is due until {until}."] : Dues(bills, style, until);
        IEnumerable<string> held = bills.SetAsides.IsEmpty ? [] : ["", .. SetAsides(bills, style)];
        IEnumerable<string> eased = bills.Total < bills.Planned
            ? [$"! It doesn't fit: {(bills.Planned - bills.Total).ToString(style)} less than planned is set aside for later bills."]
            : [];
        return [.. Report.Heading("2 Bills", mode), .. dues, .. held, .. bills.Reason is null ? [] : Report.Prose(Reason(bills, style)), .. Given(bills, style).SelectMany(given => Report.Prose(given)), .. eased, .. Late(bills, style)];
    }

    /// <summary>Why so much is set aside, in a sentence with its figures.</summary>
    public static string Reason(BillsStep bills, NumberStyle style) => bills.Reason is { } reason
        ? $"{Percent(reason.Share, style)} of each pay to {DateText.Short(reason.Payday)} keeps bills on time; {reason.Sets.Name}, {DateText.Short(reason.Sets.Date)}, sets it."
        : bills.Total.IsPositive ? $"{bills.Total.ToString(style)} set aside today is what this payday's bills lack." : "What is set aside covers this payday's bills; nothing is added today.";

    /// <summary>What bills give up of what is set aside for them today, a sentence each: a figure below zero is said to be one.</summary>
    public static IEnumerable<string> Given(BillsStep bills, NumberStyle style) => GivenSetAside.Of(bills).Select(given => Given(given, style));

    /// <summary>What one bill gives up; empty for nothing.</summary>
    public static string Given(BillsStep bills, BillId billId, NumberStyle style) =>
        string.Concat(GivenSetAside.Of(bills).Where(given => given.Line.BillId == billId).Select(given => Given(given, style)));

    private static string Given(GivenSetAside given, NumberStyle style)
    {
        string why = given.To is { } sooner ? $"{sooner}, due sooner, needs it" : "it isn't needed there now";
        string until = given.Line.NextDue is { } date && given.To is not null ? $", and it has until {DateText.Short(date)} to come back" : "";
        return $"{given.Line.Name} gives up {given.Amount.ToString(style)} today: {why}{until}.";
    }

    private static string Percent(decimal share, NumberStyle style) =>
        style.Written((share * 100).ToString("0.00", CultureInfo.InvariantCulture)) + " %";

    private static IEnumerable<string> Dues(BillsStep bills, NumberStyle style, string until) => Report.Table(
        style,
        DueTable.Columns(until),
        bills.Dues.Select(due => DueTable.Cells(due.Name, due.Date, Report.Marked(due.Amount, due.Changed, style), due.Paid ? "paid" : "set aside")),
        [["Due", "", bills.Due.ToString(style), ""]]);

    private static IEnumerable<string> SetAsides(BillsStep bills, NumberStyle style)
    {
        Money paid = PaidOf(bills, bills.Dues);
        return Report.Table(
            style,
            [Report.Names("Set aside for"), Report.Amounts("before"), Report.Amounts("today"), Report.Amounts("paid"), Report.Amounts("now"), new("next") { Drops = 1 }],
            bills.ByNextDue.Select(line => ImmutableArray.Create(
                line.Name,
                line.HeldBefore.ToString(style),
                line.SetAside.ToString(style),
                Paid(bills, line) is { IsZero: false } gone ? gone.ToString(style) : "",
                (line.HeldAfter - Paid(bills, line)).ToString(style),
                line.NextDue is { } date ? $"{line.NextAmount.ToString(style)} on {DateText.Short(date)}" : "")),
            [["Together", bills.Held.ToString(style), bills.Total.ToString(style), paid.ToString(style), (bills.Held + bills.Total - paid).ToString(style), ""]]);
    }

    /// <summary>What has been paid of a bill's dues, so that it is held no more.</summary>
    public static Money Paid(BillsStep bills, SetAsideLine line) => PaidOf(bills, bills.Dues.Where(due => due.BillId == line.BillId));

    private static Money PaidOf(BillsStep bills, IEnumerable<DueRow> dues) =>
        Money.Sum(dues.Where(due => due.Paid).Select(due => due.Amount), bills.Total.Currency);

    private static IEnumerable<string> Late(BillsStep bills, NumberStyle style) => bills.Late.IsEmpty
        ? []
        :
        [
            "! With the pay expected, these can't be paid in full in time:",
            .. bills.Late.SelectMany(late => Report.Prose($"  {late.Due.Name}, {DateText.Long(late.Due.Date)}: {late.Short.ToString(style)} short of {late.Due.Amount.ToString(style)}")),
        ];
}
