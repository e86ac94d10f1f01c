using CsvHelper;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>Splits a text into rows and cells by one separator.</summary>
internal static class CsvCells
{
    /// <summary>The rows, empty ones left out; null where there are more rows or cells than are read.</summary>
    public static List<CsvRow>? Rows(string text, char separator)
    {
        List<CsvRow>? rows = Read(text, separator, manyLines: true, out bool isOpen);

        // A quote that is never closed would take all the lines after it into its cell.
        return isOpen ? Read(text, separator, manyLines: false, out _) : rows;
    }

    private static List<CsvRow>? Read(string text, char separator, bool manyLines, out bool isOpen)
    {
        var rows = new List<CsvRow>();
        bool open = false;
        int cells = 0;
        try
        {
            using CsvReader reader = CsvReader.FromText(text, new CsvReaderOptions
            {
                Separator = separator,
                HasHeader = false,
                TrimWhitespace = true,
                TrimInsideQuotes = true,
                TrackLineNumbers = true,
                PoolStrings = true,
                MaxRecordSize = ReadingLimits.MostRowBytes,
                AllowLineBreaksInQuotes = manyLines,
                OnMalformedRecord = record => open |= record.Reason == CsvMalformedReason.UnterminatedQuote,
            });
            while (reader.Read())
            {
                int count = Math.Min(reader.FieldCount, ReadingLimits.MostColumns);
                cells += count;
                if (rows.Count >= ReadingLimits.MostLines || cells > ReadingLimits.MostCells)
                {
                    isOpen = false;
                    return null;
                }

                string[] row = new string[count];
                for (int i = 0; i < count; i++)
                {
                    row[i] = reader.GetString(i);
                }

                rows.Add(new CsvRow((int)reader.LineNumber, row));
            }
        }
        catch (CsvFormatException)
        {
            // A row larger than any statement's: what came before it stands, and the reader tells that no more can be found.
            open = manyLines;
        }

        isOpen = open;
        return rows;
    }
}
