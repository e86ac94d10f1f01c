using System.Collections.Immutable;
using Payday.Drawing;
using Payday.Reports;

namespace Payday.Pages;

/// <summary>The four figures of a report, large and beside each other.</summary>
internal static class ReportFigures
{
    private const double Label = 10.5;
    private const double Largest = 20;
    private const double Beside = 9.5;
    private const double Gap = 12;

    /// <summary>Draws them.</summary>
    /// <returns>Where they end.</returns>
    public static double Draw(Sketch page, double y, PeriodReport report)
    {
        ImmutableArray<string>[] figures = [.. PeriodReportText.Figures(report)];
        double each = (page.Right - page.Left + Gap) / figures.Length;
        double figure = Fitting(figures.Select(cells => cells[1]), each - Gap, Largest, bold: true);
        double beside = Fitting(figures.Select(cells => cells[2]), each - Gap, Beside, bold: false);
        for (int i = 0; i < figures.Length; i++)
        {
            double x = page.Left + (i * each);
            page.Words(x, y + 14, i == 0 ? $"{figures[i][0]}, {report.Currency.Code}" : figures[i][0], Label);
            page.Words(x, y + 14 + (Largest * 1.1), figures[i][1], figure, bold: true);
            page.Words(x, y + 14 + (Largest * 1.1) + 15, figures[i][2], beside, shade: Sketch.Quiet);
        }

        return y + 14 + (Largest * 1.1) + (figures.Any(cells => cells[2].Length > 0) ? 19 : 4);
    }

    // An amount is never cut: it gets smaller.
    private static double Fitting(IEnumerable<string> words, double room, double most, bool bold)
    {
        double widest = words.Max(text => TypeWidths.Of(text, 1, bold));
        return widest == 0 ? most : Math.Min(most, room / widest);
    }
}
