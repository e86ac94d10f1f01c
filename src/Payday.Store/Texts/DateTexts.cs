using System.Globalization;
using NodaTime.Text;
using Payday.Core.Calendar;

namespace Payday.Store.Texts;

/// <summary>What is said of a typed text that is no date or no span of them, and of days that can't be.</summary>
public static class DateTexts
{
    private const string Forms = "write it like 2026-03-12 or 12 Mar 2026.";

    /// <summary>Of a day after today, where none can be.</summary>
    public static string StillToCome => "that day is still to come.";

    /// <summary>One sentence.</summary>
    public static string Of(DateFault fault) => fault switch
    {
        DateFault.NotADate => "Not a date; " + Forms,
        DateFault.NotASpan => "Write a day like 2026-03-06, a month like 2026-03 or Mar 2026, a year, or two of these with 'to' between.",
        DateFault.TwoDates two => string.Create(
            CultureInfo.InvariantCulture, $"It can be {two.First} {Month(two.Second)} or {two.Second} {Month(two.First)}; {Forms}"),
        DateFault.YearMissing missing => string.Create(CultureInfo.InvariantCulture, $"Which year? Write it like {missing.Day} {Month(missing.Month)[..3]} 2026."),
        DateFault.OtherWeekday other => $"That day is a {other.Is}; correct the day, or leave the weekday out.",
        DateFault.NoSuchMonth no => string.Create(CultureInfo.InvariantCulture, $"There is no month {no.Month}; months go from 1 to 12."),
        DateFault.NoSuchDay no => string.Create(CultureInfo.InvariantCulture, $"{Month(no.Month)} {no.Year:0000} has {no.Days} days."),
        DateFault.SpanBackwards => "The second date is before the first; turn them round.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Month(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);
}
