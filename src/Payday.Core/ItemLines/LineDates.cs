using System.Globalization;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Faults;

namespace Payday.Core.ItemLines;

/// <summary>Dates at the front of a line's words; one without a year is the next one.</summary>
internal static class LineDates
{
    /// <summary>Takes the day by which something must be there: a date, or a month, whose first day it is.</summary>
    public static LocalDate? ByDate(this LineWords words)
    {
        if (words.Date() is { } date)
        {
            return date;
        }

        if (words.MonthAlone() is { } month)
        {
            return month;
        }

        Result<LocalDate> first = words.IsEmpty ? Result.Refused<LocalDate>(new DateFault.NotADate()) : Next("1 " + words.Front, words.Facts);
        if (!first.Ok)
        {
            return null;
        }

        words.Drop(1);
        return first.Value;
    }

    /// <summary>Takes a date; one without a year is the next one.</summary>
    public static LocalDate? Date(this LineWords words)
    {
        if (words.InFigures() is { } figures)
        {
            return figures;
        }

        for (int length = Math.Min(4, words.Left); length > 0; length--)
        {
            string text = string.Join(' ', words.Now[..length].Select(word => LineDays.NthOf(word) is { } day && !word.All(char.IsAsciiDigit) ? day.ToString(CultureInfo.InvariantCulture) : word));
            Result<LocalDate> date = TypedDate.Parse(text, order: words.Facts.Order);
            if (!date.Ok && date.Fault is DateFault.YearMissing)
            {
                date = Next(text, words.Facts);
            }

            if (date.Ok)
            {
                words.Drop(length);
                return date.Value;
            }
        }

        return null;
    }

    /// <summary>Takes a month with its year, as its first day.</summary>
    public static LocalDate? MonthAlone(this LineWords words)
    {
        if (words.Left < 2 || TypedDate.Month($"{words.Front} {words.Now[1]}") is not { } month)
        {
            return null;
        }

        words.Drop(2);
        return month.OnDayOfMonth(1);
    }

    // A day and a month, such as 9/11, without a year.
    private static LocalDate? InFigures(this LineWords words)
    {
        // With a point it is an amount where numbers have one, and where it changes to that.
        bool isPointed = words.Front.TrimEnd('.').Contains('.', StringComparison.Ordinal);
        string[] parts = words.Front.TrimEnd('.').Split(['/', '.']);
        if (parts.Length != 2 || (isPointed && (words.Facts.Numbers.DecimalMark == "." || LineChanges.IsChange(words.Now, 0, words.Facts))) || parts.Any(part => part.Length is 0 or > 2 || !part.All(char.IsAsciiDigit)))
        {
            return null;
        }

        int[] figures = [.. parts.Select(part => int.Parse(part, NumberStyles.None, CultureInfo.InvariantCulture))];
        LocalDate? dayFirst = Next(figures[0], figures[1], words.Facts);
        LocalDate? monthFirst = Next(figures[1], figures[0], words.Facts);
        LocalDate? date = words.Facts.Order switch
        {
            DateOrder.DayFirst => dayFirst ?? monthFirst,
            DateOrder.MonthFirst => monthFirst ?? dayFirst,
            _ => dayFirst ?? monthFirst,
        };
        if (words.Facts.Order == DateOrder.Unknown && dayFirst is { } one && monthFirst is { } other && one != other)
        {
            words.Ask(words.Front, ItemText.DayAndMonth(one), ItemText.DayAndMonth(other));
        }

        words.Drop(date is null ? 0 : 1);
        return date;
    }

    private static LocalDate? Next(int day, int month, LineFacts facts)
    {
        if (month is < 1 or > 12)
        {
            return null;
        }

        Result<LocalDate> date = Next($"{day} {CultureInfo.InvariantCulture.DateTimeFormat.MonthNames[month - 1]}", facts);
        return date.Ok ? date.Value : null;
    }

    // The latest such day within the year to come is the next one.
    private static Result<LocalDate> Next(string text, LineFacts facts) => TypedDate.Parse(text, facts.From.PlusYears(1).PlusDays(-1));
}
