using System.Collections.Immutable;
using System.Text;
using CsvHelper;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.CardPurchases;

namespace Payday.Lists;

/// <summary>Splits a pasted list or a file into cells, by each separator that it may have; which one makes sense is for the rule to say.</summary>
internal static class ListCells
{
    /// <summary>The most bytes of a list, 5 MB.</summary>
    public const int MostBytes = 5_000_000;

    private const int FewestCells = 3;
    private const string Hint = "sep=";

    private static readonly ImmutableArray<char> Separators = ['\t', ';', ',', '|'];

    /// <summary>Reads a text as a list of purchases; see <see cref="PurchaseList.Read"/>.</summary>
    public static PurchaseList Purchases(Book book, string text, LocalDate today) => PurchaseList.Read(book, Readings(text), Otherwise, today);

    /// <summary>The rows of a text, once for each separator.</summary>
    /// <param name="text">
    /// Cells as RFC 4180 has them: one with a separator, a quote or a line break in it stands in quotes, and a quote in it is
    /// doubled. A first line such as <c>sep=;</c> names the separator. Empty rows are passed over.
    /// </param>
    public static ImmutableArray<ImmutableArray<ListRow>> Readings(string text)
    {
        string lines = text.TrimStart('\uFEFF').ReplaceLineEndings("\n");
        int end = lines.IndexOf('\n', StringComparison.Ordinal);
        string first = (end < 0 ? lines : lines[..end]).Trim();
        return first.Length == Hint.Length + 1 && first.StartsWith(Hint, StringComparison.OrdinalIgnoreCase)
            ? [Rows(end < 0 ? "" : lines[end..], first[^1])]
            : [.. Separators.Select(separator => Rows(lines, separator))];
    }

    /// <summary>A row that the list's separator doesn't split, by the first of the others that does, else at its blanks.</summary>
    public static ListRow Otherwise(ListRow row) => row.Cells.Length >= FewestCells ? row : row with
    {
        Cells = Separators
            .Where(other => row.Text.AsSpan().Count(other) >= FewestCells - 1)
            .Select(other => Rows(row.Text, other) is [var one] ? one.Cells : [])
            .FirstOrDefault(cells => cells.Length >= FewestCells, AtBlanks(row)),
    };

    private static ImmutableArray<string> AtBlanks(ListRow row) =>
        row.Cells.Length > 1 ? row.Cells : [.. row.Text.Split((char[]?)null, FewestCells, StringSplitOptions.RemoveEmptyEntries).Select(cell => cell.Trim('"'))];

    private static ImmutableArray<ListRow> Rows(string text, char separator)
    {
        bool isOpen = false;
        ImmutableArray<ListRow> rows = Read(text, separator, manyLines: true, () => isOpen = true);

        // A quote that is never closed would take all the lines after it into its cell.
        return isOpen ? Read(text, separator, manyLines: false, () => { }) : rows;
    }

    private static ImmutableArray<ListRow> Read(string text, char separator, bool manyLines, Action open)
    {
        var rows = ImmutableArray.CreateBuilder<ListRow>();
        using CsvReader reader = CsvReader.FromText(text, new CsvReaderOptions
        {
            Separator = separator,
            HasHeader = false,
            TrimWhitespace = true,
            TrackLineNumbers = true,
            AllowLineBreaksInQuotes = manyLines,
            OnMalformedRecord = record =>
            {
                if (record.Reason == CsvMalformedReason.UnterminatedQuote)
                {
                    open();
                }
            },
        });
        while (reader.Read())
        {
            var cells = ImmutableArray.CreateBuilder<string>(reader.FieldCount);
            for (int i = 0; i < reader.FieldCount; i++)
            {
                cells.Add(reader.GetString(i));
            }

            if (cells.Any(cell => cell.Length > 0))
            {
                rows.Add(new ListRow((int)reader.LineNumber, Encoding.UTF8.GetString(reader.RawRecord), cells.ToImmutable()));
            }
        }

        return rows.ToImmutable();
    }
}
