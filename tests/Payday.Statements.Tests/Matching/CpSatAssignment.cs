using Google.OrTools.Sat;
using Payday.Statements.Matching;

namespace Payday.Statements.Tests.Matching;

/// <summary>The same question asked of a general integer solver (CP-SAT of OR-Tools).</summary>
internal static class CpSatAssignment
{
    /// <summary>The most points that any assignment has, proven by the solver.</summary>
    public static long MostPoints(IReadOnlyList<Pair> pairs)
    {
        CpModel model = new();
        BoolVar[] taken = [.. pairs.Select(_ => model.NewBoolVar(""))];
        foreach (IGrouping<int, int> left in Enumerable.Range(0, taken.Length).GroupBy(i => pairs[i].Left))
        {
            model.AddAtMostOne(left.Select(i => taken[i]));
        }

        foreach (IGrouping<int, int> right in Enumerable.Range(0, taken.Length).GroupBy(i => pairs[i].Right))
        {
            model.AddAtMostOne(right.Select(i => taken[i]));
        }

        model.Maximize(LinearExpr.WeightedSum(taken, pairs.Select(pair => (long)pair.Points)));
        CpSolver solver = new() { StringParameters = "num_workers:1" };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        return (long)Math.Round(solver.ObjectiveValue);
    }
}
