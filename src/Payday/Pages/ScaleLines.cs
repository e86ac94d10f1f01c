using Payday.Core.Amounts;
using Payday.Drawing;
using Payday.Slips;

namespace Payday.Pages;

/// <summary>The lines of a chart's scale, with their amounts at the left.</summary>
internal static class ScaleLines
{
    private const double Small = 8.5;

    /// <summary>Draws them.</summary>
    /// <returns>Where the chart itself begins.</returns>
    public static double Draw(Sketch page, double left, double right, double top, double bottom, Scale scale, NumberStyle style)
    {
        (Money Amount, string Name)[] lines = [.. scale.Lines.Select(amount => (amount, NoteCounts.Name(amount, style)))];
        double names = lines.Max(line => TypeWidths.Of(line.Name, Small));
        double begin = left + names + 5;
        foreach ((Money amount, string name) in lines)
        {
            double y = bottom - ((bottom - top) * scale.Share(amount));
            page.Ending(left + names, y + (Small * 0.35), name, Small, shade: Sketch.Quiet);
            page.Rule(begin, right, y, amount.IsZero ? 0.7 : 0.4, amount.IsZero ? Sketch.Black : 0.8);
        }

        return begin;
    }
}
