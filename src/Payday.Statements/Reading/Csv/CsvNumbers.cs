using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>A column read as amounts with one decimal mark.</summary>
/// <param name="column">The column, from 0.</param>
/// <param name="mark">The decimal mark.</param>
/// <param name="cells">Its cells, a row each.</param>
internal sealed class CsvNumbers(int column, char mark, AmountReading[] cells)
{
    // As with dates: one odd cell among many is a damaged line.
    private const int LeastReadable = 95;

    /// <summary>The column, from 0.</summary>
    public int Column { get; } = column;

    /// <summary>The decimal mark.</summary>
    public char Mark { get; } = mark;

    /// <summary>Its cells, a row each.</summary>
    public AmountReading[] Cells { get; } = cells;

    /// <summary>How many cells are amounts.</summary>
    public int Count { get; } = cells.Count(cell => cell.Ok);

    /// <summary>Whether nearly all cells that have something are amounts.</summary>
    public bool Fits { get; } = cells.Any(cell => cell.Ok)
        && cells.Count(cell => cell.Ok) * 100 >= cells.Count(cell => cell.State != AmountState.Missing) * LeastReadable;

    /// <summary>Whether nearly every row has an amount.</summary>
    public bool IsFull => Count * 100 >= Cells.Length * LeastReadable;

    /// <summary>Whether an amount is below zero.</summary>
    public bool HasNegative => Array.Exists(Cells, cell => cell.MinorUnits < 0);

    /// <summary>The amount of a row, zero where it has none.</summary>
    public long this[int row] => Cells[row].MinorUnits;

    /// <summary>A column of rows.</summary>
    public static CsvNumbers Of(IReadOnlyList<CsvRow> rows, int column, char mark, int decimals)
    {
        var cells = new AmountReading[rows.Count];
        for (int i = 0; i < cells.Length; i++)
        {
            cells[i] = AmountText.Read(rows[i][column], mark, decimals);
        }

        return new CsvNumbers(column, mark, cells);
    }
}
