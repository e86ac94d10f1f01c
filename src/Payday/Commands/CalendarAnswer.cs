using System.Collections.Immutable;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Json;
using Payday.Reports;
using Payday.Text;

namespace Payday.Commands;

/// <summary>Paydays, fill days and dues of the next three months, day by day.</summary>
internal static class CalendarAnswer
{
    private const int Months = 3;

    public static Answer Of(Book book, LocalDate today)
    {
        Household household = book.Household;
        LocalDate to = today.PlusMonths(Months);
        BankHolidays holidays = BankHolidays.From(household.Settings.Holidays);
        Dictionary<string, string> names = household.Sources.ToDictionary(source => source.Id, source => source.Name);
        IEnumerable<EventResult> events =
        [
            .. PayCalendar.Paydays(household.Sources, holidays, today, to).Select(payday => new EventResult(
                LocalDatePattern.Iso.Format(payday.Date),
                payday.IsExtra ? "extra payday" : "payday",
                string.Join("; ", payday.Sources.Select(source => names[source])),
                null)),
            .. new PayPeriod(today, to).FillDays(household.Settings.FillDay).Select(day => new EventResult(
                LocalDatePattern.Iso.Format(day), "fill day", "", null)),
            .. BillDues.Between(household.Bills, holidays, today, to).Select(due => new EventResult(
                LocalDatePattern.Iso.Format(due.Date), "due", due.Name, due.Amount.ToPlain())),
        ];
        EventResult[] inOrder = [.. events.OrderBy(item => item.Date, StringComparer.Ordinal)];
        return new Answer.Done(
            [.. Report.Table(
                household.Settings.Numbers,
                [new("Date"), new("what"), Report.Names("for"), Report.Amounts("amount")],
                inOrder.Select((item, i) => ImmutableArray.Create(
                    i > 0 && inOrder[i - 1].Date == item.Date ? "" : DateText.Weekday(LocalDatePattern.Iso.Parse(item.Date).Value),
                    item.What,
                    item.Name,
                    item.Amount is { } amount ? Money.ParsePlain(amount, household.Currency).Value.ToString(household.Settings.Numbers) : "")))],
            JsonSerializer.Serialize(new CalendarResult(inOrder), ResultJson.Readable.CalendarResult));
    }
}
