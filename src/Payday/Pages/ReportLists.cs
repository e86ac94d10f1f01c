using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Drawing;
using Payday.Reports;
using Payday.Text;

namespace Payday.Pages;

/// <summary>What is set aside, and what is due next with a box to tick: lists that take what goes beyond their room together.</summary>
internal static class ReportLists
{
    private const double Size = 10;
    private const double Gap = 8;

    /// <summary>Draws what is set aside.</summary>
    public static void SetAside(Sketch page, double left, double right, double y, double height, int rows, PeriodReport report) => List(
        page, left, right, y, height, rows, report, "Nothing is set aside.",
        [.. report.SetAside.Select(line => new Line(line.Name, line.Has, line.Next is { } next ? DateText.Short(next.Date) : "", IsToTick: false))]);

    /// <summary>Draws what is due.</summary>
    public static void Dues(Sketch page, double left, double right, double y, double height, int rows, PeriodReport report) => List(
        page, left, right, y, height, rows, report, "Nothing is due.",
        [.. report.Dues.Select(due => new Line(due.Name, due.Amount, DateText.Weekday(due.Date), IsToTick: true))]);

    private static void List(Sketch page, double left, double right, double y, double height, int room, PeriodReport report, string nothing, ImmutableArray<Line> lines)
    {
        if (lines.IsEmpty)
        {
            page.Words(left, y + Size, nothing, Size);
            return;
        }

        // One for the sum of all.
        ImmutableArray<Line> shown = lines.Length < room ? lines : [.. lines[..(room - 2)], Together(lines[(room - 2)..], report.Currency)];
        Line sum = new("Together", Money.Sum(lines.Select(line => line.Amount), report.Currency), "", IsToTick: false);
        bool ticks = lines[0].IsToTick;
        double days = shown.Max(line => TypeWidths.Of(line.Day, Size)) + Gap;
        double amounts = TypeWidths.Of(shown.Append(sum).Select(line => line.Amount.ToString(report.Style)).MaxBy(text => TypeWidths.Of(text, Size))!, Size, isBold: true) + Gap;
        double begin = left + (ticks ? Sketch.BoxOf(Size) + 5 : 0);
        double name = begin + (ticks ? days : 0);
        foreach (Line line in shown.Append(sum))
        {
            bool total = line == sum;
            double at = y + (height * 0.5) + (Size * 0.35);
            if (line != shown[0])
            {
                page.Rule(left, right, y, total ? 0.7 : 0.3, total ? Sketch.Black : Sketch.Hairline);
            }

            if (line.IsToTick)
            {
                page.Box(left, at, Size);
            }

            page.Words(ticks ? begin : right - amounts - days + Gap, at, line.Day, Size, shade: ticks ? Sketch.Black : Sketch.Quiet);
            page.Words(name, at, line.Name, Size, total, room: right - amounts - (ticks ? 0 : days) - name);
            page.Ending(right, at, line.Amount.ToString(report.Style), Size, total);
            y += height;
        }
    }

    private static Line Together(ImmutableArray<Line> rest, Currency currency) =>
        new($"{rest.Length} {(rest[0].IsToTick ? "later" : "others")}", Money.Sum(rest.Select(line => line.Amount), currency), "", IsToTick: false);

    private sealed record Line(string Name, Money Amount, string Day, bool IsToTick);
}
