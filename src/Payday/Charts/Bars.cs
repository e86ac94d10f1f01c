using Payday.Core.Amounts;

namespace Payday.Charts;

/// <summary>Shares of a whole as bars of eighths of a column.</summary>
/// <remarks>Block elements (Unicode 17, U+2588 to U+258F) and a dot for each column that is empty; where only ASCII can be shown they fold to <c>#</c> and <c>.</c>, see <c>TextFold</c>.</remarks>
internal static class Bars
{
    /// <summary>A column of nothing.</summary>
    public const char Empty = '\u00B7';

    private const char Full = '\u2588';
    private const char Half = '\u258C';
    private const int Eighths = 8;

    /// <summary>Whether a character is a part of a bar or a chart of dots.</summary>
    public static bool IsPart(char one) => one is (>= '\u2588' and <= '\u258F') or (>= '\u2801' and <= '\u28FF') or Empty;

    /// <summary>Whether a character is drawn, not written: a part of a bar or a chart, or the line beside it.</summary>
    public static bool IsDrawn(char one) => IsPart(one) || one is >= '\u2500' and <= '\u257F';

    /// <summary>Whether a character is one of those that simple fonts lack: eighths of a block and patterns of dots.</summary>
    public static bool IsFine(char one) => one is (> Full and <= '\u258F' and not Half) or (>= '\u2801' and <= '\u28FF');

    /// <summary>A text with the eighths of its bars as halves, which simple fonts have.</summary>
    public static string InHalves(string text) => string.Create(text.Length, text, static (halves, eighths) =>
    {
        for (int i = 0; i < eighths.Length; i++)
        {
            halves[i] = eighths[i] is > Full and < Half ? Half : eighths[i] is > Half and <= '\u258F' ? Empty : eighths[i];
        }
    });

    /// <summary>A bar.</summary>
    /// <param name="part">What is there; below zero it counts as nothing, above the whole as the whole.</param>
    /// <param name="whole">What a full bar is; of nothing any part is full, and nothing is empty.</param>
    /// <param name="width">The columns of a full bar, above zero.</param>
    /// <returns>Exactly so many columns; an eighth where there is less than that and not nothing, and full only where the whole is there.</returns>
    public static string Of(Money part, Money whole, int width)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        long all = (long)width * Eighths;
        long filled = !part.IsPositive ? 0
            : part >= whole ? all
            : Math.Clamp((long)((Int128)part.MinorUnits * all / whole.MinorUnits), 1, all - 1);
        int columns = (int)(filled / Eighths);
        int rest = (int)(filled % Eighths);
        string end = rest == 0 ? "" : ((char)(Full + Eighths - rest)).ToString();
        return new string(Full, columns) + end + new string(Empty, width - columns - end.Length);
    }
}
