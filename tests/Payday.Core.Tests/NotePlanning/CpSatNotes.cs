using Google.OrTools.Sat;
using Payday.Core.Cash;

namespace Payday.Core.Tests.NotePlanning;

/// <summary>The same question asked of a general integer solver (CP-SAT of OR-Tools).</summary>
internal static class CpSatNotes
{
    /// <summary>The best rank there is, proven by the solver.</summary>
    public static PlanRank Best(NoteRequest request)
    {
        CpModel model = new();
        long[] fetched = [.. Fetched(request)];
        long[] values = [.. fetched.Union(request.Loose.Values).Order()];
        long amount = request.Parts.Sum(part => part.Amount.MinorUnits);
        long[] wishes = [.. request.Parts.Select(part => part.Wishes.Small?.AtLeast.MinorUnits ?? 0)];
        long unit = values.Concat(request.Parts.Select(part => part.Amount.MinorUnits)).Concat(wishes).Aggregate(0L, Gcd);
        LinearExprBuilder missing = LinearExpr.NewBuilder();
        LinearExprBuilder kept = LinearExpr.NewBuilder();
        LinearExprBuilder reused = LinearExpr.NewBuilder();
        LinearExprBuilder notes = LinearExpr.NewBuilder();
        LinearExprBuilder[] totals = [.. values.Select(_ => LinearExpr.NewBuilder())];
        long wished = 0;
        foreach (NotePart part in request.Parts)
        {
            long most = part.Amount.MinorUnits;
            LinearExprBuilder paid = LinearExpr.NewBuilder();
            LinearExprBuilder small = LinearExpr.NewBuilder();
            for (int i = 0; i < values.Length; i++)
            {
                if (values[i] > (part.Wishes.TopNote?.MinorUnits ?? long.MaxValue) || values[i] > most)
                {
                    continue;
                }

                IntVar count = model.NewIntVar(0, most / values[i], "");
                paid.AddTerm(count, values[i] / unit);
                totals[i].Add(count);
                notes.Add(count);
                if (values[i] <= (part.Wishes.Small?.Note.MinorUnits ?? 0))
                {
                    small.AddTerm(count, values[i] / unit);
                }
            }

            IntVar left = model.NewIntVar(0, most / unit, "");
            model.Add(paid + left == most / unit);
            kept.Add(left);
            long atLeast = most == 0 ? 0 : (part.Wishes.Small?.AtLeast.MinorUnits ?? 0) / unit;
            IntVar less = model.NewIntVar(0, atLeast, "");
            model.Add(small + less >= atLeast);
            missing.Add(less);
            wished += atLeast;
        }

        for (int i = 0; i < values.Length; i++)
        {
            long hand = request.Loose[values[i]];
            IntVar again = model.NewIntVar(0, hand, "");
            model.Add(totals[i] - again >= 0);
            reused.AddTerm(again, values[i] / unit);
            if (!fetched.Contains(values[i]))
            {
                model.Add(totals[i] <= hand);
            }
        }

        // Most important first; each weight outweighs all that follows.
        long weight = (amount / unit) + 1;
        LinearExprBuilder cost = LinearExpr.NewBuilder();
        if (wished > 0)
        {
            cost.AddTerm(missing, weight * weight * weight);
        }

        cost.AddTerm(kept, weight * weight);
        cost.AddTerm(reused, -weight);
        cost.Add(notes);
        model.Minimize(cost);
        CpSolver solver = new() { StringParameters = "num_workers:1" };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        long keptBack = solver.Value(kept) * unit;
        return new PlanRank(
            solver.Value(missing) * unit,
            keptBack,
            amount - keptBack - (solver.Value(reused) * unit),
            solver.Value(notes));
    }

    private static IEnumerable<long> Fetched(NoteRequest request) =>
        (request.Source is CashSource.Machine machine ? machine.Notes : request.Notes).Select(note => note.MinorUnits).Distinct();

    private static long Gcd(long left, long right) => right == 0 ? left : Gcd(right, left % right);
}
