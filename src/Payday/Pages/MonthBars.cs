using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Histories;
using Payday.Drawing;
using Payday.Reports;

namespace Payday.Pages;

/// <summary>What came in and what went out, two columns a month.</summary>
internal static class MonthBars
{
    private const double Small = 8.5;
    private const double OutShade = 0.45;
    private const double Widest = 16;

    /// <summary>Draws them between two heights.</summary>
    public static void Draw(Sketch page, double left, double right, double top, double bottom, PeriodReport report)
    {
        double legend = top + Small;
        Swatch(page, left, legend, isOut: false);
        double end = page.Words(left + 12, legend, "came in", Small);
        Swatch(page, end + 12, legend, isOut: true);
        page.Words(end + 24, legend, "went out", Small);
        double from = top + (Small * 2.2);
        double to = bottom - (Small * 1.5);
        Scale scale = Scale.Of([.. report.Months.SelectMany(month => new[] { month.Flow.CameIn, month.Flow.WentOut })]);
        double begin = ScaleLines.Draw(page, left, right, from, to, scale, report.Style);
        double each = (right - begin) / report.Months.Length;
        double wide = Math.Min(Widest, each * 0.36);
        double Height(Money amount) => to - ((to - from) * scale.Share(amount));
        double zero = Height(Money.Zero(report.Currency));
        for (int i = 0; i < report.Months.Length; i++)
        {
            MonthFlow month = report.Months[i];
            double middle = begin + ((i + 0.5) * each);
            Column(page, middle - wide - 0.5, wide, zero, Height(month.Flow.CameIn), isOut: false);
            Column(page, middle + 0.5, wide, zero, Height(month.Flow.WentOut), isOut: true);
            string name = month.Month.ToString("MMM", CultureInfo.InvariantCulture);
            page.Centred(middle, bottom - 1, TypeWidths.Of(name, Small) > each - 1 ? name[..1] : name, Small);
        }
    }

    private static void Column(Sketch page, double x, double wide, double zero, double end, bool isOut)
    {
        double high = Math.Abs(zero - end);
        if (high < 0.1)
        {
            return;
        }

        if (isOut)
        {
            page.Area(x, Math.Min(zero, end), wide, high, OutShade);
        }
        else
        {
            page.Area(x, Math.Min(zero, end), wide, high, 1);
            page.Outline(x + 0.35, Math.Min(zero, end) + 0.35, Math.Max(0.1, wide - 0.7), Math.Max(0.1, high - 0.35), 0.7);
        }
    }

    private static void Swatch(Sketch page, double x, double line, bool isOut) => Column(page, x, 8, line, line - 7, isOut);
}
