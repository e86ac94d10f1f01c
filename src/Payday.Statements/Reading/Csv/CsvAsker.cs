using Payday.Core.Amounts;
using Payday.Statements.Files;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>Puts readings that are all possible to the person, each with the profile that answers for it.</summary>
internal sealed class CsvAsker(CsvGrid grid, Currency currency, CsvProfile known)
{
    /// <summary>Which mark stands before the decimals; with one reading, whether it is right.</summary>
    public CsvVerdict Mark(CsvReading one, CsvReading? other)
    {
        int shown = Enumerable.Range(0, grid.Rows.Count).FirstOrDefault(row => grid.Rows[row][one.Columns.Amount].AsSpan().ContainsAny('.', ','));
        CsvReading[] readings = other is null ? [one] : [one, other];
        return Asked(
            CsvQuestionKind.DecimalMark,
            [shown],
            readings.Select(reading => new CsvChoice(Shown(grid.Find(reading.Columns.Amount, reading.Mark)![shown]), known with { DecimalMark = reading.Mark })));
    }

    /// <summary>Which way the lines go.</summary>
    public CsvVerdict Direction(List<CsvReading> readings)
    {
        var choices = new List<(CsvReading Reading, long?[] Amounts)>();
        foreach (CsvReading reading in readings)
        {
            long?[] amounts = reading.Amounts(grid);
            if (!choices.Exists(choice => choice.Amounts.SequenceEqual(amounts)))
            {
                choices.Add((reading, amounts));
            }
        }

        int[] shown = ToldApart([.. choices.Select(choice => choice.Amounts)]);
        return Asked(CsvQuestionKind.Direction, shown, choices.Select(choice => new CsvChoice(
            string.Join(", ", shown.Select(row => Shown(choice.Amounts[row] ?? 0))),
            known with { Columns = choice.Reading.Columns, AboveZeroGoesOut = choice.Reading.IsTurned, OutWord = choice.Reading.OutWord })));
    }

    /// <summary>Which column is the amount.</summary>
    public CsvVerdict AmountColumn(List<CsvReading> readings) =>
        Asked(CsvQuestionKind.AmountColumn, [0], readings.DistinctBy(reading => reading.Columns.Amount).Select(reading => new CsvChoice(
            CleanText.Of(grid.Table.Header is { } header ? header[reading.Columns.Amount] : grid.Rows[0][reading.Columns.Amount]),
            known with { Columns = reading.Columns })));

    // The first rows by which all readings differ from one another.
    private static int[] ToldApart(long?[][] readings)
    {
        var rows = new List<int>();
        for (int i = 0; i < readings.Length; i++)
        {
            for (int k = i + 1; k < readings.Length; k++)
            {
                if (rows.TrueForAll(row => readings[i][row] == readings[k][row]))
                {
                    rows.Add(Enumerable.Range(0, readings[i].Length).First(row => readings[i][row] != readings[k][row]));
                }
            }
        }

        return rows.Count == 0 ? [0] : [.. rows];
    }

    private CsvVerdict Asked(CsvQuestionKind kind, int[] rows, IEnumerable<CsvChoice> choices) => new(null, null, new CsvQuestion(
        kind, grid.Rows[rows[0]].Line, string.Join(" / ", rows.Select(row => CleanText.Join(grid.Rows[row].Cells))), [.. choices]));

    private string Shown(long minorUnits) => Money.FromMinorUnits(minorUnits, currency).ToPlain();
}
