using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Reports;

/// <summary>A year, month by month: income, outgoings, what went in pots, debts.</summary>
internal static class YearReport
{
    // The first to go where there is no room for all.
    private const int Interest = 4;

    /// <summary>The table.</summary>
    /// <param name="months">The months.</param>
    /// <param name="year">The year.</param>
    /// <param name="book">The book.</param>
    /// <param name="width">The columns there are.</param>
    public static IEnumerable<string> Lines(ImmutableArray<MonthSummary> months, int year, Book book, int width)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        ImmutableArray<TextColumn> columns =
        [
            new(year.ToString(CultureInfo.InvariantCulture)), Report.Amounts("came in"), Report.Amounts("bills"), Report.Amounts("debts"),
            Report.Amounts("interest"), Report.Amounts("to pots"), Report.Amounts("spent"), Report.Amounts("owed"),
        ];
        ImmutableArray<ImmutableArray<string>> rows = [.. months.Select(month => Cells(month.Month.ToString("MMM", CultureInfo.InvariantCulture), month, style))];
        ImmutableArray<string> total = ["Year", .. Sums(months, book.Household.Currency, style), ""];
        var table = new TextTable(columns, rows, [total], gap: width < Report.Width - 2 ? 1 : 2, decimalMark: style.DecimalMark);
        IEnumerable<string> lines = table.NarrowestWidth <= width
            ? table.Lay(width).All
            : new TextTable(columns.RemoveAt(Interest), [.. rows.Select(row => row.RemoveAt(Interest))], [total.RemoveAt(Interest)], gap: 1, decimalMark: style.DecimalMark).Lay(width).All;
        return [.. lines, .. Overdraft(year, book, style, width), .. Rounding(months, book.Household.Currency, style, width), .. Missing(months, book.Household.Currency, style, width)];
    }

    private static IEnumerable<string> Overdraft(int year, Book book, NumberStyle style, int width)
    {
        Money began = (-book.Household.Opening.Account).ClampToZero();
        if (began.IsZero || year < book.Household.Start.Year)
        {
            return [];
        }

        LedgerEnd end = LedgerEnd.InAccount(Purpose.Overdraft);
        Money left = -Money.Sum(book.Ledger.Of(end).Where(movement => movement.Date.Year <= year).Select(movement => movement.To == end ? movement.Amount : -movement.Amount), began.Currency);
        return ["", .. TextWrap.Lines($"The account began {began.ToString(style)} below zero; {(left.IsZero ? "that overdraft is paid off." : $"{left.ToString(style)} of that overdraft is left, beside what is owed on debts.")}", width)];
    }

    private static IEnumerable<string> Rounding(ImmutableArray<MonthSummary> months, Currency currency, NumberStyle style, int width)
    {
        Money rounding = Money.Sum(months.Select(month => month.Rounding), currency);
        return rounding.IsZero
            ? []
            : ["", .. TextWrap.Lines($"{rounding.ToString(style)} of the cash brought back was rounding to whole notes; it went from pots to the buffer.", width)];
    }

    private static IEnumerable<string> Missing(ImmutableArray<MonthSummary> months, Currency currency, NumberStyle style, int width)
    {
        Money missing = Money.Sum(months.Select(month => month.Missing), currency);
        return missing.IsZero
            ? []
            : ["", .. TextWrap.Lines($"{(missing.IsNegative ? -missing : missing).ToString(style)} {(missing.IsNegative ? "more was found by counts than was missing" : "was missing at counts beyond what was found")}; it is not among what was spent.", width)];
    }

    private static ImmutableArray<string> Cells(string name, MonthSummary month, NumberStyle style) =>
    [
        name,
        month.CameIn.ToString(style),
        month.Bills.ToString(style),
        month.DebtPayments.ToString(style),
        month.Interest.ToString(style),
        month.Fills.ToString(style),
        month.Spent.ToString(style),
        month.Owed.ToString(style),
    ];

    private static IEnumerable<string> Sums(ImmutableArray<MonthSummary> months, Currency currency, NumberStyle style) =>
        new Func<MonthSummary, Money>[]
        {
            month => month.CameIn, month => month.Bills, month => month.DebtPayments, month => month.Interest, month => month.Fills, month => month.Spent,
        }.Select(amount => Money.Sum(months.Select(amount), currency).ToString(style));
}
