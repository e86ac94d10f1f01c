using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Drawing;
using Payday.Reports;
using Payday.Text;

namespace Payday.Pages;

/// <summary>Where the money of a period went: a bar for each purpose, and a post where the usual is.</summary>
internal sealed class ReportBars
{
    private const double Size = 10;
    private const double Small = 8.5;
    private const double Gap = 10;
    private const double LongestName = 150;
    private const double ShortestBar = 60;
    private const double BarShade = 0.62;
    private readonly PeriodReport report;
    private readonly ImmutableArray<WentRow> rows;
    private readonly Money most;

    /// <summary>Chooses the rows.</summary>
    /// <param name="report">The report.</param>
    /// <param name="room">How many rows there is room for beside the total; what goes beyond is taken together.</param>
    public ReportBars(PeriodReport report, int room)
    {
        this.report = report;
        ImmutableArray<WentRow> all = report.Went.Rows;
        rows = all.Length <= room ? all : [.. all[..(room - 1)], Together(all[(room - 1)..])];
        most = rows.IsEmpty ? Money.Zero(report.Currency) : rows.Max(row => Money.Max(row.Amount, row.Beside ?? row.Amount));
    }

    /// <summary>How many rows it takes, with the total.</summary>
    public int Rows => rows.Length + 1;

    /// <summary>Draws what bars and posts are, before some end of a line.</summary>
    public void Legend(Sketch page, double right, double line)
    {
        if (!HasBeside)
        {
            return;
        }

        string post = report.Period.IsYear ? $"the same months of {report.BesideName}" : "usual: the middle one of the months before";
        double x = right - TypeWidths.Of(post, Small);
        page.Words(x, line, post, Small, shade: Sketch.Quiet);
        page.Post(x - 6, line - 8, line + 1, 1.6, Sketch.Black);
        x -= 22 + TypeWidths.Of(report.Period.Name, Small);
        page.Words(x, line, report.Period.Name, Small, shade: Sketch.Quiet);
        page.Area(x - 18, line - 6, 14, 6, BarShade);
    }

    private bool HasBeside => report.Went.Rows.Any(row => row.Beside is not null) || report.Went.Total.Beside is not null;

    /// <summary>Draws them.</summary>
    /// <returns>Where they end.</returns>
    public double Draw(Sketch page, double y, double height)
    {
        if (rows.IsEmpty)
        {
            page.Words(page.Left, y + Size, "Nothing went out.", Size);
            return y + (2 * height);
        }

        WentRow[] all = [.. rows, report.Went.Total];
        double amounts = all.Max(row => TypeWidths.Of(row.Amount.ToString(report.Style), Size, isBold: true));
        double asides = HasBeside ? Math.Max(TypeWidths.Of(report.BesideName, Size), all.Max(row => row.Beside is { } other ? TypeWidths.Of(other.ToString(report.Style), Size, isBold: true) : 0)) + Gap : 0;
        double room = page.Right - page.Left - amounts - asides - (2 * Gap);
        double names = Math.Min(Math.Min(LongestName, Math.Max(40, room - ShortestBar)), all.Max(row => TypeWidths.Of(CleanText.OneLine(row.Name), Size, isBold: true)));
        double from = page.Left + names + amounts + (2 * Gap);
        double to = page.Right - asides;
        foreach (WentRow row in all)
        {
            bool total = row == all[^1];
            double line = y + (height * 0.5) + (Size * 0.35);
            if (total)
            {
                page.Rule(page.Left, page.Right, y, 0.7, Sketch.Black);
            }

            page.Words(page.Left, line, row.Name, Size, total, room: names);
            page.Ending(page.Left + names + Gap + amounts, line, row.Amount.ToString(report.Style), Size, total);
            if (row.Beside is { } other)
            {
                page.Ending(page.Right, line, other.ToString(report.Style), Size, total, total ? Sketch.Black : Sketch.Quiet);
            }

            if (!total)
            {
                Bar(page, y, height, from, to, row);
            }

            y += height;
        }

        return y;
    }

    private void Bar(Sketch page, double y, double height, double from, double to, WentRow row)
    {
        double Share(Money amount) => most.IsPositive && amount.IsPositive ? (double)amount.MinorUnits / most.MinorUnits : 0;
        double thick = height * 0.52;
        double top = y + ((height - thick) / 2);
        page.Rule(from, to, y + height, 0.3);
        if (row.Amount.IsPositive)
        {
            page.Area(from, top, Math.Max(0.6, (to - from) * Share(row.Amount)), thick, BarShade);
        }

        if (row.Beside is { } usual)
        {
            page.Post(from + ((to - from) * Share(usual)), top - 2, top + thick + 2, 1.6, Sketch.Black);
        }
    }

    // Of what is held against them only where it can be said of all.
    private WentRow Together(ImmutableArray<WentRow> rest) => new(
        $"{"other".ToQuantity(rest.Length)}",
        Money.Sum(rest.Select(row => row.Amount), report.Currency),
        rest.All(row => row.Beside is not null) ? Money.Sum(rest.Select(row => row.Beside!.Value), report.Currency) : null,
        null);
}
