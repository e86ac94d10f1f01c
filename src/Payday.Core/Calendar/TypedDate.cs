using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.Calendar;

/// <summary>Reads a date as people write it, where it can be only one.</summary>
/// <remarks>
/// Taken are <c>2026-03-12</c> (also with one digit, points or slashes, as the year comes first), <c>12 Mar 2026</c> in any
/// order with an English month of three letters or more, with its weekday or without, and <c>25.3.2026</c> where one number
/// can only be the day. What could be two dates, such as <c>12.3.2026</c>, is taken as the household's region reads it, and
/// refused where that settles nothing; so is a year of two digits.
/// </remarks>
public static class TypedDate
{
    private const int FewestLetters = 3;

    private static readonly ImmutableArray<string> Months =
        ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    private static readonly ImmutableArray<string> Weekdays =
        ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

    /// <summary>Reads a date.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="today">
    /// Where the date can't be after today: today, which <c>today</c>, <c>yesterday</c> and a date without a year are counted
    /// from, the last being the latest such day; null refuses all three.
    /// </param>
    /// <param name="order">How two figures are read that could both be the day; see <see cref="DateOrders"/>.</param>
    /// <returns>The date; or what is wrong with it.</returns>
    public static Result<LocalDate> Parse(string text, LocalDate? today = null, DateOrder order = DateOrder.Unknown)
    {
        ArgumentNullException.ThrowIfNull(text);
        string trimmed = text.Trim();
        if (today is { } day && (Is(trimmed, "today") || Is(trimmed, "yesterday")))
        {
            return Result.Of(Is(trimmed, "today") ? day : day.PlusDays(-1));
        }

        char separator = Array.Find(['-', '.', '/'], trimmed.Contains);
        return separator != default && !trimmed.Any(char.IsLetter)
            ? InNumbers(trimmed.Split(separator), order)
            : WithAName(trimmed.Split([' ', ',', '-'], StringSplitOptions.RemoveEmptyEntries), today);
    }

    /// <summary>A month with its year, such as <c>Jan 2027</c>; null where the text is none.</summary>
    public static YearMonth? Month(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var month, { Length: 4 } year] && Find(Months, month) is { } at && year.All(char.IsAsciiDigit) && Number(year) > 0
            ? new YearMonth(Number(year), at + 1)
            : null;
    }

    private static Result<LocalDate> InNumbers(string[] parts, DateOrder order)
    {
        if (parts.Length != 3 || parts.Any(part => part.Length is 0 or > 4 || !part.All(char.IsAsciiDigit)))
        {
            return Refused(new DateFault.NotADate());
        }

        int[] numbers = [.. parts.Select(Number)];
        if (parts[0].Length == 4 && parts[1].Length <= 2 && parts[2].Length <= 2)
        {
            return Of(numbers[0], numbers[1], numbers[2]);
        }

        if (parts[2].Length != 4 || parts[0].Length > 2 || parts[1].Length > 2)
        {
            return Refused(new DateFault.NotADate());
        }

        return (numbers[0] > 12, numbers[1] > 12) switch
        {
            (false, false) when order == DateOrder.MonthFirst => Of(numbers[2], numbers[0], numbers[1]),
            (false, false) when order == DateOrder.Unknown && numbers[0] != numbers[1] && numbers[0] > 0 && numbers[1] > 0 => Refused(new DateFault.TwoDates(numbers[0], numbers[1])),
            (false, true) => Of(numbers[2], numbers[0], numbers[1]),
            _ => Of(numbers[2], numbers[1], numbers[0]),
        };
    }

    private static Result<LocalDate> WithAName(string[] words, LocalDate? today)
    {
        int? weekday = words.Length > 2 ? Find(Weekdays, words[0]) : null;
        string[] rest = weekday is null ? words : words[1..];
        int[] months = [.. rest.Select(word => Find(Months, word)).OfType<int>()];
        string[] numbers = [.. rest.Where(word => word.All(char.IsAsciiDigit))];
        string[] days = [.. numbers.Where(word => word.Length <= 2)];
        string[] years = [.. numbers.Where(word => word.Length == 4)];
        if (months.Length != 1 || days.Length != 1 || years.Length > 1 || rest.Length != 2 + years.Length)
        {
            return Refused(new DateFault.NotADate());
        }

        int month = months[0] + 1;
        if (years.Length == 0 && today is null)
        {
            return Refused(new DateFault.YearMissing(Number(days[0]), month));
        }

        Result<LocalDate> date = years.Length == 1 ? Of(Number(years[0]), month, Number(days[0])) : Latest(month, Number(days[0]), today!.Value);
        return date.Ok && weekday is { } wanted && (int)date.Value.DayOfWeek != wanted + 1
            ? Refused(new DateFault.OtherWeekday(date.Value.DayOfWeek))
            : date;
    }

    private static Result<LocalDate> Latest(int month, int day, LocalDate today)
    {
        Result<LocalDate> date = Of(today.Year, month, day);
        Result<LocalDate> before = Of(today.Year - 1, month, day);
        return (date.Ok && date.Value <= today) || !before.Ok ? date : before;
    }

    private static Result<LocalDate> Of(int year, int month, int day)
    {
        if (month is < 1 or > 12)
        {
            return Refused(new DateFault.NoSuchMonth(month));
        }

        int last = CalendarSystem.Iso.GetDaysInMonth(year, month);
        return day < 1 || day > last
            ? Refused(new DateFault.NoSuchDay(year, month, last))
            : Result.Of(new LocalDate(year, month, day));
    }

    private static int? Find(ImmutableArray<string> names, string word)
    {
        int at = word.Length < FewestLetters ? -1 : names.ToList().FindIndex(name => name.StartsWith(word, StringComparison.OrdinalIgnoreCase));
        return at < 0 ? null : at;
    }

    private static int Number(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    private static bool Is(string text, string word) => string.Equals(text, word, StringComparison.OrdinalIgnoreCase);

    private static Result<LocalDate> Refused(DateFault fault) => Result.Refused<LocalDate>(fault);
}
