using System.Collections.Immutable;
using Payday.Core.Cash;
using Payday.Core.NotePlanning;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.NotePlanning.Requests;

namespace Payday.Core.Tests.NotePlanning;

/// <summary>Published values on making change with the fewest pieces.</summary>
public sealed class MakingChangeTests
{
    // The first sums at which taking the largest piece first fails, computed by dynamic programming.
    [Theory]
    [InlineData(new long[] { 1, 3, 4 }, 6, 3, 2)]
    [InlineData(new long[] { 1, 10, 25 }, 30, 6, 3)]
    [InlineData(new long[] { 1, 5, 10, 20, 25 }, 40, 3, 2)]
    public void Plan_WhereGreedyFailsFirst_TakesFewer(long[] pieces, long sum, int greedy, int fewest)
    {
        Assert.Equal(greedy, Greedy(pieces, sum));
        Assert.Equal(fewest, Count(pieces, sum));
        for (long smaller = 0; smaller < sum; smaller++)
        {
            Assert.Equal(Greedy(pieces, smaller), Count(pieces, smaller));
        }
    }

    // Averages of 4.70 and 3.89 pieces over 0 to 99: J. Shallit, "What this country needs is an 18c piece",
    // Mathematical Intelligencer 25:2 (2003), and by dynamic programming.
    [Theory]
    [InlineData(new long[] { 1, 5, 10, 25 }, 470)]
    [InlineData(new long[] { 1, 5, 18, 25 }, 389)]
    public void Plan_AllSumsBelowAHundred_TakesThePublishedAverage(long[] pieces, int piecesInAll)
    {
        Assert.Equal(piecesInAll, Enumerable.Range(0, 100).Sum(sum => Count(pieces, sum)));

        // The same in one plan: without notes on hand the parts don't hang on one another.
        NotePart[] parts = [.. Enumerable.Range(0, 100).Select(sum => Part($"p{sum}", sum))];
        NotePlan plan = NotePlanner.Plan(Teller(Notes(pieces), parts));
        Assert.Equal(piecesInAll, plan.NoteCount);
        Assert.True(plan.Proven);
    }

    private static int Count(long[] pieces, long sum)
    {
        NotePlan plan = NotePlanner.Plan(Teller(Notes(pieces), Part("pot", sum)));
        Assert.True(plan.Proven);
        Assert.Equal(Units(sum), plan.Parts[0].Paid);
        return plan.NoteCount;
    }

    private static int Greedy(long[] pieces, long sum)
    {
        int count = 0;
        foreach (long piece in pieces.OrderDescending())
        {
            count += (int)(sum / piece);
            sum %= piece;
        }

        return count;
    }
}
