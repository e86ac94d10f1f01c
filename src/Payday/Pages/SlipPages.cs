using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Drawing;
using Payday.Printing;
using Payday.Slips;
using Payday.Text;

namespace Payday.Pages;

/// <summary>A slip drawn: the notes by value, each with a box, and the total.</summary>
internal static class SlipPages
{
    private const double LargestUsual = 12;
    private const double LeastUsual = 9;
    private const double Step = 0.5;

    // So that note, count and amount aren't too far apart for the eye on a full sheet.
    private const double WidestTable = 30;

    /// <summary>The pages.</summary>
    /// <param name="data">What it says.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="print">How large the print is.</param>
    /// <returns>Null where the sums are too long for the paper's width; then the slip is to be laid out as text.</returns>
    public static ImmutableArray<DrawnPage>? Draw(SlipData data, PaperSize paper, PrintSize print)
    {
        ArgumentNullException.ThrowIfNull(data);
        ArgumentNullException.ThrowIfNull(paper);
        (double most, double least) = print == PrintSize.Large ? (PrintSizes.LargePoints, PrintSizes.LeastLarge) : (LargestUsual, LeastUsual);
        ImmutableArray<DrawnPage>? fitting = null;
        for (double size = most; size >= least; size -= Step)
        {
            if (Draw(data, paper, size) is { } pages && (fitting is null || pages.Length < fitting.Value.Length))
            {
                fitting = pages;
            }
        }

        return fitting;
    }

    private static ImmutableArray<DrawnPage>? Draw(SlipData data, PaperSize paper, double size)
    {
        double room = paper.Width - (2 * paper.Margin);
        ImmutableArray<NoteLine> lines = NoteCounts.ByValue(data.Lines);
        var table = new SlipTable(data, lines, size);
        double wide = Math.Min(room, WidestTable * size);
        if (table.Across > wide)
        {
            return null;
        }

        SlipWords words = SlipWords.Of(data, lines);
        var pages = new PageFlow(() => new Sketch(paper.Width, paper.Height, paper.Margin), page => SheetTitle.Draw(page, words.Title, data.Date, data.HeadLines, size), size * 1.6);
        if (lines.IsEmpty)
        {
            pages.Paragraph(words.Nothing, room, size);
        }
        else
        {
            foreach ((string sentence, bool isToTick) in words.Before)
            {
                pages.Paragraph(sentence, wide, size, isToTick);
            }

            pages.Keep(table.RowHeight * Math.Min(lines.Length + 2, 6));
            pages.Take(table.RowHeight, (page, y) => table.Head(page, y, wide));
            foreach (NoteLine line in lines)
            {
                pages.Take(table.RowHeight, (page, y) => table.Row(page, y, wide, line));
            }

            pages.Take(table.RowHeight * 1.6, (page, y) => table.Total(page, y, wide));
            foreach (string sentence in words.After)
            {
                pages.Paragraph(sentence, wide, size);
            }
        }

        return pages.Finished((page, number, of) => page.Ending(
            page.Right, page.Bottom - (size * 0.2), string.Create(CultureInfo.InvariantCulture, $"Page {number} of {of}"), size, shade: Sketch.Quiet));
    }
}
