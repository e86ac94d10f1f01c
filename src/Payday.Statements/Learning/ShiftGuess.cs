using NodaTime;
using Payday.Core.Calendar;
using Payday.Statements.Habits;
using Payday.Statements.Lines;

namespace Payday.Statements.Learning;

/// <summary>Where a series' days on weekends move, as far as its lines show it.</summary>
internal static class ShiftGuess
{
    /// <summary>Where most of the days that fell on a weekend went; what is usual where none did, or as many went either way.</summary>
    public static Shift Of(Recurring series, Shift usual)
    {
        int before = 0;
        int after = 0;
        int stayed = 0;
        foreach (StatementLine line in series.Lines)
        {
            LocalDate scheduled = Nearest(series.Rhythm, line.Date);
            if (scheduled.DayOfWeek < IsoDayOfWeek.Saturday)
            {
                continue;
            }

            before += line.Date < scheduled ? 1 : 0;
            after += line.Date > scheduled ? 1 : 0;
            stayed += line.Date == scheduled ? 1 : 0;
        }

        return before > after && before > stayed ? Shift.Before
            : after > before && after > stayed ? Shift.After
            : stayed > before && stayed > after ? Shift.None
            : usual;
    }

    private static LocalDate Nearest(Rhythm rhythm, LocalDate date)
    {
        int round = 0;
        while (rhythm.At(round) < date)
        {
            round++;
        }

        while (rhythm.At(round) > date)
        {
            round--;
        }

        LocalDate early = rhythm.At(round);
        LocalDate late = rhythm.At(round + 1);
        return Period.DaysBetween(early, date) <= Period.DaysBetween(date, late) ? early : late;
    }
}
