using Payday.Core.Cash;

namespace Payday.Core.NotePlanning;

/// <summary>Serves parts in order as far as a machine's limit reaches.</summary>
internal sealed class LimitedServing(NoteRequest request, ProblemMaker maker, long[] amounts, long limit, Effort effort)
{
    // What any plan costs beside its search.
    private const long WorkOfPlan = 100_000;

    private readonly long[] served = new long[amounts.Length];

    /// <summary>The notes of all parts; a simpler way's where the exact one meets the end of its effort.</summary>
    /// <param name="order">The parts, most important first.</param>
    /// <param name="values">The machine's notes in minor units, rising.</param>
    /// <remarks>
    /// Serving one part more never lowers what is fetched, so the parts that can be served in full one after the
    /// other are found by halving. Each later one then gets the largest amount that still fits.
    /// </remarks>
    public SolvedNotes Serve(int[] order, long[] values)
    {
        try
        {
            return ServeExactly(order, values);
        }
        catch (EffortSpentException)
        {
            return maker.Serve(amounts, order, limit);
        }
    }

    private SolvedNotes ServeExactly(int[] order, long[] values)
    {
        // What was found to fit is kept: once the work allowed is spent, solving again may find a plan that fetches more.
        int full = 0;
        SolvedNotes? fitting = null;
        for (int above = order.Length; above - full > 1;)
        {
            int middle = (full + above) / 2;
            ServeFull(order, middle);
            SolvedNotes solved = Solve();
            (full, above, fitting) = Fits(solved) ? (middle, above, solved) : (full, middle, fitting);
        }

        ServeFull(order, full);
        SolvedNotes best = fitting ?? Solve();
        foreach (int part in order.Skip(full))
        {
            best = ServeMost(part, best, values);
        }

        return best;
    }

    private SolvedNotes ServeMost(int part, SolvedNotes best, long[] values)
    {
        // No part can be paid more than what may still be fetched and the notes on hand that are left.
        long top = request.Parts[part].Wishes.TopNote?.MinorUnits ?? long.MaxValue;
        Dictionary<long, long> used = best.Notes.SelectMany(notes => notes)
            .GroupBy(note => note.Key, note => (long)note.Value)
            .ToDictionary(notes => notes.Key, notes => notes.Sum());
        long fetchable = limit - best.Fetched(request.Loose);
        Int128 left = request.Loose.Where(note => note.Key <= top)
            .Aggregate((Int128)0, (sum, note) => sum + ((Int128)note.Key * Math.Max(0, note.Value - used.GetValueOrDefault(note.Key))));
        long[] usable = [.. values.Concat(request.Loose.Where(note => note.Value > 0).Select(note => note.Key)).Where(value => value <= top).Distinct().Order()];
        long most = (long)Int128.Min(amounts[part], fetchable + left);
        Sums sums = new(usable, most, effort);
        for (long amount = sums.Floor(most); amount > 0; amount = sums.Floor(amount - 1))
        {
            served[part] = amount;
            SolvedNotes solved = Solve();
            if (solved.Paid(part) == amount && Fits(solved))
            {
                return solved;
            }
        }

        served[part] = 0;
        return best;
    }

    private SolvedNotes Solve()
    {
        effort.Spend(WorkOfPlan);
        return maker.Solve(served, effort);
    }

    private void ServeFull(int[] order, int count)
    {
        for (int i = 0; i < order.Length; i++)
        {
            served[order[i]] = i < count ? amounts[order[i]] : 0;
        }
    }

    private bool Fits(SolvedNotes solved) => solved.Fetched(request.Loose) <= limit;
}
