namespace Payday.Printing;

/// <summary>The sizes of print in points.</summary>
/// <remarks>
/// Large print begins at 16 points in the guidance of the UK Association for Accessible Formats (<i>Creating clear print and large
/// print documents</i>), and at 18 in the American Printing House for the Blind's; clear print, for most readers, is 12. All from memory.
/// </remarks>
internal static class PrintSizes
{
    /// <summary>What large print never goes below.</summary>
    public const double LeastLarge = 16;

    /// <summary>Large print where there is room for it.</summary>
    public const double LargePoints = 18;

    /// <summary>The columns of Courier that large print has room for on a sheet.</summary>
    public static int Columns(PaperSize sheet) => (int)((sheet.Width - (2 * sheet.Margin)) / PdfMeasure.WidthOf(LeastLarge));
}
