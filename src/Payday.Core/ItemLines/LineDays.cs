using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Drafts;

namespace Payday.Core.ItemLines;

/// <summary>Days of the month and weekdays at the front of a line's words.</summary>
internal static class LineDays
{
    private static readonly string[] Nths = ["first", "second", "third", "fourth", "fifth"];

    /// <summary>The weekday after a number or a word like <c>second</c> at the front; null where none stands there.</summary>
    public static IsoDayOfWeek? PeekNthWeekday(this LineWords words) => words.Left > 1 && NthOf(words.Front) is <= MonthDay.LastNth ? Weekday(words.Now[1]) : null;

    /// <summary>Takes a day of the month: <c>1st</c>, <c>15</c>, <c>last</c>, <c>last working day</c>, <c>2nd Friday</c>.</summary>
    public static MonthDay? Day(this LineWords words)
    {
        if (words.TakeAny("last working day", "last workday"))
        {
            return new MonthDay.LastWorkingDay();
        }

        if (words.TakeAny("first working day", "first workday"))
        {
            return new MonthDay.FirstWorkingDay();
        }

        if (words.Left > 1 && LineWords.Is(words.Front, "last") && Weekday(words.Now[1]) is { } lastOne)
        {
            words.Drop(2);
            return new MonthDay.NthWeekday(MonthDay.LastNth, lastOne);
        }

        if (words.Left > 1 && NthOf(words.Front) is { } nth and <= MonthDay.LastNth && Weekday(words.Now[1]) is { } weekday)
        {
            words.Drop(2);
            return new MonthDay.NthWeekday(nth, weekday);
        }

        if (words.TakeAny("last day", "last", "end", "month-end"))
        {
            return new MonthDay.Last();
        }

        if (words.IsEmpty || NthOf(words.Front) is not { } day || day > MonthDay.LastDay || (words.Left > 1 && Month(words.Now[1])))
        {
            return null;
        }

        words.Drop(1);
        return new MonthDay.Numbered(day);
    }

    /// <summary>Takes a weekday.</summary>
    public static IsoDayOfWeek? Weekday(this LineWords words)
    {
        if (words.IsEmpty || Weekday(words.Front) is not { } day)
        {
            return null;
        }

        words.Drop(1);
        return day;
    }

    /// <summary>Whether some words are a day of the month and nothing else.</summary>
    public static bool IsADay(this LineWords words, ImmutableArray<string> some)
    {
        ImmutableArray<string> before = words.Now;
        words.Now = some;
        bool isDay = words.Day() is not null && words.IsEmpty;
        words.Now = before;
        return isDay;
    }

    /// <summary>The number that a word like <c>2nd</c>, <c>second</c> or <c>2</c> says, 1 to 99; null for another word.</summary>
    public static int? NthOf(string word)
    {
        string lower = word.ToLowerInvariant();
        int named = Array.IndexOf(Nths, lower);
        if (named >= 0)
        {
            return named + 1;
        }

        string digits = lower.Length > 2 && lower[^2..] is "st" or "nd" or "rd" or "th" ? lower[..^2] : lower;
        return digits.Length is 1 or 2 && digits.All(char.IsAsciiDigit) && int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture) is > 0 and var day ? day : null;
    }

    private static bool Month(string word) => word.Length >= 3
        && CultureInfo.InvariantCulture.DateTimeFormat.MonthNames.Any(name => name.StartsWith(word, StringComparison.OrdinalIgnoreCase));

    private static IsoDayOfWeek? Weekday(string word) => word.Length < 3
        ? null
        : Enumerable.Range(1, 7).Select(day => (IsoDayOfWeek?)day)
            .FirstOrDefault(day => day!.Value.ToString().StartsWith(word.TrimEnd('s'), StringComparison.OrdinalIgnoreCase));
}
