using System.Collections.Immutable;
using NodaTime;
using Payday.Drawing;
using Payday.Text;

namespace Payday.Pages;

/// <summary>What stands at the top of a slip or sheet: what it is, its day, and the person's own lines.</summary>
internal static class SheetTitle
{
    /// <summary>Draws it.</summary>
    /// <returns>Where it ends.</returns>
    public static double Draw(Sketch page, string title, LocalDate date, ImmutableArray<string> headLines, double size)
    {
        double y = page.Top + (size * 1.5);
        double end = page.Words(page.Left, y, title, size * 1.5, bold: true);
        string day = DateText.Long(date);
        if (end + size + TypeWidths.Of(day, size) > page.Right)
        {
            y += size * 1.6;
            page.Words(page.Left, y, day, size);
        }
        else
        {
            page.Ending(page.Right, y, day, size);
        }

        foreach (string line in headLines.SelectMany(line => TypeWidths.Wrap(CleanText.OneLine(line), page.Right - page.Left, size)))
        {
            y += size * 1.4;
            page.Words(page.Left, y, line, size);
        }

        return y + (size * 0.9);
    }
}
