using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Drawing;
using Payday.Printing;
using Payday.Slips;
using Payday.Text;
using Payday.Texts;

namespace Payday.Pages;

/// <summary>The filling sheet in one size of type on one way of laying the paper.</summary>
/// <param name="Size">Of the type, in points.</param>
/// <param name="Leading">From row to row, in that size.</param>
/// <param name="IsAcross">Whether the paper lies on its long side.</param>
/// <param name="Bands">How many tables the weeks take.</param>
/// <param name="Pages">The pages.</param>
internal sealed record FillingDraft(double Size, double Leading, bool IsAcross, int Bands, ImmutableArray<DrawnPage> Pages)
{
    private const double MostStretch = 1.35;

    /// <summary>Draws it.</summary>
    /// <param name="data">The sheet.</param>
    /// <param name="matrix">The same as a matrix.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="across">Whether it lies on its long side.</param>
    /// <param name="size">Of the type, in points.</param>
    /// <param name="leading">From row to row, in that size.</param>
    /// <returns>Null where not even one week fits the width.</returns>
    public static FillingDraft? Of(FillingSheetData data, FillingMatrix matrix, PaperSize paper, bool across, double size, double leading)
    {
        (int width, int height) = across ? (paper.Height, paper.Width) : (paper.Width, paper.Height);
        double room = width - (2 * paper.Margin);
        ImmutableArray<FillingBand>? bands = BandsOf(data, matrix, room, size, leading);
        if (bands is not { } fitting || TallyTable(data, size, leading).Across > room)
        {
            return null;
        }

        var pages = new PageFlow(() => new Sketch(width, height, paper.Margin), page => SheetTitle.Draw(page, data.AsReceived ? "Filling sheet, notes as given" : "Filling sheet", data.Date, data.HeadLines, size), size * 1.6);
        foreach (FillingBand band in fitting)
        {
            Lay(pages, band, Math.Min(room, band.Across * MostStretch));
        }

        if (fitting.IsEmpty)
        {
            pages.Take(size * 1.6, (page, y) => page.Words(page.Left, y + size, "No notes to fill in.", size));
        }

        Tally(pages, data, size, leading);
        Sentences(pages, data, room, size);
        return new FillingDraft(size, leading, across, fitting.Length, pages.Finished((page, number, of) => page.Ending(
            page.Right, page.Bottom - (size * 0.2), string.Create(CultureInfo.InvariantCulture, $"Page {number} of {of}"), size, shade: Sketch.Quiet)));
    }

    private static ImmutableArray<FillingBand>? BandsOf(FillingSheetData data, FillingMatrix matrix, double room, double size, double leading)
    {
        var bands = ImmutableArray.CreateBuilder<FillingBand>();
        ImmutableArray<int> left = [.. Enumerable.Range(0, matrix.Groups.Length)];
        while (!left.IsEmpty)
        {
            int many = left.Length;
            FillingBand band = new(data, matrix, left, size, leading);
            while (band.Across > room)
            {
                many--;
                if (many == 0)
                {
                    return null;
                }

                band = new FillingBand(data, matrix, left[..many], size, leading);
            }

            bands.Add(band);
            left = left[many..];
        }

        return bands.ToImmutable();
    }

    private static void Lay(PageFlow pages, FillingBand band, double wide)
    {
        void Head() => pages.Take(band.HeadHeight, (page, y) => band.Head(page, y, wide));
        pages.Keep(Math.Min(band.Height, pages.Room));
        Head();
        foreach (FillingMatrixRow row in band.Rows)
        {
            // The sums never stand alone under a head.
            if (pages.Turns(row == band.Rows[^1] ? 2 * band.RowHeight : band.RowHeight))
            {
                Head();
            }

            pages.Take(band.RowHeight, (page, y) => band.Row(page, y, wide, row));
        }

        pages.Take(band.RowHeight, (page, y) => band.Sums(page, y, wide));
        pages.Skip(band.RowHeight * 0.4);
    }

    // That the notes in the pots are those that are there, value by value.
    private static void Tally(PageFlow pages, FillingSheetData data, double size, double leading)
    {
        FillingTally table = TallyTable(data, size, leading);
        if (table.IsEmpty)
        {
            return;
        }

        pages.Keep(table.Height);
        pages.Take(table.Height + size, table.Draw);
    }

    private static FillingTally TallyTable(FillingSheetData data, double size, double leading) => new(FillingTotal.Of(data), data, size, leading);

    private static void Sentences(PageFlow pages, FillingSheetData data, double room, double size)
    {
        if (data.LooseOf.Length > 0)
        {
            pages.Paragraph(data.LooseOf, room, size);
        }

        KeptBackLine[] kept = [.. data.KeptBack.Where(line => !line.Amount.IsZero)];
        if (kept.Length > 0)
        {
            string total = kept.Length > 1 ? $" Together {Money.Sum(kept.Select(line => line.Amount), data.Currency).ToString(data.Style)}." : "";
            pages.Paragraph($"Not in notes, so it waits in the account for the same pot: {string.Join(", ", kept.Select(Kept))}.{total}", room, size);
        }

        foreach (KeptBackLine line in data.ToPay)
        {
            pages.Paragraph(PaperParts.ToPay(line, data.Style) + ".", room, size);
        }

        if (data.Rows.Length > 0)
        {
            pages.Paragraph(Cautions.Cash, room, size);
        }

        // An amount is never parted from its pot's name, and never cut.
        string Kept(KeptBackLine line) => (TypeWidths.Cut(CleanText.OneLine(line.Pot), room / 3, size) + " " + line.Amount.ToString(data.Style)).Replace(' ', '\u00A0');
    }
}
