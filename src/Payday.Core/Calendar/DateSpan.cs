using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;

namespace Payday.Core.Calendar;

/// <summary>Days from one to another, both included.</summary>
/// <param name="First">The first day.</param>
/// <param name="Last">The last day; not before <paramref name="First"/>.</param>
public readonly record struct DateSpan(LocalDate First, LocalDate Last)
{
    private const string Between = " to ";
    private static readonly LocalDatePattern Month = LocalDatePattern.CreateWithInvariantCulture("uuuu-MM");
    private static readonly LocalDatePattern Year = LocalDatePattern.CreateWithInvariantCulture("uuuu");

    /// <summary>Whether a day is in it.</summary>
    public bool Has(LocalDate date) => date >= First && date <= Last;

    /// <summary>Reads a day (<c>2026-03-06</c>), a month (<c>2026-03</c>), a year, or two of them with <c>to</c> between.</summary>
    /// <param name="text">What was typed.</param>
    /// <returns>The days; or one sentence on what is wrong.</returns>
    public static Read<DateSpan> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] ends = text.Trim().Split(Between, StringSplitOptions.TrimEntries);
        if (ends.Length > 2 || One(ends[0]) is not { } first || One(ends[^1]) is not { } last)
        {
            return Read.Refused<DateSpan>("Write a day like 2026-03-06, a month like 2026-03, a year, or two of these with 'to' between.");
        }

        return last.Last < first.First
            ? Read.Refused<DateSpan>("The second date is before the first; turn them round.")
            : Read.Of(new DateSpan(first.First, last.Last));
    }

    private static DateSpan? One(string text)
    {
        if (LocalDatePattern.Iso.Parse(text) is { Success: true, Value: var day })
        {
            return new DateSpan(day, day);
        }

        if (Month.Parse(text) is { Success: true, Value: var month })
        {
            return new DateSpan(month, month.With(DateAdjusters.EndOfMonth));
        }

        return text.Length == 4 && Year.Parse(text) is { Success: true, Value: var year }
            ? new DateSpan(year, new LocalDate(year.Year, 12, 31))
            : null;
    }
}
