using Payday.Core.Cash;

namespace Payday.Core.NotePlanning;

/// <summary>Moves a pot's money between its weeks until each can be paid.</summary>
/// <remarks>
/// Exact: for the weeks from each one on and each sum, the least money moved. Of all sums not above the pot's the
/// largest is taken, and of equal ways the one with the most in earlier weeks.
/// </remarks>
internal static class WeekShift
{
    private const long TooFar = long.MaxValue / 4;

    // Sums are searched in full up to this many units; a larger pot moves only its last part of that size.
    private const long MostUnits = 2_000;

    /// <summary>What each week is paid, or null if there is no such way.</summary>
    /// <param name="weeks">The weeks of one pot, as wished.</param>
    /// <param name="values">The machine's notes in minor units, rising.</param>
    /// <param name="effort">The work it may cost; weeks stay as wished where it ends.</param>
    public static long[]? Best(NotePart[] weeks, long[] values, Effort effort)
    {
        try
        {
            return Search(weeks, values, effort.Half());
        }
        catch (Exception fault) when (fault is EffortSpentException or OverflowException)
        {
            return null;
        }
    }

    private static long[]? Search(NotePart[] weeks, long[] values, Effort effort)
    {
        long unit = values.Aggregate(0L, Whole.Gcd);
        long[] units = [.. values.Select(value => value / unit)];
        long[] wished = [.. weeks.Select(week => week.Amount.MinorUnits)];
        long total = wished.Sum() / unit;

        // What a week gets in any case when the pot is too large to search in full.
        long searched = total <= MostUnits ? long.MaxValue : MostUnits / weeks.Length;
        long[] fixedUnits = [.. wished.Select(amount => Math.Max(0, (amount / unit) - searched))];
        long most = total - fixedUnits.Sum();
        GoalReach reach = new(units, [.. units.Select(_ => true)], fixedUnits.Max() + most, effort);
        bool[][] payable = [.. weeks.Select((week, i) => Payable(reach, week, values, unit, fixedUnits[i], most))];
        effort.Spend(weeks.Length * most * most / 2);
        long[][] moved = new long[weeks.Length + 1][];
        moved[^1] = [0, .. Enumerable.Repeat(TooFar, (int)most)];
        for (int week = weeks.Length - 1; week >= 0; week--)
        {
            moved[week] = [.. Enumerable.Repeat(TooFar, (int)most + 1)];
            for (int sum = 0; sum <= most; sum++)
            {
                for (int share = 0; share <= sum; share++)
                {
                    if (payable[week][share])
                    {
                        moved[week][sum] = Math.Min(moved[week][sum], Moved(week, share) + moved[week + 1][sum - share]);
                    }
                }
            }
        }

        int left = Array.FindLastIndex(moved[0], distance => distance < TooFar);
        if (left < 0)
        {
            return null;
        }

        long[] best = new long[weeks.Length];
        for (int week = 0; week < weeks.Length; week++)
        {
            int share = left;
            while (!payable[week][share] || Moved(week, share) + moved[week + 1][left - share] != moved[week][left])
            {
                share--;
            }

            best[week] = (fixedUnits[week] + share) * unit;
            left -= share;
        }

        return best;

        long Moved(int week, long share) => Math.Abs(((fixedUnits[week] + share) * unit) - wished[week]);
    }

    // The small money a week can have as wished is not given up for a better sum.
    private static bool[] Payable(GoalReach reach, NotePart week, long[] values, long unit, long from, long most)
    {
        NoteGoal wished = ProblemMaker.GoalOf(week.Wishes, week.Amount.MinorUnits, values, unit);
        long atLeast = reach.Nearest(wished).AtLeast;
        bool[] payable = new bool[most + 1];
        for (long share = 0; share <= most; share++)
        {
            NoteGoal goal = wished with { Amount = from + share, AtLeast = atLeast };
            payable[share] = goal.Amount >= atLeast && reach.Nearest(goal) == goal;
        }

        return payable;
    }
}
