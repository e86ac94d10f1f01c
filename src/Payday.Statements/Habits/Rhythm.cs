using NodaTime;
using Payday.Core.Calendar;

namespace Payday.Statements.Habits;

/// <summary>When a series comes round: every so many weeks, every so many months on a day, or twice a month.</summary>
/// <param name="Unit">Weeks or months.</param>
/// <param name="Every">1 or more.</param>
/// <param name="Anchor">A day on which it falls, before any move off a weekend.</param>
/// <param name="Day">For months the day, 1 to 31; past a month's end it means the month's last. 0 for weeks.</param>
public sealed record Rhythm(RhythmUnit Unit, int Every, LocalDate Anchor, int Day)
{
    /// <summary>For twice a month the later of the two days, 31 meaning the last; else 0.</summary>
    public int SecondDay { get; init; }

    /// <summary>Whether it comes round more than once in four weeks: what is bought by habit does too.</summary>
    internal bool IsOften => SecondDay > 0 || (Unit == RhythmUnit.Weeks && Every < 4);

    /// <summary>The same as a schedule of the calendar.</summary>
    public Schedule ToSchedule() => (Unit, Every, Day) switch
    {
        (RhythmUnit.Weeks, _, _) => new Schedule.EveryWeeks(Every, Anchor),
        (_, 1, _) when SecondDay > 0 => new Schedule.TwiceMonthly(Of(Day), Of(SecondDay)),
        (_, 1, _) => new Schedule.Monthly(Of(Day)),
        _ => new Schedule.EveryMonths(Every, Anchor),
    };

    /// <summary>How many days early or late a line may be and still belong: banks move days over weekends and holidays.</summary>
    internal int Tolerance => (Unit, Every) switch
    {
        (RhythmUnit.Weeks, 1) => 1,
        (RhythmUnit.Weeks, _) => 2,
        (_, < 3) => 3,
        _ => 5,
    };

    /// <summary>The day that is so many rounds after the anchor.</summary>
    internal LocalDate At(int round)
    {
        if (Unit == RhythmUnit.Weeks)
        {
            return Anchor.PlusWeeks(Every * round);
        }

        bool isSecond = SecondDay > 0 && round % 2 != 0;
        int months = SecondDay > 0 ? (round - (isSecond ? 1 : 0)) / 2 : Every * round;
        return OnDay(Anchor.ToYearMonth().PlusMonths(months), isSecond ? SecondDay : Day);
    }

    /// <summary>A day of a month; past the month's end its last.</summary>
    internal static LocalDate OnDay(YearMonth month, int day) => month.OnDayOfMonth(Math.Min(day, month.ToDateInterval().End.Day));

    private static MonthDay Of(int day) => day == 31 ? new MonthDay.Last() : new MonthDay.Numbered(day);
}
