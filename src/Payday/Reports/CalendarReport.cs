using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Ids;
using Payday.Core.Status;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Paydays, fill days and dues of some months, day by day.</summary>
internal static class CalendarReport
{
    /// <summary>How many months it shows, where nothing else is asked for.</summary>
    public const int Months = 3;

    /// <summary>All that falls on the days of some months, in order.</summary>
    /// <param name="book">The book.</param>
    /// <param name="from">The first day.</param>
    /// <param name="today">The date; it is marked where days before it are shown.</param>
    /// <param name="months">How many months, one or more.</param>
    public static ImmutableArray<CalendarEntry> Entries(Book book, LocalDate from, LocalDate today, int months = Months)
    {
        LocalDate to = from.PlusMonths(months);
        IEnumerable<CalendarEntry> entries =
        [
            .. from < today && today <= to ? [new CalendarEntry(today, "today", "", null)] : Array.Empty<CalendarEntry>(),
            .. Paydays(book, from, to),
            .. new PayPeriod(from, to).FillDays(book.Household.Settings.FillDay).Select(day => new CalendarEntry(day, "fill day", "", null)),
            .. ComingDues.Between(book, from, to).Select(due => new CalendarEntry(due.Date, Word(due), due.Name, due.Amount)),
        ];
        return [.. entries.OrderBy(entry => entry.Date)];
    }

    /// <summary>The same as a table.</summary>
    public static IEnumerable<string> Lines(ImmutableArray<CalendarEntry> entries, NumberStyle style, int width) => new TextTable(
        [new("Date"), new("what"), Report.Names("for"), Report.Amounts("amount")],
        [.. entries.Select((entry, i) => ImmutableArray.Create(
            i > 0 && entries[i - 1].Date == entry.Date ? "" : DateText.Weekday(entry.Date),
            entry.What,
            entry.For,
            entry.Amount is { } amount ? amount.ToString(style) : ""))],
        decimalMark: style.DecimalMark).Lay(width).All;

    // One that was closed on a day on which nobody is scheduled to pay, such as before a schedule changed, is there too.
    private static IEnumerable<CalendarEntry> Paydays(Book book, LocalDate from, LocalDate to)
    {
        Dictionary<SourceId, string> names = book.Household.Sources.ToDictionary(source => source.Id, source => source.Name);
        HashSet<LocalDate> closed = [.. book.Closed.Select(payday => payday.Payday)];
        ImmutableArray<ScheduledPayday> scheduled = book.Household.Paydays.Between(from, to);
        return scheduled
            .Select(payday => new CalendarEntry(
                payday.Date,
                (payday.IsExtra ? "extra payday" : "payday") + (closed.Contains(payday.Date) ? ", closed" : ""),
                string.Join("; ", payday.Sources.Select(source => names[source])),
                closed.Contains(payday.Date) ? null : Known(book.Household.Paydays.Expected(payday, book.Household.Currency))))
            .Concat(closed
                .Where(date => date >= from && date <= to && !scheduled.Any(payday => payday.Date == date))
                .Select(date => new CalendarEntry(date, "payday, closed", "", null)));
    }

    // Pay that can't be foreseen is expected to be nothing.
    private static Money? Known(Money expected) => expected.IsPositive ? expected : null;

    private static string Word(ComingDue due) => due.Paid ? "paid" : due.Kind == DueKind.Minimum ? "minimum due" : "due";
}

/// <summary>Something that falls on a day.</summary>
/// <param name="Date">The day.</param>
/// <param name="What">A payday, an extra payday, a fill day, a due or one that is paid; or today.</param>
/// <param name="For">Whose.</param>
/// <param name="Amount">What is due or expected to come in; null where that isn't known, or it is over.</param>
internal sealed record CalendarEntry(LocalDate Date, string What, string For, Money? Amount);
