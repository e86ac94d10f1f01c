using NodaTime;

namespace Payday.Statements.Texts;

/// <summary>A day as a bank wrote it.</summary>
/// <param name="Date">The day; null where it is none.</param>
/// <param name="WasMoved">Whether the month has no such day, so that its last one was taken: banks that reckon with 30 days a month write 30 February.</param>
internal readonly record struct DayReading(LocalDate? Date, bool WasMoved)
{
    /// <summary>The day of three numbers.</summary>
    /// <param name="year">1900 to 2199, else it is none: a statement's date is of our time.</param>
    /// <param name="month">1 to 12, else it is none.</param>
    /// <param name="day">1 to 31, else it is none.</param>
    public static DayReading Of(int year, int month, int day)
    {
        if (year is < 1900 or > 2199 || month is < 1 or > 12 || day is < 1 or > 31)
        {
            return default;
        }

        int last = CalendarSystem.Iso.GetDaysInMonth(year, month);
        return new DayReading(new LocalDate(year, month, Math.Min(day, last)), day > last);
    }

    /// <summary>The day in the first characters of a text, as <c>YYYYMMDD</c>.</summary>
    public static DayReading Compact(ReadOnlySpan<char> text) =>
        text.Length >= 8 && !text[..8].ContainsAnyExceptInRange('0', '9')
            ? Of(Number(text[..4]), Number(text[4..6]), Number(text[6..8]))
            : default;

    /// <summary>The day in the first characters of a text, as <c>YYYY-MM-DD</c>. Time and offset behind it move nothing.</summary>
    public static DayReading Iso(ReadOnlySpan<char> text) =>
        text.Length >= 10 && text[4] == '-' && text[7] == '-' && IsDigits(text[..4]) && IsDigits(text[5..7]) && IsDigits(text[8..10])
            ? Of(Number(text[..4]), Number(text[5..7]), Number(text[8..10]))
            : default;

    /// <summary>The number of a few digits.</summary>
    public static int Number(ReadOnlySpan<char> digits)
    {
        int number = 0;
        foreach (char c in digits)
        {
            number = (number * 10) + (c - '0');
        }

        return number;
    }

    private static bool IsDigits(ReadOnlySpan<char> text) => !text.ContainsAnyExceptInRange('0', '9');
}
