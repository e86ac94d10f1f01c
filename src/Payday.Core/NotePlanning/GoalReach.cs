using Payday.Core.Cash;

namespace Payday.Core.NotePlanning;

/// <summary>The most of a goal that some of the notes can pay, were there any number of each.</summary>
/// <param name="values">All note values, rising.</param>
/// <param name="usable">Which of them count.</param>
/// <param name="most">The largest amount that will be asked about.</param>
/// <param name="effort">The work that finding it may cost.</param>
internal sealed class GoalReach(long[] values, bool[] usable, long most, Effort effort)
{
    private readonly Dictionary<(int From, int To), Sums> sums = [];
    private readonly Dictionary<NoteGoal, NoteGoal> known = [];

    /// <summary>
    /// The goal with the small money that can be had, as much as is wished if possible, and with the largest
    /// amount not above its own that can be paid so.
    /// </summary>
    public NoteGoal Nearest(NoteGoal goal)
    {
        if (!known.TryGetValue(goal, out NoteGoal? nearest))
        {
            nearest = Find(goal);
            known.Add(goal, nearest);
        }

        return nearest;
    }

    private NoteGoal Find(NoteGoal goal)
    {
        long atLeast = SmallMoney(goal);
        long amount = SumsOf(0, goal.Top).Floor(goal.Amount);
        while (atLeast > 0 && !Pays(goal, amount, atLeast))
        {
            effort.Spend(1);
            amount--;
        }

        return goal with { Amount = amount, AtLeast = atLeast };
    }

    private long SmallMoney(NoteGoal goal)
    {
        if (goal.AtLeast == 0 || goal.Amount == 0)
        {
            return 0;
        }

        Sums small = SumsOf(0, goal.Small);
        return small.Ceiling(goal.AtLeast) <= goal.Amount ? goal.AtLeast : small.Floor(goal.Amount);
    }

    private bool Pays(NoteGoal goal, long amount, long atLeast)
    {
        if (!SumsOf(0, goal.Top).Contains(amount))
        {
            return false;
        }

        // Among any v small notes some add up to a multiple of v, and can give way to notes of v: more small
        // money than this above the least is never needed.
        long smallestLarge = SmallestIn(goal.Small, goal.Top);
        long needed = smallestLarge == 0 ? amount : atLeast + (smallestLarge * values[goal.Small - 1]);
        Sums small = SumsOf(0, goal.Small);
        Sums large = SumsOf(goal.Small, goal.Top);
        for (long part = atLeast; part <= Math.Min(amount, needed); part++)
        {
            effort.Spend(1);
            if (small.Contains(part) && large.Contains(amount - part))
            {
                return true;
            }
        }

        return false;
    }

    private long SmallestIn(int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (usable[i])
            {
                return values[i];
            }
        }

        return 0;
    }

    private Sums SumsOf(int from, int to)
    {
        if (!sums.TryGetValue((from, to), out Sums? made))
        {
            made = new Sums([.. Enumerable.Range(from, to - from).Where(i => usable[i]).Select(i => values[i])], most, effort);
            sums.Add((from, to), made);
        }

        return made;
    }
}
