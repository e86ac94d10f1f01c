using NodaTime;
using Payday.Core.Faults;

namespace Payday.Core.Calendar;

/// <summary>Why a typed text is no date, or no span of dates.</summary>
public abstract record DateFault : Fault
{
    /// <summary>It is like no date at all.</summary>
    public sealed record NotADate : DateFault;

    /// <summary>It is like no day, month, year or span of them.</summary>
    public sealed record NotASpan : DateFault;

    /// <summary>It can be either of two dates.</summary>
    /// <param name="First">Its first figure, which is the day or the month.</param>
    /// <param name="Second">Its second figure, which is the month or the day.</param>
    public sealed record TwoDates(int First, int Second) : DateFault;

    /// <summary>It has no year, and none can be taken for granted.</summary>
    /// <param name="Day">The day as typed; it may be past the month's end.</param>
    /// <param name="Month">The month, 1 to 12.</param>
    public sealed record YearMissing(int Day, int Month) : DateFault;

    /// <summary>It names a weekday that it isn't.</summary>
    /// <param name="Is">The weekday of that date.</param>
    public sealed record OtherWeekday(IsoDayOfWeek Is) : DateFault;

    /// <summary>There is no such month.</summary>
    /// <param name="Month">What was typed for it.</param>
    public sealed record NoSuchMonth(int Month) : DateFault;

    /// <summary>The month has no such day.</summary>
    /// <param name="Year">The year.</param>
    /// <param name="Month">The month, 1 to 12.</param>
    /// <param name="Days">How many days it has.</param>
    public sealed record NoSuchDay(int Year, int Month, int Days) : DateFault;

    /// <summary>The second date of a span is before the first.</summary>
    public sealed record SpanBackwards : DateFault;
}
