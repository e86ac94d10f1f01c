using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Faults;

namespace Payday.Core.CardPurchases;

/// <summary>The dates of a list: where one of them can only be a day before its month, or behind it, so are the others.</summary>
/// <param name="today">The date, which none of them is after.</param>
internal sealed class ListDates(LocalDate today)
{
    private bool? dayFirst;

    /// <summary>Decides in which order a column has day and month.</summary>
    /// <param name="column">The cells of the column.</param>
    /// <param name="today">The date.</param>
    public static ListDates Of(IEnumerable<string> column, LocalDate today)
    {
        bool[] sure = [.. column.Select(Numbers).OfType<(int First, int Second, int Year)>()
            .Where(date => date.First > 12 != date.Second > 12)
            .Select(date => date.First > 12)
            .Distinct()];
        return new ListDates(today) { dayFirst = sure is [var one] ? one : null };
    }

    /// <summary>Whether a cell is a date, or one of two.</summary>
    public bool IsDate(string cell) => Numbers(cell) is not null || TypedDate.Parse(cell, today).Ok;

    /// <summary>A cell as a date, up to today.</summary>
    public Result<LocalDate> Read(string cell)
    {
        Result<LocalDate> date = TypedDate.Parse(InOrder(cell), today);
        return date.Ok && date.Value > today ? Result.Refused<LocalDate>("that day is still to come.") : date;
    }

    private string InOrder(string cell) => (Numbers(cell), dayFirst) switch
    {
        ({ } date, true) => string.Create(CultureInfo.InvariantCulture, $"{date.Year:0000}-{date.Second}-{date.First}"),
        ({ } date, false) => string.Create(CultureInfo.InvariantCulture, $"{date.Year:0000}-{date.First}-{date.Second}"),
        _ => cell,
    };

    // Two numbers and a year behind them.
    private static (int First, int Second, int Year)? Numbers(string cell) =>
        cell.Split('.', '/', '-') is [{ Length: 1 or 2 } first, { Length: 1 or 2 } second, { Length: 4 } year]
        && int.TryParse(first, NumberStyles.None, CultureInfo.InvariantCulture, out int one)
        && int.TryParse(second, NumberStyles.None, CultureInfo.InvariantCulture, out int two)
        && int.TryParse(year, NumberStyles.None, CultureInfo.InvariantCulture, out int third)
            ? (one, two, third)
            : null;
}
