using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>The booked rows of a table with the columns that can be amounts, read with each decimal mark.</summary>
internal sealed class CsvGrid
{
    // Six would be amount, in, out, balance, original amount, fee.
    private const int MostNumberColumns = 8;

    // Digits without a mark that are too long for an amount are account numbers and references.
    private const int LongestWhole = 9;

    private static readonly char[] Marks = ['.', ','];

    private static readonly CsvRole[] NoAmounts =
    [
        CsvRole.OwnAccount, CsvRole.PartyAccount, CsvRole.Reference, CsvRole.BankId, CsvRole.Number, CsvRole.Cheque, CsvRole.Mandate,
        CsvRole.Date, CsvRole.ValueDate, CsvRole.Text, CsvRole.Party, CsvRole.Kind, CsvRole.Status,
    ];

    private CsvGrid(CsvTable table, IReadOnlyList<CsvRow> rows, List<CsvNumbers> numbers, List<int[]> groups)
    {
        Table = table;
        Rows = rows;
        Numbers = numbers;
        Groups = groups;
    }

    /// <summary>The table.</summary>
    public CsvTable Table { get; }

    /// <summary>The booked rows, in the file's order.</summary>
    public IReadOnlyList<CsvRow> Rows { get; }

    /// <summary>The columns that can be amounts, once for each decimal mark that fits.</summary>
    public List<CsvNumbers> Numbers { get; }

    /// <summary>The places of the rows of each account, in the file's order; one group where there is no column of own accounts.</summary>
    public List<int[]> Groups { get; }

    /// <summary>Reads the rows of a table.</summary>
    public static CsvGrid Of(CsvTable table, CsvBody body, int decimals)
    {
        var numbers = new List<CsvNumbers>();
        for (int column = 0; column < table.Width && numbers.Count < 2 * MostNumberColumns; column++)
        {
            if (column == body.DateColumn || NoAmounts.Contains(table.Roles[column]) || !LooksLikeAmounts(body.Booked, column))
            {
                continue;
            }

            numbers.AddRange(Marks.Select(mark => CsvNumbers.Of(body.Booked, column, mark, decimals)).Where(read => read.Fits));
        }

        return new CsvGrid(table, body.Booked, numbers, GroupsOf(table, body.Booked));
    }

    /// <summary>A column read with a mark, or null where it doesn't fit.</summary>
    public CsvNumbers? Find(int column, char mark) => Numbers.Find(read => read.Column == column && read.Mark == mark);

    /// <summary>What the name of a column hints at.</summary>
    public CsvRole RoleOf(int column) => Table.Roles[column];

    private static bool LooksLikeAmounts(List<CsvRow> rows, int column)
    {
        int filled = 0;
        int whole = 0;
        foreach (CsvRow row in rows)
        {
            string cell = row[column];
            if (cell.Length == 0)
            {
                continue;
            }

            filled++;
            bool isLong = cell.Length > LongestWhole || (cell.Length > 1 && cell[0] == '0');
            whole += isLong && !cell.AsSpan().ContainsAnyExceptInRange('0', '9') ? 1 : 0;
        }

        return filled > 0 && whole * 2 < filled;
    }

    private static List<int[]> GroupsOf(CsvTable table, List<CsvRow> rows)
    {
        int column = Array.IndexOf(table.Roles, CsvRole.OwnAccount);
        var all = Enumerable.Range(0, rows.Count);
        return column < 0
            ? [[.. all]]
            : [.. all.GroupBy(row => rows[row][column], StringComparer.Ordinal).Select(group => group.ToArray())];
    }
}
