namespace Payday.Statements.Reading.Csv;

/// <summary>The column that says which of the household's accounts a row is of.</summary>
internal static class CsvAccounts
{
    private const int MostAccounts = 10;
    private const int FewestRows = 2;

    /// <summary>The column, or null. A name for accounts may be the other side's: own accounts are few, and each has several rows.</summary>
    public static int? ColumnOf(CsvTable table, IReadOnlyList<CsvRow> rows)
    {
        int column = Array.IndexOf(table.Roles, CsvRole.OwnAccount);
        if (column < 0 || rows.Count == 0)
        {
            return null;
        }

        var counts = rows.CountBy(row => row[column], StringComparer.Ordinal).ToList();
        bool isOne = counts.Count == 1 && counts[0].Key.Length > 0;
        bool areFew = counts.Count <= MostAccounts && counts.TrueForAll(account => account.Key.Length > 0 && account.Value >= FewestRows);
        return isOne || areFew ? column : null;
    }
}
