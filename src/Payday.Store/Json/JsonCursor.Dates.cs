using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using NodaTime;
using Payday.Store.Fields;

namespace Payday.Store.Json;

public sealed partial class JsonCursor
{
    /// <summary>The first year that a date may have.</summary>
    public const int FirstYear = 1900;

    /// <summary>The last year that a date may have.</summary>
    public const int LastYear = 2199;

    /// <summary>A date of the ISO calendar, such as <c>"2026-03-05"</c>, from 1900 to 2199.</summary>
    public LocalDate Date()
    {
        var standIn = new LocalDate(FirstYear, 1, 1);
        if (!Is(JsonValueKind.String, "a date such as \"2026-03-05\""))
        {
            return standIn;
        }

        if (!TryDigits(Text, out int year, out int month, out int day))
        {
            Refuse($"\"{SafeText.Shown(Text)}\" is not a date; write it like 2026-03-05.");
        }
        else if (year is < FirstYear or > LastYear)
        {
            Refuse($"{Text} is too far off; dates go from {FirstYear} to {LastYear}.");
        }
        else if (month is < 1 or > 12)
        {
            Refuse($"{Text} is not in the calendar: months go from 01 to 12, in the middle.");
        }
        else if (day < 1 || day > CalendarSystem.Iso.GetDaysInMonth(year, month))
        {
            string name = CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);
            Refuse($"{Text} is not in the calendar: {name} {year} has {CalendarSystem.Iso.GetDaysInMonth(year, month)} days.");
        }
        else
        {
            return new LocalDate(year, month, day);
        }

        return standIn;
    }

    /// <summary>A list of dates, in the order of the text.</summary>
    /// <param name="most">The most it may have.</param>
    public ImmutableArray<LocalDate> Dates(int most) => [.. Items(most).Select(item => item.Date())];

    private static bool TryDigits(string text, out int year, out int month, out int day)
    {
        (year, month, day) = (0, 0, 0);
        return text.Length == 10 && text[4] == '-' && text[7] == '-'
            && int.TryParse(text.AsSpan(0, 4), NumberStyles.None, CultureInfo.InvariantCulture, out year)
            && int.TryParse(text.AsSpan(5, 2), NumberStyles.None, CultureInfo.InvariantCulture, out month)
            && int.TryParse(text.AsSpan(8, 2), NumberStyles.None, CultureInfo.InvariantCulture, out day);
    }
}
