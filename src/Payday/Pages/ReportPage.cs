using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Drawing;
using Payday.Printing;
using Payday.Reports;
using Payday.Text;

namespace Payday.Pages;

/// <summary>The report of a month or year on one page to pin up: four figures, bars against the usual, income against outgoings, curves of what is saved and owed, what is set aside, what is due next.</summary>
/// <remarks>In shades of grey alone, little of it dark. Where there is too much for a page, rows are taken together, and that is said in the last of them.</remarks>
internal static class ReportPage
{
    private const double Size = 10;
    private const double LeastRow = 13.5;
    private const double MostRow = 19;
    private const double Heading = 24;
    private const double Between = 26;
    private const double Charts = 118;
    private const double MoreCharts = 90;
    private const int MostListed = 10;
    private const int LeastWent = 3;

    /// <summary>The page.</summary>
    /// <param name="report">What it says.</param>
    /// <param name="paper">A full sheet.</param>
    public static DrawnPage Draw(PeriodReport report, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(paper);
        var page = new Sketch(paper.Width, paper.Height, paper.Margin);
        double y = Title(page, report);
        y = ReportFigures.Draw(page, y, report) + 8;
        double foot = page.Bottom - (Size * 1.4);

        // What is listed below takes what it needs, up to a limit; the bars take the rest.
        int listed = Math.Min(MostListed, Math.Max(report.SetAside.Length, report.Dues.Length) + 1);
        double room = foot - y - (3 * Heading) - (2 * 12) - Charts;
        int most = Math.Max(LeastWent, (int)(room / LeastRow) - listed - 1);
        ReportBars bars = new(report, most);
        double row = Math.Clamp(room / (bars.Rows + listed), LeastRow, MostRow);
        double charts = Charts + Math.Max(0, Math.Min(MoreCharts, room - (row * (bars.Rows + listed))));
        double middle = (page.Left + page.Right) / 2;

        bars.Legend(page, page.Right, y + 13);
        y = Headed(page, page.Left, page.Right, y, "Where the money went");
        y = bars.Draw(page, y, row) + 12;

        double charted = y;
        double left = middle - (Between / 2);
        double right = middle + (Between / 2);
        double start = Headed(page, page.Left, left, charted, "Income against outgoings");
        MonthBars.Draw(page, page.Left, left, start, charted + Heading + charts, report);
        start = Headed(page, right, page.Right, charted, "Saved and owed");
        MonthCurves.Draw(page, right, page.Right, start, charted + Heading + charts, report);
        y = charted + Heading + charts + 12;

        start = Headed(page, page.Left, left, y, $"Set aside on {DateText.Short(report.Today)}");
        ReportLists.SetAside(page, page.Left, left, start, row, listed, report);
        start = Headed(page, right, page.Right, y, $"Due until {DateText.Short(report.DuesTo)}");
        ReportLists.Dues(page, right, page.Right, start, row, listed, report);
        page.Words(page.Left, page.Bottom - 2, $"Made on {DateText.Day(report.Today)}, by the dates in the ledger; what was undone doesn't count.", Size * 0.8, shade: Sketch.Quiet);
        return page.Page;
    }

    private static double Title(Sketch page, PeriodReport report)
    {
        double y = page.Top + 20;
        string state = report.Period.Last == report.Today.ToYearMonth() ? $"so far, to {DateText.Weekday(report.Today)}" : "";
        double end = page.Words(page.Left, y, report.Period.Name, 24, bold: true);
        end = page.Words(end + 10, y, state, 12, shade: Sketch.Quiet);
        string household = TypeWidths.Cut(CleanText.OneLine(report.Household), page.Right - end - 20, 12);
        page.Ending(page.Right, y, household, 12);
        page.Rule(page.Left, page.Right, y + 8, 1.5, Sketch.Black);
        return y + 14;
    }

    private static double Headed(Sketch page, double left, double right, double y, string heading)
    {
        page.Words(left, y + 13, heading, 12, bold: true);
        page.Rule(left, right, y + 17, 0.7, Sketch.Black);
        return y + Heading;
    }
}
