using Google.OrTools.Sat;
using Payday.Core.Cash;

namespace Payday.Benchmarks.Cash;

/// <summary>The same plan from a general integer solver, for requests whose parts can all be paid in full.</summary>
internal static class CpSatNotePlan
{
    /// <summary>The value fetched, in minor units, and the number of notes of the best plan.</summary>
    public static (long Withdrawn, long Notes) Solve(NoteRequest request)
    {
        CpModel model = new();
        long[] values = [.. request.Notes.Select(note => note.MinorUnits).Order()];
        long unit = values[0];
        long all = request.Parts.Sum(part => part.Amount.MinorUnits);
        LinearExprBuilder reused = LinearExpr.NewBuilder();
        LinearExprBuilder notes = LinearExpr.NewBuilder();
        LinearExprBuilder[] totals = [.. values.Select(_ => LinearExpr.NewBuilder())];
        foreach (NotePart part in request.Parts)
        {
            long amount = part.Amount.MinorUnits;
            LinearExprBuilder paid = LinearExpr.NewBuilder();
            LinearExprBuilder small = LinearExpr.NewBuilder();
            for (int i = 0; i < values.Length && values[i] <= (part.Wishes.TopNote?.MinorUnits ?? amount); i++)
            {
                IntVar count = model.NewIntVar(0, amount / values[i], "");
                paid.AddTerm(count, values[i] / unit);
                totals[i].Add(count);
                notes.Add(count);
                if (values[i] <= (part.Wishes.Small?.Note.MinorUnits ?? 0))
                {
                    small.AddTerm(count, values[i] / unit);
                }
            }

            model.Add(paid == amount / unit);
            model.Add(small >= (part.Wishes.Small?.AtLeast.MinorUnits ?? 0) / unit);
        }

        for (int i = 0; i < values.Length; i++)
        {
            IntVar again = model.NewIntVar(0, request.Loose[values[i]], "");
            model.Add(totals[i] - again >= 0);
            reused.AddTerm(again, values[i] / unit);
        }

        LinearExprBuilder cost = LinearExpr.NewBuilder();
        cost.AddTerm(reused, -((all / unit) + 1));
        cost.Add(notes);
        model.Minimize(cost);
        CpSolver solver = new() { StringParameters = "num_workers:1" };
        return solver.Solve(model) == CpSolverStatus.Optimal
            ? (all - (solver.Value(reused) * unit), solver.Value(notes))
            : throw new InvalidOperationException("The solver has not proven its plan best.");
    }
}
