namespace Payday.Statements.Reading.Csv;

/// <summary>Whether the decimal mark of a reading can be seen in the cells.</summary>
internal static class CsvMarks
{
    /// <summary>Whether a cell has one or two figures behind the mark, or no cell has any mark: <c>1.234</c> all through says nothing.</summary>
    public static bool IsPlain(CsvGrid grid, CsvReading reading)
    {
        bool anyMark = false;
        foreach (CsvRow row in grid.Rows)
        {
            if (IsPlain(row[reading.Columns.Amount], reading.Mark, ref anyMark)
                || (reading.Columns.Out is { } column && IsPlain(row[column], reading.Mark, ref anyMark)))
            {
                return true;
            }
        }

        return !anyMark;
    }

    private static bool IsPlain(string cell, char mark, ref bool anyMark)
    {
        int at = cell.AsSpan().LastIndexOfAny('.', ',');
        anyMark |= at >= 0;
        return at >= 0 && cell[at] == mark && CountDigits(cell.AsSpan(at + 1)) is 1 or 2;
    }

    private static int CountDigits(ReadOnlySpan<char> text)
    {
        int end = text.IndexOfAnyExceptInRange('0', '9');
        return end < 0 ? text.Length : end;
    }
}
