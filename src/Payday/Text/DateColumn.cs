using NodaTime;

namespace Payday.Text;

/// <summary>How the dates of a table are written: with their year where there are several, as it is only in the way where there is one.</summary>
internal sealed class DateColumn
{
    // No date is wider.
    private static readonly LocalDate WidestDate = new(2030, 10, 30);

    private readonly bool hasYears;

    private DateColumn(bool hasYears) => this.hasYears = hasYears;

    /// <summary>A text as wide as the widest date.</summary>
    public string Widest => Text(WidestDate);

    /// <summary>The form for some dates.</summary>
    public static DateColumn Of(IEnumerable<LocalDate> dates) => new(dates.Select(date => date.Year).Distinct().Skip(1).Any());

    /// <summary>A date, e.g. <c>6 Mar</c> or <c>6 Mar 2026</c>.</summary>
    public string Text(LocalDate date) => hasYears ? DateText.Day(date) : DateText.Short(date);
}
