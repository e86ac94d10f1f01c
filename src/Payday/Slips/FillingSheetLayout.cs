using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Text;

namespace Payday.Slips;

/// <summary>Lays out the filling sheet: which notes go into which pot for which week.</summary>
/// <remarks>Paper of 60 columns or more gets a grid with a column for each note, if the notes fit; other paper a block for each pot and week.</remarks>
internal static class FillingSheetLayout
{
    private const int NarrowestGrid = 60;

    /// <summary>The sheet on paper.</summary>
    /// <param name="data">What it says.</param>
    /// <param name="width">Columns of the paper, 32 to 80.</param>
    /// <exception cref="ArgumentException">The notes in the pots are not those that are there (see <see cref="FillingSheetCheck"/>).</exception>
    /// <exception cref="ArgumentOutOfRangeException">No paper is so wide or narrow.</exception>
    /// <exception cref="InvalidOperationException">A note is of another currency.</exception>
    /// <exception cref="OverflowException">A total doesn't fit 64 bits.</exception>
    public static Paper Lay(FillingSheetData data, int width)
    {
        ArgumentNullException.ThrowIfNull(data);
        PaperParts.ThrowIfNoWidth(width);
        if (!FillingSheetCheck.Differences(data).IsEmpty)
        {
            throw new ArgumentException("The notes in the pots are not the notes that are there.", nameof(data));
        }

        ImmutableArray<string> head = PaperParts.Head(data.AsReceived ? "Filling sheet, notes as given" : "Filling sheet", data.Date, data.HeadLines, width);
        ImmutableArray<FillingTotal> totals = FillingTotal.Of(data);
        if (totals.All(total => total.Notes.IsEmpty))
        {
            return new Paper(head, [["No notes to fill in."], .. Loose(data, width), .. KeptBack(data, width), .. ToPay(data, width)]);
        }

        TextTable grid = FillingGrid.Table(data, totals);
        if (width < NarrowestGrid || grid.NarrowestWidth > width)
        {
            return new Paper(head, [.. FillingBlocks.Lay(data, totals, width), .. Loose(data, width), .. KeptBack(data, width), .. ToPay(data, width), PaperParts.AtHome(width)]);
        }

        TextTableLines lines = grid.Lay(width);
        return new Paper(
            [.. head, .. lines.Header],
            [.. lines.Rows.Select(row => ImmutableArray.Create(row)), lines.Totals, .. Loose(data, width), .. KeptBack(data, width), .. ToPay(data, width), PaperParts.AtHome(width)]);
    }

    private static ImmutableArray<ImmutableArray<string>> Loose(FillingSheetData data, int width) =>
        data.LooseOf.Length == 0 ? [] : [["", .. TextWrap.Lines(CleanText.OneLine(data.LooseOf), width)]];

    private static ImmutableArray<ImmutableArray<string>> ToPay(FillingSheetData data, int width) => data.ToPay.IsEmpty
        ? []
        : [["", .. data.ToPay.SelectMany(line => TextWrap.Lines(PaperParts.ToPay(line, data.Style), width))]];

    private static ImmutableArray<ImmutableArray<string>> KeptBack(FillingSheetData data, int width)
    {
        ImmutableArray<KeptBackLine> lines = [.. data.KeptBack.Where(line => !line.Amount.IsZero)];
        if (lines.IsEmpty)
        {
            return [];
        }

        var table = new TextTable(
            [new TextColumn("") { Shrinks = true, Grows = true, MinWidth = 1 }, new TextColumn("", Align.Right)],
            [.. lines.Select(line => ImmutableArray.Create(line.Pot, line.Amount.ToString(data.Style)))],
            [["Total", Money.Sum(lines.Select(line => line.Amount), data.Currency).ToString(data.Style)]]);
        TextTableLines laid = table.Lay(width);
        return [["", .. TextWrap.Lines("Not in notes: in the account for the next fill", width), .. lines.Length > 1 ? laid.All : laid.Rows]];
    }
}
