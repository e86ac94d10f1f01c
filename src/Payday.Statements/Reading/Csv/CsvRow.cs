namespace Payday.Statements.Reading.Csv;

/// <summary>A row of a file.</summary>
/// <param name="Line">The line of the file where it begins, from 1.</param>
/// <param name="Cells">Its cells, without blanks around them.</param>
internal sealed record CsvRow(int Line, string[] Cells)
{
    /// <summary>A cell; empty past the row's end.</summary>
    public string this[int column] => column < Cells.Length ? Cells[column] : "";

    /// <summary>How many cells have something in them.</summary>
    public int Filled => Cells.Count(cell => cell.Length > 0);
}
