using NodaTime;

namespace Payday.Statements.Habits;

/// <summary>How well days follow a rhythm.</summary>
/// <param name="Rhythm">The rhythm.</param>
/// <param name="Hits">The places of the days that follow it, in order.</param>
/// <param name="Expected">How many days it has from the first to the last that follows.</param>
/// <param name="Days">How many days there are.</param>
/// <param name="Off">How many days those that follow are early or late, in all.</param>
internal sealed record RhythmFit(Rhythm Rhythm, List<int> Hits, int Expected, int Days, int Off)
{
    private static readonly (RhythmUnit Unit, int Every)[] Rhythms =
    [
        (RhythmUnit.Weeks, 1), (RhythmUnit.Weeks, 2), (RhythmUnit.Weeks, 4),
        (RhythmUnit.Months, 1), (RhythmUnit.Months, 2), (RhythmUnit.Months, 3), (RhythmUnit.Months, 6), (RhythmUnit.Months, 12),
    ];

    // The first lines may be strays; a series shows by its third.
    private const int MostAnchors = 3;

    /// <summary>What part of the days expected came, in hundredths.</summary>
    public int Cover => 100 * Hits.Count / Expected;

    /// <summary>What part of the days follows it, in hundredths.</summary>
    public int Purity => 100 * Hits.Count / Days;

    /// <summary>How good it is, in thousandths: twice the hits over days expected and days there.</summary>
    private int Quality => 2000 * Hits.Count / (Expected + Days);

    /// <summary>The rhythm that days follow best; of equals the one they are least off. Null for fewer than two days.</summary>
    /// <param name="days">In order.</param>
    public static RhythmFit? Best(IReadOnlyList<LocalDate> days)
    {
        RhythmFit? best = null;
        foreach (Rhythm rhythm in Candidates(days))
        {
            RhythmFit fit = Of(rhythm, days);
            if (fit.Hits.Count >= 2 && (best is null || (fit.Quality, -fit.Off * 100 / fit.Hits.Count).CompareTo((best.Quality, -best.Off * 100 / best.Hits.Count)) > 0))
            {
                best = fit;
            }
        }

        return best;
    }

    private static IEnumerable<Rhythm> Candidates(IReadOnlyList<LocalDate> days)
    {
        int[] monthDays = [.. days.Select(day => day.Day).Append(31).Distinct().Order()];
        foreach (LocalDate anchor in days.Take(MostAnchors))
        {
            foreach ((RhythmUnit unit, int every) in Rhythms)
            {
                if (unit == RhythmUnit.Weeks)
                {
                    for (int shift = -1; shift <= 1; shift++)
                    {
                        yield return new Rhythm(unit, every, anchor.PlusDays(shift), 0);
                    }

                    continue;
                }

                foreach (int day in monthDays)
                {
                    for (int shift = -1; shift <= 1; shift++)
                    {
                        YearMonth month = anchor.ToYearMonth().PlusMonths(shift);
                        var rhythm = new Rhythm(unit, every, month.OnDayOfMonth(Math.Min(day, month.ToDateInterval().End.Day)), day);
                        if (Math.Abs(Period.DaysBetween(rhythm.Anchor, anchor)) <= rhythm.Tolerance)
                        {
                            yield return rhythm;
                        }
                    }
                }
            }
        }
    }

    // Rounds and days both rise, so one walk pairs them: a day belongs to the round it is nearest to, the nearest day of a round counts.
    private static RhythmFit Of(Rhythm rhythm, IReadOnlyList<LocalDate> days)
    {
        var hits = new List<int>();
        int off = 0;
        int at = 0;
        int? first = null;
        int last = 0;
        int round = 0;
        while (Period.DaysBetween(days[0], rhythm.At(round)) > rhythm.Tolerance)
        {
            round--;
        }

        for (; at < days.Count; round++)
        {
            LocalDate expected = rhythm.At(round);
            int best = -1;
            int nearest = rhythm.Tolerance + 1;
            while (at < days.Count && Period.DaysBetween(expected, days[at]) <= rhythm.Tolerance)
            {
                int distance = Math.Abs(Period.DaysBetween(expected, days[at]));
                if (distance < nearest)
                {
                    nearest = distance;
                    best = at;
                }

                at++;
            }

            if (best >= 0)
            {
                hits.Add(best);
                off += nearest;
                first ??= round;
                last = round;
            }
        }

        return new RhythmFit(rhythm, hits, last - (first ?? last) + 1, days.Count, off);
    }
}
