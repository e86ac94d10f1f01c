using Payday.Statements.Files;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>One possible reading of a grid: which columns, which mark, which way round.</summary>
/// <param name="Columns">The columns.</param>
/// <param name="Mark">The decimal mark.</param>
/// <param name="IsTurned">Whether amounts above zero, or those with the word of coming in, went out.</param>
/// <param name="OutWord">The word of going out, where words aren't known ones.</param>
internal sealed record CsvReading(CsvColumns Columns, char Mark, bool IsTurned, string? OutWord = null)
{
    /// <summary>The amount of each row, null where it can't be read.</summary>
    public long?[] Amounts(CsvGrid grid)
    {
        CsvNumbers amount = grid.Find(Columns.Amount, Mark)!;
        CsvNumbers? other = Columns.Out is { } column ? grid.Find(column, Mark) : null;
        var amounts = new long?[grid.Rows.Count];
        for (int i = 0; i < amounts.Length; i++)
        {
            amounts[i] = Columns.Out is not null ? Parted(amount.Cells[i], other!.Cells[i])
                : amount.Cells[i].Ok ? Signed(amount[i], Columns.Direction is { } direction ? grid.Rows[i][direction] : null)
                : null;
        }

        return amounts;
    }

    // Some banks write what went out below zero in its own column too; a minus in the column of what came in is a correction.
    private static long? Parted(AmountReading comesIn, AmountReading goesOut) =>
        comesIn.State is AmountState.NotAnAmount or AmountState.TooManyDecimals || goesOut.State is AmountState.NotAnAmount or AmountState.TooManyDecimals
        || (!comesIn.Ok && !goesOut.Ok)
            ? null
            : comesIn.MinorUnits - Math.Abs(goesOut.MinorUnits);

    private long? Signed(long amount, string? word)
    {
        if (word is null)
        {
            return IsTurned ? -amount : amount;
        }

        bool? isOut = OutWord is not null ? word == OutWord : CsvWords.MeansOut(word);
        return isOut is not { } known ? null : known != IsTurned ? -Math.Abs(amount) : Math.Abs(amount);
    }
}
