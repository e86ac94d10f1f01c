using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Histories;
using Payday.Drawing;
using Payday.Reports;

namespace Payday.Pages;

/// <summary>What is saved and what is owed at the end of each month, one above the other, each to a scale of its own.</summary>
internal static class MonthCurves
{
    private const double Small = 8.5;
    private const double Fill = 0.9;

    /// <summary>Draws them between two heights.</summary>
    public static void Draw(Sketch page, double left, double right, double top, double bottom, PeriodReport report)
    {
        (string Name, Func<MonthFlow, Money> Amount)[] curves =
        [
            .. new (string, Func<MonthFlow, Money>)[] { ("saved", month => month.Saved), ("owed", month => month.Owed) }
                .Where(curve => report.Curve.Any(month => !curve.Item2(month).IsZero)),
        ];
        if (report.Curve.Length < 2 || curves.Length == 0)
        {
            page.Words(left, top + Small, report.Curve.Length < 2 ? "Drawn from the second month on." : "Nothing saved, nothing owed.", Small, room: right - left);
            return;
        }

        double label = Small * 1.5;
        double each = (bottom - top - label) / curves.Length;
        for (int i = 0; i < curves.Length; i++)
        {
            Money[] amounts = [.. report.Curve.Select(curves[i].Amount)];
            double from = top + (i * each);
            page.Words(left, from + Small, $"{curves[i].Name} {amounts[^1].ToString(report.Style)}", Small, bold: true);
            Curve(page, left, right, from + (Small * 2.2), from + each - (i < curves.Length - 1 ? 10 : 3), amounts, report.Style);
        }

        string Month(MonthFlow month) => month.Month.ToString("MMM uuuu", CultureInfo.InvariantCulture);
        page.Ending(right, bottom - 1, Month(report.Curve[^1]), Small);
        page.Words(left + 30, bottom - 1, Month(report.Curve[0]), Small);
    }

    private static void Curve(Sketch page, double left, double right, double top, double bottom, Money[] amounts, NumberStyle style)
    {
        Scale scale = Scale.Of(amounts, 2);
        double begin = ScaleLines.Draw(page, left, right, top, bottom, scale, style);
        double Height(Money amount) => bottom - ((bottom - top) * scale.Share(amount));
        ImmutableArray<(double X, double Y)> points =
            [.. amounts.Select((amount, i) => (begin + ((right - 3 - begin) * i / (amounts.Length - 1)), Height(amount)))];
        double zero = Height(Money.Zero(scale.Step.Currency));
        page.Shape(Fill, [(points[0].X, zero), .. points, (points[^1].X, zero)]);
        page.Stroke(1.6, Sketch.Black, points);
        page.Area(points[^1].X - 2.5, points[^1].Y - 2.5, 5, 5, Sketch.Black);
    }
}
