namespace Payday.Printing;

/// <summary>How lines of one width stand on a page.</summary>
/// <param name="FontSize">In points, at most 12, or 18 in large print.</param>
/// <param name="LineHeight">From line to line, in points.</param>
/// <param name="Margin">On all sides, in points.</param>
/// <param name="LinesPerPage">How many lines a page holds.</param>
internal readonly record struct PdfMeasure(double FontSize, double LineHeight, double Margin, int LinesPerPage)
{
    // Every character of Courier is 600 thousandths of the font size wide (Adobe font metrics).
    private const double CharacterWidth = 0.6;
    private const double LargestFont = 12;
    private const double Leading = 1.2;

    /// <summary>The width of a column in a size of Courier, in points.</summary>
    public static double WidthOf(double fontSize) => CharacterWidth * fontSize;

    /// <summary>The largest font, up to 12 points or those of large print, in which so many columns fit the paper between its margins.</summary>
    /// <param name="size">The paper.</param>
    /// <param name="columns">Columns of the widest line, 1 or more.</param>
    /// <param name="print">How large the print is.</param>
    public static PdfMeasure For(PaperSize size, int columns, PrintSize print = PrintSize.Usual)
    {
        ArgumentNullException.ThrowIfNull(size);
        ArgumentOutOfRangeException.ThrowIfLessThan(columns, 1);

        double margin = size.Margin;
        double font = Math.Min(print == PrintSize.Large ? PrintSizes.LargePoints : LargestFont, (size.Width - (2 * margin)) / (CharacterWidth * columns));
        double line = font * Leading;
        return new PdfMeasure(font, line, margin, (int)((size.Height - (2 * margin)) / line));
    }
}
