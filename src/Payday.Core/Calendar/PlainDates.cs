using System.Globalization;
using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>Dates as a person reads them.</summary>
internal static class PlainDates
{
    /// <summary>E.g. 6 Mar 2026.</summary>
    public static string DayMonthYear(LocalDate date) => date.ToString("d MMM uuuu", CultureInfo.InvariantCulture);
}
