using CsCheck;
using Payday.Statements.Matching;

namespace Payday.Statements.Tests.Matching;

public sealed class AssignmentTests
{
    private static readonly Gen<(int Lefts, int Rights, List<Pair> Pairs)> Cases =
        from lefts in Gen.Int[1, 7]
        from rights in Gen.Int[1, 7]
        from points in Gen.Int[-400, 900].Array[lefts * rights]
        select (lefts, rights, Enumerable.Range(0, points.Length).Where(i => points[i] > 0).Select(i => new Pair(i / rights, i % rights, points[i])).ToList());

    // Few different points make many ties.
    private static readonly Gen<(int Lefts, int Rights, List<Pair> Pairs)> Ties =
        from one in Cases
        select (one.Lefts, one.Rights, one.Pairs.ConvertAll(pair => pair with { Points = 1 + (pair.Points % 3) }));

    [Fact]
    public void Best_AnyPairs_HasAsManyPointsAsTheSolverFinds() => Gen.OneOf(Cases, Ties).Sample(
        one =>
        {
            int[] rightOf = Assignment.Best(one.Lefts, one.Rights, one.Pairs);

            int[] used = [.. rightOf.Where(right => right >= 0)];
            Assert.Equal(used.Length, used.Distinct().Count());
            Assert.All(Enumerable.Range(0, one.Lefts), left => Assert.True(rightOf[left] < 0 || one.Pairs.Exists(pair => pair.Left == left && pair.Right == rightOf[left])));
            Assert.Equal(CpSatAssignment.MostPoints(one.Pairs), PointsOf(rightOf, one.Pairs));
        },
        iter: 300);

    [Fact]
    public void Margin_AnyIsland_IsWhatTheSolverLosesWithoutThePair() => Cases.Sample(
        one =>
        {
            foreach (PairIsland island in PairIsland.Of(one.Lefts, one.Rights, one.Pairs))
            {
                var sure = new SureIsland(island, [.. Enumerable.Range(0, island.Lefts.Count)], [.. Enumerable.Range(0, island.Rights.Count)]);
                for (int left = 0; left < island.Lefts.Count; left++)
                {
                    if (sure.RightOf[left] >= 0)
                    {
                        List<Pair> others = island.Pairs.FindAll(pair => pair.Left != left || pair.Right != sure.RightOf[left]);
                        Assert.Equal(CpSatAssignment.MostPoints(island.Pairs) - CpSatAssignment.MostPoints(others), sure.Margin(left));
                    }
                }
            }
        },
        iter: 60);

    [Fact]
    public void Of_AnyPairs_IslandsShareNothingAndHoldAll() => Cases.Sample(one =>
    {
        List<PairIsland> islands = PairIsland.Of(one.Lefts, one.Rights, one.Pairs);

        Assert.Equal(islands.Sum(island => island.Lefts.Count), islands.SelectMany(island => island.Lefts).Distinct().Count());
        Assert.Equal(islands.Sum(island => island.Rights.Count), islands.SelectMany(island => island.Rights).Distinct().Count());
        Assert.Equal(
            one.Pairs.OrderBy(pair => pair.Left).ThenBy(pair => pair.Right),
            islands.SelectMany(island => island.Pairs.Select(pair => new Pair(island.Lefts[pair.Left], island.Rights[pair.Right], pair.Points))).OrderBy(pair => pair.Left).ThenBy(pair => pair.Right));
    });

    private static long PointsOf(int[] rightOf, List<Pair> pairs) => pairs.Where(pair => rightOf[pair.Left] == pair.Right).Sum(pair => (long)pair.Points);
}
