namespace Payday.Statements.Reading.Csv;

/// <summary>Finds the separator: the one by which most rows have a date and an amount.</summary>
internal static class CsvSeparator
{
    private const string Hint = "sep=";

    private static readonly char[] Candidates = [';', '\t', ',', '|'];

    /// <summary>The table by the separator that a first line <c>sep=;</c> names, else by the one that fits the whole file best.</summary>
    /// <param name="text">All of the file.</param>
    /// <param name="tooLarge">Whether it has more rows or cells than are read.</param>
    public static CsvTable? Find(string text, out bool tooLarge)
    {
        tooLarge = false;
        CsvTable? best = null;
        int bestFit = 0;
        int lines = text.AsSpan().Count('\n') + 1;
        foreach (char candidate in Named(text) is { } named ? [named] : Candidates)
        {
            // A separator stands in most lines; preambles and cells of many lines leave room.
            if (text.AsSpan().Count(candidate) * 4 < lines)
            {
                continue;
            }

            if (CsvCells.Rows(text, candidate) is not { } rows)
            {
                tooLarge = true;
                continue;
            }

            (CsvTable? table, int fit) = CsvTable.Measured(rows);
            if (table is not null && fit > bestFit)
            {
                best = table;
                bestFit = fit;
            }
        }

        tooLarge &= best is null;
        return best;
    }

    private static char? Named(string text)
    {
        string trimmed = text.TrimStart('"', ' ', '\uFEFF');
        return trimmed.Length > Hint.Length && trimmed.StartsWith(Hint, StringComparison.OrdinalIgnoreCase) && Candidates.Contains(trimmed[Hint.Length])
            ? trimmed[Hint.Length]
            : null;
    }
}
