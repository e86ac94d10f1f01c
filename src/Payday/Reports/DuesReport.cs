using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.DuePayments;
using Payday.Core.Status;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Dues to pay and dues paid, bills and minimums alike.</summary>
internal static class DuesReport
{
    /// <summary>What a payday put on a debt above its minimum, where <see cref="Kind"/> tells bills from minimums.</summary>
    public const string Extra = "extra";

    /// <summary>What is to be paid, with what there is for it.</summary>
    /// <param name="extra">What is to be paid by oneself, each with the debt's name; it comes first.</param>
    /// <param name="lines">Bills and minimums.</param>
    /// <param name="style">How numbers are written.</param>
    public static IEnumerable<string> Open(IEnumerable<(PaymentToMake Payment, string Name)> extra, IEnumerable<DueLine> lines, NumberStyle style) => Report.Table(
        style,
        [Report.Names("To pay"), new(""), new("due"), Report.Amounts("to pay"), Report.Amounts("paid"), Report.Amounts("has")],
        extra.Select(one => ImmutableArray.Create(one.Name, Extra, DateText.Weekday(one.Payment.Since), one.Payment.Amount.ToString(style), "", "")).Concat(lines.Select(line => ImmutableArray.Create(
            line.Name, Kind(line.Key), DateText.Weekday(line.Date), line.Rest.ToString(style), line.Paid.IsZero ? "" : line.Paid.ToString(style), line.Has.ToString(style)))));

    /// <summary>What was paid.</summary>
    public static IEnumerable<string> Paid(IEnumerable<PaidDue> paid, NumberStyle style) => Report.Table(
        style,
        [new("number", Align.Right), Report.Names("Paid"), new(""), new("due"), new("on"), Report.Amounts("amount"), new("")],
        paid.Select(one => ImmutableArray.Create(
            one.Number?.ToString(CultureInfo.InvariantCulture) ?? "", one.Name, Kind(one.Key), DateText.Short(one.Date), DateText.Weekday(one.PaidOn), one.Amount.ToString(style), State(one))));

    /// <summary>Whose due it is.</summary>
    public static string Kind(DueKey key) => key.Bill is null ? "minimum" : "bill";

    /// <summary>That a rest was freed, or all of it.</summary>
    public static string State(PaidDue paid) => !paid.IsFreed ? "" : paid.IsPaidInPart ? "rest freed" : "freed";
}
