using System.Globalization;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A day of the month: 15, last, first or last working day, 2nd or last Friday.</summary>
internal sealed class DayType : FieldType<MonthDay?>
{
    private static readonly string[] Nths = ["1st", "2nd", "3rd", "4th", "5th"];
    private static readonly string[] NthWords = ["first", "second", "third", "fourth", "fifth"];

    /// <inheritdoc/>
    public override string Show(MonthDay? value, SetupFacts facts) => value switch
    {
        MonthDay.NthWeekday { Nth: MonthDay.LastNth } last => $"last {last.Weekday}",
        MonthDay.NthWeekday nth => $"{Nths[nth.Nth - 1]} {nth.Weekday}",
        MonthDay.FirstWorkingDay => "first working day",
        MonthDay.LastWorkingDay => "last working day",
        MonthDay.Last => "last",
        MonthDay.Numbered numbered => numbered.Day.ToString(CultureInfo.InvariantCulture),
        _ => throw new ArgumentOutOfRangeException(nameof(value)),
    };

    /// <inheritdoc/>
    public override Result<MonthDay?> Take(string text, SetupFacts facts)
    {
        string[] words = text.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        MonthDay? day = words switch
        {
            ["last"] or ["last", "day"] => new MonthDay.Last(),
            ["last", "working", "day"] => new MonthDay.LastWorkingDay(),
            ["first", "working", "day"] => new MonthDay.FirstWorkingDay(),
            ["last", string weekday] when Weekday(weekday) is { } found => new MonthDay.NthWeekday(MonthDay.LastNth, found),
            [string number] when Number(number, MonthDay.LastDay) is { } found => new MonthDay.Numbered(found),
            [string nth, string weekday] when Nth(nth) is { } count && Weekday(weekday) is { } found => new MonthDay.NthWeekday(count, found),
            _ => null,
        };
        return day is null ? Result.Refused<MonthDay?>(new TypedFault.NotADay(text)) : Result.Of<MonthDay?>(day);
    }

    private static int? Nth(string word)
    {
        int at = Math.Max(Array.IndexOf(Nths, word), Array.IndexOf(NthWords, word));
        return at >= 0 ? at + 1 : Number(word, MonthDay.LastNth);
    }

    private static int? Number(string word, int most) =>
        int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= 1 && number <= most ? number : null;

    // Three letters tell the days of the week apart.
    private static IsoDayOfWeek? Weekday(string word) => word.Length < 3
        ? null
        : Enumerable.Range(1, 7).Select(day => (IsoDayOfWeek?)day)
            .FirstOrDefault(day => day!.Value.ToString().StartsWith(word, StringComparison.OrdinalIgnoreCase));
}
