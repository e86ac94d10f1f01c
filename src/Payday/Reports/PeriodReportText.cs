using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Status;
using Payday.Text;

namespace Payday.Reports;

/// <summary>The report of a month or year as lines of text.</summary>
internal static class PeriodReportText
{
    /// <summary>All of it.</summary>
    public static IEnumerable<string> Lines(Book book, PeriodReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        NumberStyle style = report.Style;
        YearMonth last = report.Period.Last;
        return
        [
            .. Report.Heading(report.Period.Title(report.Today), report.Household),
            .. Report.Table(style, [new(""), Report.Amounts(report.Currency.Code), new("")], Figures(report)),
            "",
            .. Report.Heading("Where the money went"),
            .. report.Period.IsYear ? MonthsReport.Year(book, last, Report.Width) : MonthsReport.Month(book, last, Report.Width),
            "",
            .. Report.Heading("Income against outgoings"),
            .. MonthsReport.InAndOut(book, last, Report.Width),
            "",
            .. MonthsReport.Curves(book, last, Report.Width).SelectMany(curve => (IEnumerable<string>)[.. Report.Heading(curve.Heading), .. curve.Lines, ""]),
            .. Report.Heading($"Set aside on {DateText.Short(report.Today)}"),
            .. SetAside(report),
            "",
            .. Report.Heading($"Due until {DateText.Day(report.DuesTo)}"),
            .. Dues(report),
        ];
    }

    /// <summary>The four figures of a period: what it is, the amount, and what is held against it.</summary>
    public static IEnumerable<ImmutableArray<string>> Figures(PeriodReport report) =>
    [
        ["Came in", report.CameIn.Amount.ToString(report.Style), Beside(report, report.CameIn)],
        ["Went out", report.Went.Total.Amount.ToString(report.Style), Beside(report, report.Went.Total)],
        ["Saved", report.Saved.ToString(report.Style), Change(report, report.SavedMore)],
        ["Owed", report.Owed.ToString(report.Style), Change(report, report.OwedMore)],
    ];

    private static string Beside(PeriodReport report, WentRow row) => row.Beside is { } amount ? $"{report.BesideName} {amount.ToString(report.Style)}" : "";

    private static string Change(PeriodReport report, Money? more)
    {
        string time = "in " + report.Period.Last.ToString(report.Period.IsYear ? "uuuu" : "MMMM", CultureInfo.InvariantCulture);
        return more switch
        {
            null => "",
            { IsZero: true } => $"unchanged {time}",
            { IsPositive: true } amount => $"{amount.ToString(report.Style)} more {time}",
            { } amount => $"{(-amount).ToString(report.Style)} less {time}",
        };
    }

    private static IEnumerable<string> SetAside(PeriodReport report) => report.SetAside.IsEmpty
        ? ["Nothing is set aside."]
        : Report.Table(
            report.Style,
            [Report.Names("For"), Report.Amounts("has"), Report.Amounts("of"), new("due")],
            report.SetAside.Select(line => ImmutableArray.Create(
                line.Name, line.Has.ToString(report.Style), line.Next?.Amount.ToString(report.Style) ?? "", line.Next is { } next ? DateText.Weekday(next.Date) : "")),
            [["Together", Money.Sum(report.SetAside.Select(line => line.Has), report.Currency).ToString(report.Style), "", ""]]);

    private static IEnumerable<string> Dues(PeriodReport report) => report.Dues.IsEmpty
        ? ["Nothing is due."]
        : Report.Table(
            report.Style,
            [new("on"), Report.Names("for"), Report.Amounts("amount")],
            report.Dues.Select(due => ImmutableArray.Create(DateText.Weekday(due.Date), due.Name, due.Amount.ToString(report.Style))),
            [["", "Together", Money.Sum(report.Dues.Select(due => due.Amount), report.Currency).ToString(report.Style)]]);
}
