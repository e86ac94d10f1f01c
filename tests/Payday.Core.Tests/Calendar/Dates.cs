using System.Globalization;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Ids;

namespace Payday.Core.Tests.Calendar;

/// <summary>Short ways to write dates, sources and holidays in tests.</summary>
internal static class Dates
{
    public static BankHolidays UnitedStates { get; } = Of(HolidaySet.UnitedStates);

    public static BankHolidays EnglandAndWales { get; } = Of(HolidaySet.EnglandAndWales);

    public static BankHolidays Target { get; } = Of(HolidaySet.Target);

    public static LocalDate Date(string iso) => LocalDatePattern.Iso.Parse(iso).Value;

    public static LocalDate[] All(string isoDates) =>
        [.. isoDates.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Date)];

    /// <summary>Dates of one year, written as 01-30 02-27.</summary>
    public static LocalDate[] OfYear(int year, string monthDays) =>
        All(string.Join(' ', monthDays.Split(' ').Select(day => string.Create(CultureInfo.InvariantCulture, $"{year:0000}-{day}"))));

    public static BankHolidays Closed(string isoDates) => BankHolidays.From(new HolidayRules(HolidaySet.None, [.. All(isoDates)]));

    public static IncomeSource Source(Schedule schedule, Shift shift = Shift.None, string id = "wage", LocalDate? until = null) =>
        new(new SourceId(id), id, schedule, shift, Money.Zero(Currency.FromCode("USD")), until);

    public static Schedule Weekly(string anchor) => new Schedule.EveryWeeks(1, Date(anchor));

    public static Schedule Fortnightly(string anchor) => new Schedule.EveryWeeks(2, Date(anchor));

    public static Schedule MonthlyOn(int day) => new Schedule.Monthly(new MonthDay.Numbered(day));

    private static BankHolidays Of(HolidaySet set) => BankHolidays.From(new HolidayRules(set, []));
}
