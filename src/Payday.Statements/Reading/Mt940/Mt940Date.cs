using NodaTime;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Mt940;

/// <summary>The dates of MT940, which have no century and sometimes no year.</summary>
internal static class Mt940Date
{
    /// <summary>The day of <c>YYMMDD</c>. Years from 80 on are of the last century.</summary>
    public static DayReading Of(ReadOnlySpan<char> text)
    {
        if (text.Length < 6 || text[..6].ContainsAnyExceptInRange('0', '9'))
        {
            return default;
        }

        int year = DayReading.Number(text[..2]);
        return DayReading.Of(year + (year < 80 ? 2000 : 1900), DayReading.Number(text[2..4]), DayReading.Number(text[4..6]));
    }

    /// <summary>The day of <c>MMDD</c> in the year that puts it nearest the value date: an entry of 31 December may count from 2 January, or the other way round.</summary>
    public static DayReading Nearest(ReadOnlySpan<char> text, LocalDate valueDate)
    {
        DayReading best = default;
        for (int year = valueDate.Year - 1; year <= valueDate.Year + 1; year++)
        {
            DayReading day = DayReading.Of(year, DayReading.Number(text[..2]), DayReading.Number(text[2..4]));
            if (day.Date is { } date && (best.Date is not { } so || Distance(date, valueDate) < Distance(so, valueDate)))
            {
                best = day;
            }
        }

        return best;
    }

    private static int Distance(LocalDate one, LocalDate other) => Math.Abs(Period.DaysBetween(one, other));
}
