using NodaTime;
using Payday.Core.Calendar;

namespace Payday.Statements.Habits;

/// <summary>When a series comes round: every so many weeks, or every so many months on a day.</summary>
/// <param name="Unit">Weeks or months.</param>
/// <param name="Every">1 or more.</param>
/// <param name="Anchor">A day on which it falls, before any move off a weekend.</param>
/// <param name="Day">For months the day, 1 to 31; past a month's end it means the month's last. 0 for weeks.</param>
public sealed record Rhythm(RhythmUnit Unit, int Every, LocalDate Anchor, int Day)
{
    /// <summary>The same as a schedule of the calendar.</summary>
    public Schedule ToSchedule() => (Unit, Every, Day) switch
    {
        (RhythmUnit.Weeks, _, _) => new Schedule.EveryWeeks(Every, Anchor),
        (_, 1, 31) => new Schedule.Monthly(new MonthDay.Last()),
        (_, 1, _) => new Schedule.Monthly(new MonthDay.Numbered(Day)),
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

        YearMonth month = Anchor.ToYearMonth().PlusMonths(Every * round);
        return month.OnDayOfMonth(Math.Min(Day, month.ToDateInterval().End.Day));
    }
}
