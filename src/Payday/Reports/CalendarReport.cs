using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Paydays, fill days and dues of the next months, day by day.</summary>
internal static class CalendarReport
{
    private const int Months = 3;

    /// <summary>All that falls on the days of the next three months, in order.</summary>
    public static ImmutableArray<CalendarEntry> Entries(Household household, LocalDate from)
    {
        LocalDate to = from.PlusMonths(Months);
        BankHolidays holidays = BankHolidays.From(household.Settings.Holidays);
        Dictionary<string, string> names = household.Sources.ToDictionary(source => source.Id, source => source.Name);
        IEnumerable<CalendarEntry> entries =
        [
            .. PayCalendar.Paydays(household.Sources, holidays, from, to).Select(payday => new CalendarEntry(
                payday.Date,
                payday.IsExtra ? "extra payday" : "payday",
                string.Join("; ", payday.Sources.Select(source => names[source])),
                null)),
            .. new PayPeriod(from, to).FillDays(household.Settings.FillDay).Select(day => new CalendarEntry(day, "fill day", "", null)),
            .. BillDues.Between(household.Bills, holidays, from, to).Select(due => new CalendarEntry(due.Date, "due", due.Name, due.Amount)),
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
}

/// <summary>Something that falls on a day.</summary>
/// <param name="Date">The day.</param>
/// <param name="What">A payday, an extra payday, a fill day or a due.</param>
/// <param name="For">Whose.</param>
/// <param name="Amount">What is due, or null.</param>
internal sealed record CalendarEntry(LocalDate Date, string What, string For, Money? Amount);
