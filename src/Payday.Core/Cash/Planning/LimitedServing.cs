namespace Payday.Core.Cash.Planning;

/// <summary>Serves parts in order as far as a machine's limit reaches.</summary>
internal sealed class LimitedServing(NoteRequest request, ProblemMaker maker, long[] amounts, long limit)
{
    private readonly long[] served = new long[amounts.Length];

    /// <summary>The notes of all parts.</summary>
    /// <param name="order">The parts, most important first.</param>
    /// <param name="values">The machine's notes in minor units, rising.</param>
    /// <remarks>
    /// Serving one part more never lowers what is fetched, so the parts that can be served in full one after the
    /// other are found by halving. Each later one then gets the largest amount that still fits.
    /// </remarks>
    public SolvedNotes Serve(int[] order, long[] values)
    {
        int full = 0;
        for (int above = order.Length; above - full > 1;)
        {
            int middle = (full + above) / 2;
            ServeFull(order, middle);
            (full, above) = Fits(maker.Solve(served)) ? (middle, above) : (full, middle);
        }

        ServeFull(order, full);
        SolvedNotes best = maker.Solve(served);
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
        long fetchable = limit - best.Fetched(request.OnHand);
        long left = request.OnHand.Where(note => note.Key <= top)
            .Sum(note => note.Key * Math.Max(0, note.Value - used.GetValueOrDefault(note.Key)));
        long[] usable = [.. values.Concat(request.OnHand.Where(note => note.Value > 0).Select(note => note.Key)).Where(value => value <= top).Distinct().Order()];
        long most = Math.Min(amounts[part], fetchable + left);
        Sums sums = new(usable, most);
        for (long amount = sums.Floor(most); amount > 0; amount = sums.Floor(amount - 1))
        {
            served[part] = amount;
            SolvedNotes solved = maker.Solve(served);
            if (solved.Paid(part) == amount && Fits(solved))
            {
                return solved;
            }
        }

        served[part] = 0;
        return best;
    }

    private void ServeFull(int[] order, int count)
    {
        for (int i = 0; i < order.Length; i++)
        {
            served[order[i]] = i < count ? amounts[order[i]] : 0;
        }
    }

    private bool Fits(SolvedNotes solved) => solved.Fetched(request.OnHand) <= limit;
}
