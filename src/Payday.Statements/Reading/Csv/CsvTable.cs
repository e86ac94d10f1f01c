using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>The rows of a file seen as a table: what is before it, its header, its lines and what is after it.</summary>
internal sealed class CsvTable
{
    private CsvTable(List<CsvRow> rows, int width, int first, int last, CsvRow? header)
    {
        Width = width;
        Header = header;
        int headerAt = header is null ? first : rows.IndexOf(header);
        Before = rows[..headerAt];
        Body = rows[first..(last + 1)];
        After = rows[(last + 1)..];
        Roles = [.. Enumerable.Range(0, width).Select(column => header is null ? CsvRole.None : CsvWords.RoleOf(header[column]))];
    }

    /// <summary>How many columns it has.</summary>
    public int Width { get; }

    /// <summary>The row of names, or null.</summary>
    public CsvRow? Header { get; }

    /// <summary>What the names hint at, a role a column; none where there is no header.</summary>
    public CsvRole[] Roles { get; }

    /// <summary>The rows before the header, such as account and balances.</summary>
    public IReadOnlyList<CsvRow> Before { get; }

    /// <summary>The rows from the first to the last with a date.</summary>
    public IReadOnlyList<CsvRow> Body { get; }

    /// <summary>The rows after the last line, such as totals.</summary>
    public IReadOnlyList<CsvRow> After { get; }

    /// <summary>What a profile is known by: the header's names, else the number of columns.</summary>
    public string Fingerprint => Header is null ? $"{Width}" : string.Join('|', Header.Cells.Select(CleanText.Echo));

    /// <summary>The table in rows; null where no row has a date and an amount.</summary>
    public static CsvTable? Of(List<CsvRow> rows) => Measured(rows).Table;

    /// <summary>The table in rows, and how many of its rows have a date and an amount: by this the separator is found.</summary>
    public static (CsvTable? Table, int Fit) Measured(List<CsvRow> rows)
    {
        var widths = new Dictionary<int, int>();
        bool[] fits = new bool[rows.Count];
        for (int i = 0; i < rows.Count; i++)
        {
            fits[i] = HasDateAndAmount(rows[i]);
            if (fits[i])
            {
                widths[rows[i].Cells.Length] = widths.GetValueOrDefault(rows[i].Cells.Length) + 1;
            }
        }

        if (widths.Count == 0)
        {
            return (null, 0);
        }

        (int width, int fit) = widths.MaxBy(pair => (pair.Value, pair.Key));
        bool IsLine(int at) => fits[at] && rows[at].Cells.Length == width;
        int first = Enumerable.Range(0, rows.Count).First(IsLine);
        int last = Enumerable.Range(0, rows.Count).Last(IsLine);
        return (new CsvTable(rows, width, first, last, HeaderOf(rows, first)), fit);
    }

    private static CsvRow? HeaderOf(List<CsvRow> rows, int first)
    {
        for (int i = first - 1; i >= 0 && i >= first - 3; i--)
        {
            CsvRow row = rows[i];
            if (row.Filled >= 2 && !row.Cells.Any(cell => CsvDate.IsAny(cell) || IsAmount(cell)))
            {
                return row;
            }
        }

        return null;
    }

    private static bool HasDateAndAmount(CsvRow row)
    {
        bool hasDate = false;
        bool hasAmount = false;
        foreach (string cell in row.Cells)
        {
            if (!hasDate && CsvDate.IsAny(cell))
            {
                hasDate = true;
            }
            else if (!hasAmount && IsAmount(cell))
            {
                hasAmount = true;
            }
        }

        return hasDate && hasAmount;
    }

    private static bool IsAmount(string cell) =>
        cell.Length is > 0 and <= 24 && cell.AsSpan().ContainsAnyInRange('0', '9')
        && (AmountText.Read(cell, '.', 4).Ok || AmountText.Read(cell, ',', 4).Ok);
}
