using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Text;

namespace Payday.Charts;

/// <summary>Amounts over time as a line of dots, with the highest and lowest amount at its left.</summary>
/// <remarks>
/// A cell of a terminal has two by four dots of Braille patterns (Unicode 17, 21.1), U+2800 with one bit a dot. Where only ASCII
/// can be shown each cell folds to a sign of the same height, see <c>TextFold</c>.
/// </remarks>
internal static class LineChart
{
    private const char Blank = '\u2800';
    private const int DotsAcross = 2;
    private const int DotsDown = 4;

    // The bits of a cell's dots, from the top, the left column and the right one.
    private static readonly int[,] Bits = { { 0x01, 0x08 }, { 0x02, 0x10 }, { 0x04, 0x20 }, { 0x40, 0x80 } };

    /// <summary>Draws it.</summary>
    /// <param name="values">At least one amount, the earliest first.</param>
    /// <param name="width">The columns there are, the scale included.</param>
    /// <param name="height">How many lines, from 2.</param>
    /// <param name="style">How numbers are written.</param>
    /// <param name="most">The least that the scale goes up to, so that two charts can be held against each other; null for what the values need.</param>
    /// <param name="time">What the first and the last value are of, which stand under their ends in a line more; null for no such line.</param>
    /// <returns>The lines from top to bottom, at most as wide as asked.</returns>
    public static ImmutableArray<string> Lines(IReadOnlyList<Money> values, int width, int height, NumberStyle style, Money? most = null, (YearMonth First, YearMonth Last)? time = null)
    {
        ArgumentOutOfRangeException.ThrowIfZero(values.Count);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 2);
        Money nothing = Money.Zero(values[0].Currency);

        // From zero, so that the height of a line says how much it is; a scale that begins at the lowest would make any change look large.
        long top = Math.Max(values.Max().MinorUnits, most?.MinorUnits ?? 0);
        long bottom = Math.Min(values.Min().MinorUnits, 0);
        string[] scale = [Money.FromMinorUnits(top, nothing.Currency).ToString(style), Money.FromMinorUnits(bottom, nothing.Currency).ToString(style)];
        int margin = scale.Max(text => text.Length);
        int columns = Math.Max(1, width - margin - 2);
        int[,] cells = Cells(values, columns, height, top, bottom);
        return
        [
            .. Enumerable.Range(0, height).Select(row =>
                (row == 0 ? scale[0] : row == height - 1 ? scale[1] : "").PadLeft(margin) + " │"
                + string.Concat(Enumerable.Range(0, columns).Select(column => cells[row, column] == 0 ? ' ' : (char)(Blank + cells[row, column]))).TrimEnd()),
            .. time is { } ends ? [new string(' ', margin + 2) + TextColumns.Ends(Month(ends.First), ends.First == ends.Last ? "" : Month(ends.Last), columns).TrimEnd()] : Array.Empty<string>(),
        ];
    }

    private static string Month(YearMonth month) => month.ToString("MMM uuuu", CultureInfo.InvariantCulture);

    // A step at each value, joined to the next by a straight line: between two paydays nobody knows better.
    private static int[,] Cells(IReadOnlyList<Money> values, int columns, int rows, long top, long bottom)
    {
        int[,] cells = new int[rows, columns];
        int across = columns * DotsAcross;
        int down = rows * DotsDown;
        int before = -1;
        for (int x = 0; x < across; x++)
        {
            int y = Dot(At(values, x, across), top, bottom, down);
            int from = before < 0 ? y : before;
            for (int dot = Math.Min(from, y); dot <= Math.Max(from, y); dot++)
            {
                if (dot != from || from == y)
                {
                    cells[dot / DotsDown, x / DotsAcross] |= Bits[dot % DotsDown, x % DotsAcross];
                }
            }

            before = y;
        }

        return cells;
    }

    private static long At(IReadOnlyList<Money> values, int x, int across)
    {
        if (values.Count == 1 || across == 1)
        {
            return values[0].MinorUnits;
        }

        Int128 place = (Int128)x * (values.Count - 1);
        int left = (int)(place / (across - 1));
        if (left == values.Count - 1)
        {
            return values[left].MinorUnits;
        }

        Int128 part = place % (across - 1);
        Int128 step = (Int128)values[left + 1].MinorUnits - values[left].MinorUnits;
        return (long)(values[left].MinorUnits + (step * part / (across - 1)));
    }

    private static int Dot(long value, long top, long bottom, int down) => top == bottom
        ? down - 1
        : (int)(((Int128)top - value) * (down - 1) / ((Int128)top - bottom));
}
