using Payday.Statements.Files;

namespace Payday.Statements.Reading.Csv;

/// <summary>All readings of a grid that are possible by its cells alone.</summary>
internal static class CsvReadings
{
    private const int MostWords = 4;

    private static readonly bool[] Ways = [false, true];

    /// <summary>The readings without a balance, those that the column names hint at first.</summary>
    public static List<CsvReading> Of(CsvGrid grid, int date)
    {
        List<CsvNumbers> amounts = [.. grid.Numbers.OrderBy(numbers => Rank(grid.RoleOf(numbers.Column))).ThenBy(numbers => numbers.Column)];
        return [.. Parted(grid, amounts, date), .. Directed(grid, amounts, date), .. Signed(amounts, date)];
    }

    // Each row has its amount in one of two columns.
    private static IEnumerable<CsvReading> Parted(CsvGrid grid, List<CsvNumbers> amounts, int date)
    {
        foreach (CsvNumbers comesIn in amounts)
        {
            foreach (CsvNumbers goesOut in amounts)
            {
                bool isOther = comesIn.Column != goesOut.Column && comesIn.Mark == goesOut.Mark;
                bool isHinted = grid.RoleOf(goesOut.Column) == CsvRole.Out || grid.RoleOf(comesIn.Column) == CsvRole.In;
                bool isContrary = grid.RoleOf(goesOut.Column) == CsvRole.In || grid.RoleOf(comesIn.Column) == CsvRole.Out;
                if (isOther && AreApart(comesIn, goesOut) && (isHinted || !isContrary))
                {
                    yield return new CsvReading(new CsvColumns(date, comesIn.Column, Out: goesOut.Column), comesIn.Mark, IsTurned: false);
                }
            }
        }
    }

    private static bool AreApart(CsvNumbers one, CsvNumbers other)
    {
        int apart = 0;
        for (int i = 0; i < one.Cells.Length; i++)
        {
            bool hasOne = one.Cells[i].Ok && one[i] != 0;
            bool hasOther = other.Cells[i].Ok && other[i] != 0;
            if (hasOne && hasOther)
            {
                return false;
            }

            apart += hasOne || hasOther ? 1 : 0;
        }

        return apart > 0 && !one.IsFullOfAmounts() && !other.IsFullOfAmounts();
    }

    // Amounts without a sign, and a word beside them.
    private static IEnumerable<CsvReading> Directed(CsvGrid grid, List<CsvNumbers> amounts, int date)
    {
        for (int column = 0; column < grid.Table.Width; column++)
        {
            bool isOther = grid.Numbers.Exists(numbers => numbers.Column == column)
                || grid.RoleOf(column) is not (CsvRole.None or CsvRole.Direction or CsvRole.Kind or CsvRole.Status or CsvRole.Amount or CsvRole.In or CsvRole.Out);
            string[] words = isOther || column == date
                ? []
                : [.. grid.Rows.Select(row => row[column]).Distinct(StringComparer.Ordinal).Take(MostWords + 1)];
            bool areKnown = words.Length is > 0 and <= MostWords && words.All(word => CsvWords.MeansOut(word) is not null);
            bool areTwo = words.Length == 2 && words.All(word => word.Length > 0);
            if (!areKnown && !areTwo)
            {
                continue;
            }

            foreach (CsvNumbers amount in amounts.Where(amount => amount.IsFull && !amount.HasNegative))
            {
                var columns = new CsvColumns(date, amount.Column, Direction: column);
                if (areKnown)
                {
                    yield return new CsvReading(columns, amount.Mark, IsTurned: false);
                }
                else
                {
                    yield return new CsvReading(columns, amount.Mark, IsTurned: false, words[0]);
                    yield return new CsvReading(columns, amount.Mark, IsTurned: false, words[1]);
                }
            }
        }
    }

    private static IEnumerable<CsvReading> Signed(List<CsvNumbers> amounts, int date) =>
        from amount in amounts
        where amount.IsFull
        from isTurned in Ways
        select new CsvReading(new CsvColumns(date, amount.Column), amount.Mark, isTurned);

    private static bool IsFullOfAmounts(this CsvNumbers numbers) => Array.TrueForAll(numbers.Cells, cell => cell.Ok && cell.MinorUnits != 0);

    private static int Rank(CsvRole role) => role switch
    {
        CsvRole.Amount => 0,
        CsvRole.In or CsvRole.Out => 1,
        CsvRole.None => 2,
        _ => 3,
    };
}
