using Payday.Core.Amounts;
using Payday.Core.Cash;

namespace Payday.Core.NotePlanning;

/// <summary>The plan for a machine: weeks share what it can't give one by one, then its limit is kept.</summary>
internal sealed class MachinePlan
{
    private readonly NoteRequest request;
    private readonly ProblemMaker maker;
    private readonly long[] values;
    private readonly int[][] pots;
    private readonly Effort effort = new(Effort.OfPlan);

    private MachinePlan(NoteRequest request, CashSource.Machine machine)
    {
        this.request = request;
        values = [.. machine.Notes.Select(note => note.MinorUnits).Distinct().Order()];
        maker = new ProblemMaker(request, [.. values]);
        pots = [.. Enumerable.Range(0, request.Parts.Length).GroupBy(part => request.Parts[part].Pot).Select(pot => pot.ToArray())];
    }

    /// <summary>The plan.</summary>
    public static NotePlan Make(NoteRequest request, CashSource.Machine machine)
    {
        MachinePlan plan = new(request, machine);
        long[] amounts = plan.Amounts();
        SolvedNotes all = plan.maker.Solve(amounts, plan.effort.Half());
        long excess = machine.Limit is { } limit ? all.Fetched(request.Loose) - limit.MinorUnits : 0;
        if (excess <= 0)
        {
            return PlanMaker.Make(request, all, amounts, new bool[amounts.Length], Money.Zero(request.Currency));
        }

        LimitedServing serving = new(request, plan.maker, amounts, machine.Limit!.Value.MinorUnits, plan.effort);
        SolvedNotes served = serving.Serve([.. plan.pots.SelectMany(pot => pot)], values: plan.values);
        bool[] limited = [.. amounts.Select((_, part) => served.Paid(part) < all.Paid(part))];

        // A plan that wasn't proven may have fetched more than it needed.
        return PlanMaker.Make(
            request, served, amounts, limited, limited.Contains(true) ? Money.FromMinorUnits(excess, request.Currency) : Money.Zero(request.Currency));
    }

    // Only pots that can be paid more by moving money between their weeks do so.
    private long[] Amounts()
    {
        long[] amounts = [.. request.Parts.Select(part => part.Amount.MinorUnits)];
        SolvedNotes asWished = maker.Solve(amounts, effort.Half());
        foreach (int[] pot in pots.Where(pot => pot.Length > 1))
        {
            long paid = pot.Sum(asWished.Paid);
            if (paid < pot.Sum(part => amounts[part])
                && WeekShift.Best([.. pot.Select(part => request.Parts[part])], values, effort) is { } shifted
                && shifted.Sum() > paid)
            {
                long rest = pot.Sum(part => amounts[part]) - shifted.Sum();
                for (int week = 0; week < pot.Length; week++)
                {
                    amounts[pot[week]] = shifted[week];
                }

                amounts[pot[^1]] += rest;
            }
        }

        return amounts;
    }
}
