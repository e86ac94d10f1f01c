using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Faults;

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
    public static Result<DateSpan> Parse(string text, DateOrder order = DateOrder.Unknown)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] ends = text.Trim().Split(Between, StringSplitOptions.TrimEntries);
        if (ends.Length > 2)
        {
            return Result.Refused<DateSpan>(Forms);
        }

        Result<DateSpan> from = One(ends[0], order);
        Result<DateSpan> to = One(ends[^1], order);
        if (!from.Ok || !to.Ok)
        {
            return Result.Refused<DateSpan>(from.Fault ?? to.Fault!);
        }

        (DateSpan first, DateSpan last) = (from.Value, to.Value);
        return last.Last < first.First
            ? Result.Refused<DateSpan>("The second date is before the first; turn them round.")
            : Result.Of(new DateSpan(first.First, last.Last));
    }

    private static Result<DateSpan> One(string text, DateOrder order)
    {
        if (Month.Parse(text) is { Success: true, Value: var month })
        {
            return Result.Of(new DateSpan(month, month.With(DateAdjusters.EndOfMonth)));
        }

        if (text.Any(char.IsLetter) && text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length == 2 && TypedDate.Parse("1 " + text) is { Ok: true, Value: var first })
        {
            return Result.Of(new DateSpan(first, first.With(DateAdjusters.EndOfMonth)));
        }

        if (text.Length == 4 && Year.Parse(text) is { Success: true, Value: var year })
        {
            return Result.Of(new DateSpan(year, new LocalDate(year.Year, 12, 31)));
        }

        Result<LocalDate> day = TypedDate.Parse(text, order: order);
        return day.Ok ? Result.Of(new DateSpan(day.Value, day.Value)) : Result.Refused<DateSpan>(day.Fault == TypedDate.NotADate ? Forms : day.Fault);
    }
}
