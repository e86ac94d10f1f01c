using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Drawing;
using Payday.Slips;

namespace Payday.Pages;

/// <summary>The notes of a slip in a size of type: value, count and amount, each with a box.</summary>
internal sealed class SlipTable
{
    private const double Gap = 1.2;
    private readonly SlipData data;
    private readonly ImmutableArray<NoteLine> lines;
    private readonly double size;
    private readonly double note;
    private readonly double count;
    private readonly double amount;

    /// <summary>Measures it.</summary>
    public SlipTable(SlipData data, ImmutableArray<NoteLine> lines, double size)
    {
        (this.data, this.lines, this.size) = (data, lines, size);
        note = lines.Select(line => Width(NoteCounts.Name(line.Value, data.Style))).Append(Width("Total")).Append(Width("Note")).Max();
        count = lines.Select(line => Width(NoteCounts.Number(line.Count, data.Style))).Append(Width(All)).Append(Width("Count")).Max();
        amount = Math.Max(Width(NoteCounts.Worth(lines, data.Currency).ToString(data.Style)), Width(AmountHead));
    }

    /// <summary>How wide it is at least.</summary>
    public double Across => Sketch.BoxOf(size) + note + count + amount + (3.5 * Gap * size);

    /// <summary>From row to row.</summary>
    public double RowHeight => size * 1.75;

    private string AmountHead => $"Amount {data.Currency.Code}";

    private string All => NoteCounts.Number(lines.Sum(line => line.Count), data.Style);

    /// <summary>Draws what stands above the rows.</summary>
    public void Head(Sketch page, double y, double wide)
    {
        Cells(page, y, wide, "Note", "Count", AmountHead, bold: true);
        page.Rule(page.Left, page.Left + wide, y + RowHeight, 1, Sketch.Black);
    }

    /// <summary>Draws the notes of a value.</summary>
    public void Row(Sketch page, double y, double wide, NoteLine line)
    {
        page.Box(page.Left, y + (size * 1.2), size);
        page.Centred(page.Left + NoteEnd + (Gap * size * 0.75), y + (size * 1.2), "\u00D7", size);
        Cells(page, y, wide, NoteCounts.Name(line.Value, data.Style), NoteCounts.Number(line.Count, data.Style), line.Amount.ToString(data.Style), bold: false);
        page.Rule(page.Left, page.Left + wide, y + RowHeight);
    }

    /// <summary>Draws the total.</summary>
    public void Total(Sketch page, double y, double wide)
    {
        page.Rule(page.Left, page.Left + wide, y, 1, Sketch.Black);
        Cells(page, y, wide, "Total", All, NoteCounts.Worth(lines, data.Currency).ToString(data.Style), bold: true);
    }

    private double NoteEnd => Sketch.BoxOf(size) + (Gap * size) + note;

    private void Cells(Sketch page, double y, double wide, string first, string second, string third, bool bold)
    {
        double line = y + (size * 1.2);
        page.Ending(page.Left + NoteEnd, line, first, size, bold);
        page.Ending(page.Left + NoteEnd + (1.5 * Gap * size) + count, line, second, size, bold);
        page.Ending(page.Left + wide, line, third, size, bold);
    }

    private double Width(string words) => TypeWidths.Of(words, size, isBold: true);
}
