using System.Collections.Immutable;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Books;
using Payday.Json;
using Payday.Reports;

namespace Payday.Commands;

/// <summary>Paydays, fill days and dues of the coming months, day by day.</summary>
internal static class CalendarAnswer
{
    public static Answer Of(Book book, LocalDate today, int months = CalendarReport.Months)
    {
        ImmutableArray<CalendarEntry> entries = CalendarReport.Entries(book, today, today, months);
        return new Answer.Done(
            [.. CalendarReport.Lines(entries, book.Household.Settings.Numbers, Report.Width)],
            JsonSerializer.Serialize(
                new CalendarResult([.. entries.Select(entry => new EventResult(
                    LocalDatePattern.Iso.Format(entry.Date), entry.What, entry.For, entry.Amount?.ToPlain()))]),
                ResultJson.Readable.CalendarResult));
    }
}
