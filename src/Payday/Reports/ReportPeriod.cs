using System.Globalization;
using NodaTime;

namespace Payday.Reports;

/// <summary>A month or a year that a report is of.</summary>
/// <param name="Last">The month; of a year the last that there is something of.</param>
/// <param name="IsYear">Whether all the year up to it is meant.</param>
internal readonly record struct ReportPeriod(YearMonth Last, bool IsYear)
{
    /// <summary>Its first month.</summary>
    public YearMonth First => IsYear ? new YearMonth(Last.Year, 1) : Last;

    /// <summary>A year as far as it has gone.</summary>
    public static ReportPeriod OfYear(int year, LocalDate today) => new(year == today.Year ? today.ToYearMonth() : new YearMonth(year, 12), IsYear: true);

    /// <summary>E.g. <c>March 2026</c>, <c>2026</c>; with how far it has gone, where it goes on.</summary>
    public string Title(LocalDate today) => Name + (Last == today.ToYearMonth() ? ", so far" : "");

    /// <summary>E.g. <c>March 2026</c>, <c>2026</c>.</summary>
    public string Name => Last.ToString(IsYear ? "uuuu" : "MMMM uuuu", CultureInfo.InvariantCulture);

    /// <summary>For the name of a file, e.g. <c>2026-03</c>, <c>2026</c>.</summary>
    public string Short => Last.ToString(IsYear ? "uuuu" : "uuuu-MM", CultureInfo.InvariantCulture);
}
