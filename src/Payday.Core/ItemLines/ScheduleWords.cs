using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Drafts;

namespace Payday.Core.ItemLines;

/// <summary>Reads when something comes round: <c>1st</c>, <c>every 6 months from 9 Nov</c>, <c>every other Friday from 6 Mar</c>, <c>1st and 15th</c>; <c>2w</c> and <c>6m</c> for short.</summary>
internal static class ScheduleWords
{
    private static readonly string[] From = ["from the", "from", "starting", "due on the", "due on", "due", "on the", "on", "since"];

    /// <summary>Takes a schedule; null where none stands there.</summary>
    public static ScheduleDraft? Take(LineWords words, LocalDate from)
    {
        bool isMonthly = words.TakeAny("monthly", "every month", "each month", "a month", "m");
        if (isMonthly)
        {
            words.TakeAny(From);
        }

        if (!isMonthly && (Alternate(words) ?? Counted(words)) is { } counted)
        {
            return counted;
        }

        if (!isMonthly && words.TakeAny("every", "each"))
        {
            if (words.Weekday() is { } weekday)
            {
                return new() { Kind = ScheduleKind.Weekly, Anchor = words.TakeAny(From) ? words.Date() : from.DayOfWeek == weekday ? from : from.Next(weekday) };
            }

            AskWhichSecond(words);
        }

        words.TakeAny("on the", "on", "due on the", "due", "the");
        if (words.Day() is { } day)
        {
            if (words.TakeAny("and the", "and", "&"))
            {
                return words.Day() is { } second ? new() { Kind = ScheduleKind.TwiceMonthly, Days = [day, second] } : null;
            }

            words.TakeAny("of each month", "of every month", "of the month", "each month", "every month", "monthly", "a month");
            return new() { Kind = ScheduleKind.Monthly, Day = day };
        }

        return words.Date() is not { } date ? null
            : isMonthly ? new() { Kind = ScheduleKind.Monthly, Day = new MonthDay.Numbered(date.Day) }
            : Dates(words, date);
    }

    private static ScheduleDraft Dates(LineWords words, LocalDate first)
    {
        var dates = ImmutableArray.CreateBuilder<LocalDate>();
        dates.Add(first);
        while (words.TakeAny("and on", "and", "&") && words.Date() is { } next)
        {
            dates.Add(next);
        }

        return new() { Kind = ScheduleKind.Dates, Dates = dates.ToImmutable() };
    }

    // Every second Friday may be a Friday in two weeks, or the second one of each month: only a date or a month behind it tells.
    private static void AskWhichSecond(LineWords words)
    {
        if (words.PeekNthWeekday() is { } named && words.Left == 2)
        {
            words.Ask($"every {words.Front} {named}", $"every other {named} from a date", $"{words.Front} {named} of each month");
        }
    }

    // A weekday tells no date by itself: either of two could be meant.
    private static ScheduleDraft? Alternate(LineWords words)
    {
        ImmutableArray<string> before = words.Now;
        bool isSecond = words.TakeAny("every second", "every 2nd");
        if ((!isSecond && !words.TakeAny("every other", "each other")) || words.Weekday() is not { } weekday || (isSecond && !words.TakeAny(From)))
        {
            words.Now = before;
            return null;
        }

        words.TakeAny(From);
        LocalDate? date = words.Date();
        if (date is { } there && there.DayOfWeek != weekday)
        {
            words.Ask(
                $"{weekday} from {ItemText.DayAndMonth(there)}",
                $"{weekday} from {ItemText.DayAndMonth(there.Next(weekday))}",
                $"{there.DayOfWeek} from {ItemText.DayAndMonth(there)}");
        }

        return new() { Kind = ScheduleKind.Fortnightly, Anchor = date };
    }

    private static ScheduleDraft? Counted(LineWords words)
    {
        ScheduleDraft? schedule = Rhythm(words);
        if (schedule is null)
        {
            return null;
        }

        words.TakeAny(From);
        return schedule with { Anchor = words.Date() };
    }

    private static ScheduleDraft? Rhythm(LineWords words)
    {
        if (words.TakeAny("weekly", "every week", "each week", "a week", "w"))
        {
            return new() { Kind = ScheduleKind.Weekly };
        }

        if (words.TakeAny("fortnightly", "every other week", "every second week", "every fortnight", "a fortnight", "every two weeks"))
        {
            return new() { Kind = ScheduleKind.Fortnightly };
        }

        if (words.TakeAny("yearly", "annually", "every year", "each year", "a year", "y"))
        {
            return new() { Kind = ScheduleKind.Yearly };
        }

        if (words.TakeAny("quarterly", "every quarter", "each quarter", "a quarter", "q"))
        {
            return new() { Kind = ScheduleKind.EveryMonths, Months = 3 };
        }

        if (words.TakeAny("half-yearly", "half yearly", "twice a year", "every half year", "every half-year"))
        {
            return new() { Kind = ScheduleKind.EveryMonths, Months = 6 };
        }

        return words.Rhythm() switch
        {
            (1, false) => new() { Kind = ScheduleKind.Weekly },
            (2, false) => new() { Kind = ScheduleKind.Fortnightly },
            (var weeks, false) => new() { Kind = ScheduleKind.EveryWeeks, Weeks = weeks },
            (12, true) => new() { Kind = ScheduleKind.Yearly },
            (var months, true) => new() { Kind = ScheduleKind.EveryMonths, Months = months },
            null => null,
        };
    }
}
