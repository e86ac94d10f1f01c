using NodaTime;
using Payday.Core.Drafts;

namespace Payday.Core.ItemLines;

/// <summary>Reads when something comes round: <c>1st</c>, <c>every 6 months from 9 Nov</c>, <c>every 2 weeks from 6 Mar</c>, <c>1st and 15th</c>.</summary>
internal static class ScheduleWords
{
    /// <summary>Takes a schedule; null where none stands there.</summary>
    public static ScheduleDraft? Take(LineWords words, LocalDate from)
    {
        bool isMonthly = words.TakeAny("monthly", "every month", "each month", "a month");
        if (isMonthly)
        {
            words.TakeAny("from", "on the", "on");
        }

        if (!isMonthly && Counted(words) is { } counted)
        {
            return counted;
        }

        if (!isMonthly && words.TakeAny("every", "each") && words.Weekday() is { } weekday)
        {
            return new() { Kind = ScheduleKind.Weekly, Anchor = from.DayOfWeek == weekday ? from : from.Next(weekday) };
        }

        words.TakeAny("on the", "on", "due", "the");
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
            : isMonthly ? new() { Kind = ScheduleKind.Monthly, Day = new Calendar.MonthDay.Numbered(date.Day) }
            : new() { Kind = ScheduleKind.Dates, Dates = [date] };
    }

    private static ScheduleDraft? Counted(LineWords words)
    {
        ScheduleDraft? schedule = Rhythm(words);
        if (schedule is null)
        {
            return null;
        }

        words.TakeAny("from", "on", "starting", "due");
        return schedule with { Anchor = words.Date() };
    }

    private static ScheduleDraft? Rhythm(LineWords words)
    {
        if (words.TakeAny("weekly", "every week", "each week", "a week"))
        {
            return new() { Kind = ScheduleKind.Weekly };
        }

        if (words.TakeAny("fortnightly", "every other week", "every second week", "every fortnight", "every two weeks", "every 2 weeks"))
        {
            return new() { Kind = ScheduleKind.Fortnightly };
        }

        if (words.TakeAny("yearly", "annually", "every year", "each year", "a year"))
        {
            return new() { Kind = ScheduleKind.Yearly };
        }

        if (words.TakeAny("quarterly", "every quarter"))
        {
            return new() { Kind = ScheduleKind.EveryMonths, Months = 3 };
        }

        if (words.TakeAny("half-yearly", "twice a year"))
        {
            return new() { Kind = ScheduleKind.EveryMonths, Months = 6 };
        }

        for (int count = 1; count <= HouseholdLimits.MostWeeks; count++)
        {
            string number = count.ToString(System.Globalization.CultureInfo.InvariantCulture);
            if (words.Take("every", number, "weeks"))
            {
                return new() { Kind = ScheduleKind.EveryWeeks, Weeks = count };
            }

            if (count <= HouseholdLimits.MostMonths && words.Take("every", number, "months"))
            {
                return new() { Kind = ScheduleKind.EveryMonths, Months = count };
            }
        }

        return null;
    }
}
