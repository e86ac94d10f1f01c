using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.Households;

namespace Payday.Core.CardPurchases;

/// <summary>Reads the rows of a list as purchases: which column has the dates, how the amounts are written, which sign is money that came in.</summary>
internal sealed class PurchaseRows
{
    private const int FewestCells = 3;
    private const int LongestEcho = 24;

    private readonly Household household;
    private readonly ImmutableArray<ListRow> rows;
    private readonly int dateColumn;
    private readonly ListDates dates;
    private readonly ListAmounts amounts;

    private PurchaseRows(Household household, ImmutableArray<ListRow> rows, LocalDate today)
    {
        this.household = household;
        this.rows = rows;
        dateColumn = DateColumn(rows, new ListDates(today));
        dates = ListDates.Of(rows.Where(HasColumns).Select(row => row.Cells[dateColumn]), today);
        amounts = ListAmounts.Of([.. rows.Where(HasColumns).Select(Others)], household.Currency, household.Settings.Numbers);
    }

    /// <summary>The lines, without guesses, and what could not be read.</summary>
    public static PurchaseList Read(Household household, IEnumerable<ListRow> rows, LocalDate today) =>
        new PurchaseRows(household, [.. rows], today).Read();

    private PurchaseList Read()
    {
        var lines = new List<(PurchaseLine Line, bool BelowZero)>();
        var faults = ImmutableArray.CreateBuilder<PurchaseFault>();
        foreach (ListRow row in rows)
        {
            Result<(PurchaseLine Line, bool BelowZero)> line = Line(row);
            if (line.Ok)
            {
                lines.Add(line.Value);
            }
            else
            {
                faults.Add(new PurchaseFault(row.Number, line.Fault));
            }
        }

        if (lines.Count > 0 && IsHeading(rows[0]))
        {
            faults.RemoveAt(0);
        }

        // A bank's list has all that the card paid below zero; a list of one's own has none so. On a tie it is the bank's.
        int below = lines.Count(line => line.BelowZero);
        bool bought = below > 0 && 2 * below >= lines.Count;
        return new PurchaseList([.. lines.Select(line => line.Line with { IsRefund = line.BelowZero != bought })], faults.ToImmutable());
    }

    private Result<(PurchaseLine Line, bool BelowZero)> Line(ListRow row)
    {
        if (!HasColumns(row))
        {
            return Refused($"write date, amount and text, such as {PurchaseList.Example(household.Settings.Numbers)}.");
        }

        Result<LocalDate> date = dates.Read(row.Cells[dateColumn]);
        if (!date.Ok)
        {
            return Refused($"'{Short(row.Cells[dateColumn])}': {date.Fault}");
        }

        ImmutableArray<string> others = Others(row);
        int[] found = [.. Enumerable.Range(0, others.Length).Where(i => amounts.Read(others[i]).Ok)];
        if (found.Length > 1)
        {
            return Refused($"both '{Short(others[found[0]])}' and '{Short(others[found[1]])}' can be its amount; put an amount with a comma in it in quotes, or leave the line out.");
        }

        Result<Money> amount = amounts.Read(others[found.Length == 1 ? found[0] : 0]);
        if (!amount.Ok)
        {
            return Refused(amount.Fault);
        }

        if (amount.Value.IsZero)
        {
            return Refused("the amount is zero; leave the line out.");
        }

        string what = OneLine(string.Join(", ", others.Where((cell, i) => i != found[0] && cell.Length > 0)));
        Money size = amount.Value.IsNegative ? -amount.Value : amount.Value;
        return Result.Of((new PurchaseLine(row.Number, new PurchaseEntry(date.Value, null, size, what), null), amount.Value.IsNegative));
    }

    private bool HasColumns(ListRow row) => row.Cells.Length >= FewestCells && row.Cells.Length > dateColumn;

    private ImmutableArray<string> Others(ListRow row) => row.Cells.RemoveAt(dateColumn);

    // Words alone, as the names of columns are: a mistake in a line of one's own still has its figures.
    private bool IsHeading(ListRow row) => HasColumns(row) && !row.Cells.Any(cell => cell.Any(char.IsDigit));

    // Where most rows have a date; of equal ones the first.
    private static int DateColumn(ImmutableArray<ListRow> rows, ListDates dates)
    {
        int columns = rows.IsEmpty ? 0 : rows.Max(row => row.Cells.Length);
        return Enumerable.Range(0, Math.Max(columns, 1))
            .MaxBy(column => rows.Count(row => row.Cells.Length >= FewestCells && row.Cells.Length > column && dates.IsDate(row.Cells[column])));
    }

    // A text in quotes may have line breaks.
    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static Result<(PurchaseLine Line, bool BelowZero)> Refused(string fault) => Result.Refused<(PurchaseLine, bool)>(fault);

    private static string Short(string text) => text.Length <= LongestEcho ? text : text[..LongestEcho] + "...";
}
