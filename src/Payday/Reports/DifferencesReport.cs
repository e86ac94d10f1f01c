using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Counts;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Differences of counts that are still open: since when, how much, and what they are called.</summary>
internal static class DifferencesReport
{
    /// <summary>A row each, the oldest first.</summary>
    public static TextTable Table(Book book)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        return new TextTable(
            [Report.Names("Pot"), new("since"), Report.Amounts("missing"), Report.Amounts("found"), new("name") { Shrinks = true, MinWidth = 10 }],
            [.. Differences.Open(book).Select(count => ImmutableArray.Create(
                WeekText.PotName(book, count.PotId),
                DateText.Short(count.Date),
                count.Difference.IsPositive ? count.Difference.ToString(style) : "",
                count.Difference.IsNegative ? (-count.Difference).ToString(style) : "",
                count.DifferenceName))],
            decimalMark: style.DecimalMark);
    }
}
