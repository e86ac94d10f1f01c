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
    private const string Forms = "Write a day like 2026-03-06, a month like 2026-03 or Mar 2026, a year, or two of these with 'to' between.";
    private static readonly LocalDatePattern Month = LocalDatePattern.CreateWithInvariantCulture("uuuu-MM");
    private static readonly LocalDatePattern Year = LocalDatePattern.CreateWithInvariantCulture("uuuu");

    /// <summary>Whether a day is in it.</summary>
    public bool Has(LocalDate date) => date >= First && date <= Last;

    /// <summary>Reads a day (<c>2026-03-06</c>, or as <see cref="TypedDate"/> has it), a month (<c>2026-03</c>, <c>Mar 2026</c>), a year, or two of them with <c>to</c> between.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="order">How a day in figures is read that could be two; see <see cref="DateOrders"/>.</param>
    /// <returns>The days; or one sentence on what is wrong.</returns>
    public static Read<DateSpan> Parse(string text, DateOrder order = DateOrder.Unknown)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] ends = text.Trim().Split(Between, StringSplitOptions.TrimEntries);
        if (ends.Length > 2)
        {
            return Read.Refused<DateSpan>(Forms);
        }

        Read<DateSpan> from = One(ends[0], order);
        Read<DateSpan> to = One(ends[^1], order);
        if (!from.Ok || !to.Ok)
        {
            return Read.Refused<DateSpan>(from.Fault ?? to.Fault!);
        }

        (DateSpan first, DateSpan last) = (from.Value, to.Value);
        return last.Last < first.First
            ? Read.Refused<DateSpan>("The second date is before the first; turn them round.")
            : Read.Of(new DateSpan(first.First, last.Last));
    }

    private static Read<DateSpan> One(string text, DateOrder order)
    {
        if (Month.Parse(text) is { Success: true, Value: var month })
        {
            return Read.Of(new DateSpan(month, month.With(DateAdjusters.EndOfMonth)));
        }

        if (text.Any(char.IsLetter) && text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length == 2 && TypedDate.Parse("1 " + text) is { Ok: true, Value: var first })
        {
            return Read.Of(new DateSpan(first, first.With(DateAdjusters.EndOfMonth)));
        }

        if (text.Length == 4 && Year.Parse(text) is { Success: true, Value: var year })
        {
            return Read.Of(new DateSpan(year, new LocalDate(year.Year, 12, 31)));
        }

        Read<LocalDate> day = TypedDate.Parse(text, order: order);
        return day.Ok ? Read.Of(new DateSpan(day.Value, day.Value)) : Read.Refused<DateSpan>(day.Fault == TypedDate.NotADate ? Forms : day.Fault);
    }
}
