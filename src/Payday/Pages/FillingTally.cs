using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Drawing;
using Payday.Slips;
using Payday.Text;

namespace Payday.Pages;

/// <summary>Where the notes of a filling sheet come from, value by value: they are those in the pots.</summary>
internal sealed class FillingTally
{
    private const double Gap = 1;
    private readonly ImmutableArray<FillingTotal> totals;
    private readonly FillingSheetData data;
    private readonly double size;
    private readonly ImmutableArray<NoteLine> values;
    private readonly double label;
    private readonly ImmutableArray<double> notes;
    private readonly double amount;

    /// <summary>Measures it.</summary>
    public FillingTally(ImmutableArray<FillingTotal> totals, FillingSheetData data, double size, double leading)
    {
        (this.data, this.size) = (data, size);
        RowHeight = size * leading;

        // What there is comes first here, and what it comes to in the pots last.
        this.totals = [.. totals[1..], totals[0]];
        values = NoteCounts.ByValue(totals.SelectMany(total => total.Notes));
        label = totals.Max(total => Width(total.Label)) + Sketch.BoxOf(size) + (Gap * size * 0.5);
        notes =
        [
            .. values.Select(value => (Gap * size) + totals.Select(total => Width(NoteCounts.Number(NoteCounts.Of(value.Value, total.Notes), data.Style)))
                .Append(Width(NoteCounts.Name(value.Value, data.Style))).Max()),
        ];
        amount = (Gap * size) + totals.Select(total => Width(total.Amount.ToString(data.Style))).Append(Width(data.Currency.Code)).Max();
    }

    /// <summary>Whether there is no note at all.</summary>
    public bool IsEmpty => values.IsEmpty;

    /// <summary>How wide it is.</summary>
    public double Across => IsEmpty ? 0 : label + notes.Sum() + amount;

    /// <summary>How high it is.</summary>
    public double Height => (size * 2) + (RowHeight * totals.Length);

    private double RowHeight { get; }

    /// <summary>Draws it.</summary>
    public void Draw(Sketch page, double y)
    {
        double head = y + (size * 1.5);
        page.Words(page.Left, head, "Notes", size, bold: true);
        foreach ((NoteLine value, double right) in Placed(page))
        {
            page.Ending(right, head, NoteCounts.Name(value.Value, data.Style), size, bold: true);
        }

        page.Ending(page.Left + Across, head, data.Currency.Code, size, shade: Sketch.Quiet);
        page.Rule(page.Left, page.Left + Across, y + (size * 2), 1, Sketch.Black);
        double top = y + (size * 2);
        foreach (FillingTotal total in totals)
        {
            bool last = total == totals[^1];
            double line = top + (RowHeight / 2) + (size * 0.33);
            if (last)
            {
                page.Rule(page.Left, page.Left + Across, top, 1, Sketch.Black);
            }
            else
            {
                page.Box(page.Left, line, size);
            }

            page.Words(page.Left + Sketch.BoxOf(size) + (size * 0.5), line, total.Label, size, bold: last);
            foreach ((NoteLine value, double right) in Placed(page))
            {
                if (NoteCounts.Of(value.Value, total.Notes) is > 0 and var count)
                {
                    page.Ending(right, line, NoteCounts.Number(count, data.Style), size, bold: last);
                }
            }

            page.Ending(page.Left + Across, line, total.Amount.ToString(data.Style), size, bold: last);
            top += RowHeight;
        }
    }

    private IEnumerable<(NoteLine Value, double Right)> Placed(Sketch page)
    {
        double right = page.Left + label;
        for (int i = 0; i < values.Length; i++)
        {
            right += notes[i];
            yield return (values[i], right);
        }
    }

    private double Width(string words) => TypeWidths.Of(words, size, isBold: true);
}
