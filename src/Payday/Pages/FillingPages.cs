using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Drawing;
using Payday.Printing;
using Payday.Slips;
using Payday.Text;
using Payday.Texts;

namespace Payday.Pages;

/// <summary>The filling sheet drawn to be read at a table: pots down, weeks and their notes across, a box for each envelope.</summary>
/// <remarks>
/// On one page in the largest type that lets it, upright or across. Where that would be too small, weeks go below one another, and pots on to
/// further pages.
/// </remarks>
internal static class FillingPages
{
    private const double LargestUsual = 13;
    private const double LeastUsual = 9;
    private const double LargeEnough = 10.5;
    private const double Step = 0.5;

    private const double Roomy = 1.75;
    private const double Tight = 1.4;
    private static readonly double[] Leadings = [Roomy, Tight];

    // Upright, and across.
    private static readonly bool[] Ways = [false, true];

    /// <summary>The pages.</summary>
    /// <param name="data">What the sheet says.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="print">How large the print is.</param>
    /// <returns>Null where not even one week fits the paper's width; then the sheet is to be laid out as text.</returns>
    public static ImmutableArray<DrawnPage>? Draw(FillingSheetData data, PaperSize paper, PrintSize print)
    {
        ArgumentNullException.ThrowIfNull(data);
        ArgumentNullException.ThrowIfNull(paper);
        var matrix = FillingMatrix.Of(data);
        FillingDraft[] drafts =
        [
            .. from size in Sizes(print)
               from leading in Leadings
               from across in Ways
               let draft = FillingDraft.Of(data, matrix, paper, across, size, leading)
               where draft is not null
               select draft,
        ];

        // Fewest pages; then all weeks beside each other; then upright where that reads well; then the largest type with its room.
        return drafts.OrderBy(draft => draft.Pages.Length).ThenBy(draft => draft.Bands)
            .ThenBy(draft => !(draft.Size >= LargeEnough && draft.Leading == Roomy && !draft.IsAcross)).ThenByDescending(draft => draft.Size * draft.Leading)
            .FirstOrDefault()?.Pages;
    }

    private static IEnumerable<double> Sizes(PrintSize print)
    {
        (double most, double least) = print == PrintSize.Large ? (PrintSizes.LargePoints, PrintSizes.LeastLarge) : (LargestUsual, LeastUsual);
        for (double size = most; size >= least; size -= Step)
        {
            yield return size;
        }
    }
}
