using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Paydays, fill days and dues, day by day.</summary>
internal static class CalendarReport
{
    private const int Months = 3;

    /// <summary>The next three months as a table.</summary>
    public static IEnumerable<string> Lines(Household household, LocalDate from, int width)
    {
        LocalDate to = from.PlusMonths(Months);
        BankHolidays holidays = BankHolidays.From(household.Settings.Holidays);
        Dictionary<string, string> names = household.Sources.ToDictionary(source => source.Id, source => source.Name);
        (LocalDate Date, string What, string For, string Amount)[] events =
        [
            .. PayCalendar.Paydays(household.Sources, holidays, from, to).Select(payday => (
                payday.Date, payday.IsExtra ? "extra payday" : "payday", string.Join(", ", payday.Sources.Select(source => names[source])), "")),
            .. new PayPeriod(from, to).FillDays(household.Settings.FillDay).Select(day => (day, "fill day", "", "")),
            .. BillDues.Between(household.Bills, holidays, from, to).Select(due => (
                due.Date, "due", due.Name, due.Amount.ToString(household.Settings.Numbers))),
        ];
        (LocalDate Date, string What, string For, string Amount)[] inOrder = [.. events.OrderBy(item => item.Date)];
        return new TextTable(
            [new("Date"), new("what"), Report.Names("for"), Report.Amounts("amount")],
            [.. inOrder.Select((item, i) => ImmutableArray.Create(
                i > 0 && inOrder[i - 1].Date == item.Date ? "" : DateText.Weekday(item.Date), item.What, item.For, item.Amount))],
            decimalMark: household.Settings.Numbers.DecimalMark).Lay(width).All;
    }
}
