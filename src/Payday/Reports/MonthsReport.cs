using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using NodaTime;
using Payday.Charts;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Histories;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Months and years as bars and lines: where money went, what came in and went out, what is saved and owed.</summary>
internal static class MonthsReport
{
    private const int ChartHeight = 4;
    private const int LeastBar = 6;
    private const int MostBar = 30;
    private const int LongestName = 18;
    private const int Gap = 2;

    /// <summary>E.g. <c>March 2026, so far</c>.</summary>
    public static string Title(YearMonth month, LocalDate today) =>
        month.ToString("MMMM uuuu", CultureInfo.InvariantCulture) + (month == today.ToYearMonth() ? ", so far" : "");

    /// <summary>Where the money of a month went, against the usual.</summary>
    public static IEnumerable<string> Month(Book book, YearMonth month, int width)
    {
        var went = WhereItWent.Of(book, month);
        return
        [
            .. Where(went, "usual", book, width),
            .. Missing(MonthFlows.Of(book).At(month).Flow.Missing, book, width),
            .. went.Rows.Any(row => row.Beside is not null)
                ? TextWrap.Lines($"Usual: the middle one of the whole months before, by amount; in brackets how many they are, at most {Usual.Most}.", width)
                : went.Rows.IsEmpty ? [] : TextWrap.Lines($"What is usual is said once there are {Usual.Fewest.ToWords(CultureInfo.InvariantCulture)} whole months before.", width),
        ];
    }

    /// <summary>Where the money of a year went up to a month, against the same months of the year before where there are any.</summary>
    public static IEnumerable<string> Year(Book book, YearMonth to, int width)
    {
        var months = MonthFlows.Of(book);
        YearMonth before = to.PlusMonths(-12);
        var went = WhereItWent.OfYear(book, to);
        return
        [
            .. Where(went, before.Year.ToString(CultureInfo.InvariantCulture), book, width),
            .. Missing(months.YearTo(to).Missing, book, width),
            .. went.Last is null ? [] : TextWrap.Lines(Against(months, to, before, months.YearTo(to), went.Last, book.Household.Settings.Numbers), width),
        ];
    }

    /// <summary>What came in and what went out, two bars a month.</summary>
    public static IEnumerable<string> InAndOut(Book book, YearMonth last, int width)
    {
        ImmutableArray<MonthFlow> months = MonthFlows.Of(book).Between(new YearMonth(last.Year, 1), last.OnDayOfMonth(1));
        if (months.IsEmpty)
        {
            return [];
        }

        NumberStyle style = book.Household.Settings.Numbers;
        Money most = months.Max(month => Money.Max(month.Flow.CameIn, month.Flow.WentOut));
        (string Head, Money Amount)[] rows = [.. months.SelectMany(month => new[] { (month.Month.ToString("MMM", CultureInfo.InvariantCulture) + " in ", month.Flow.CameIn), ("    out", month.Flow.WentOut) })];
        int amounts = rows.Max(row => TextColumns.Width(row.Amount.ToString(style)));
        int bar = Math.Clamp(width - 7 - amounts - (2 * Gap), LeastBar, 2 * MostBar);
        return rows.Select(row => row.Head + "  " + TextColumns.PadLeft(row.Amount.ToString(style), amounts) + "  " + Bars.Of(row.Amount, most, bar));
    }

    /// <summary>What is saved and what is owed, at the end of each month up to one.</summary>
    /// <returns>Nothing where there is one month only, or never anything saved or owed.</returns>
    public static IEnumerable<(string Heading, ImmutableArray<string> Lines)> Curves(Book book, YearMonth last, int width)
    {
        var all = MonthFlows.Of(book);
        ImmutableArray<MonthFlow> months = all.Between(all.First, last.OnDayOfMonth(1));
        if (months.Length < 2)
        {
            yield break;
        }

        string time = $"{Short(all.First)} to {Short(last)}";
        foreach ((string what, Func<MonthFlow, Money> amount) in new (string, Func<MonthFlow, Money>)[] { ("Saved", month => month.Saved), ("Owed", month => month.Owed) })
        {
            if (months.Any(month => !amount(month).IsZero))
            {
                yield return ($"{what}, {time}: {amount(months[^1]).ToString(book.Household.Settings.Numbers)}", LineChart.Lines([.. months.Select(amount)], width, ChartHeight, book.Household.Settings.Numbers));
            }
        }
    }

    private static string Short(YearMonth month) => month.ToString("MMM uuuu", CultureInfo.InvariantCulture);

    private static string Against(MonthFlows months, YearMonth to, YearMonth before, Flow flow, Flow last, NumberStyle style)
    {
        string time = to.Month == 12 ? "" : $", both to {to.ToString("MMMM", CultureInfo.InvariantCulture)}";
        string began = months.First.Year == before.Year && months.First.Month > 1 ? $" {before.Year} begins in {months.First.ToString("MMMM", CultureInfo.InvariantCulture)}." : "";
        return $"Came in {flow.CameIn.ToString(style)}, in {before.Year} {last.CameIn.ToString(style)}{time}.{began}";
    }

    // What nobody knows the use of stands with its pot, as if it were spent: without a word the month couldn't be followed.
    private static IEnumerable<string> Missing(Money missing, Book book, int width) => missing.IsZero ? []
        : TextWrap.Lines(
            missing.IsNegative
                ? $"Less {(-missing).ToString(book.Household.Settings.Numbers)} that counts found; it is taken off its pots."
                : $"{missing.ToString(book.Household.Settings.Numbers)} of it was missing at counts; it stands with its pots.",
            width);

    private static IEnumerable<string> Where(WhereItWent went, string beside, Book book, int width)
    {
        if (went.Rows.IsEmpty)
        {
            return ["Nothing went out."];
        }

        NumberStyle style = book.Household.Settings.Numbers;
        WentRow[] all = [.. went.Rows, went.Total];
        Money most = went.Rows.Max(row => Money.Max(row.Amount, row.Beside ?? row.Amount));
        bool isBeside = all.Any(row => row.Beside is not null);
        int names = Math.Clamp(all.Max(row => TextColumns.Width(row.Name)), 1, LongestName);
        int amounts = all.Max(row => TextColumns.Width(row.Amount.ToString(style)));
        int asides = isBeside ? Math.Max(TextColumns.Width(beside), all.Max(row => row.Beside is { } other ? TextColumns.Width(other.ToString(style)) : 0)) : 0;
        int notes = all.Max(row => TextColumns.Width(Note(row)));
        int bar = Math.Clamp(width - names - amounts - (2 * Gap) - (isBeside ? Gap + asides + notes + 1 : 0), LeastBar, MostBar);
        return
        [
            .. isBeside ? [TextColumns.PadLeft(beside, names + Gap + amounts + Gap + bar + Gap + asides)] : Array.Empty<string>(),
            .. went.Rows.Select(row => Line(row, Bars.Of(row.Amount, most, bar))),
            Line(went.Total, new string(' ', bar)),
        ];

        string Line(WentRow row, string drawn) => (TextColumns.PadRight(TextColumns.Truncate(row.Name, names), names)
            + new string(' ', Gap) + TextColumns.PadLeft(row.Amount.ToString(style), amounts)
            + new string(' ', Gap) + drawn
            + (row.Beside is { } other ? new string(' ', Gap) + TextColumns.PadLeft(other.ToString(style), asides) + " " + TextColumns.PadLeft(Note(row), notes) : "")).TrimEnd();
    }

    private static string Note(WentRow row) => row.Months is { } months ? string.Create(CultureInfo.InvariantCulture, $"({months})") : "";
}
