using Payday.Core.Cash;
using Payday.Core.NotePlanning;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.NotePlanning.Requests;

namespace Payday.Core.Tests.NotePlanning;

/// <summary>The plan against a general integer solver.</summary>
public sealed class NotePlannerExactTests
{
    private const int Blocks = 10;
    private const int CasesPerBlock = 220;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(0, Blocks)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_SeededCases_MatchTheSolver(int block)
    {
        for (int seed = block * CasesPerBlock; seed < (block + 1) * CasesPerBlock; seed++)
        {
            NoteRequest request = RandomRequests.Small(seed);
            NotePlan plan = NotePlanner.Plan(request);
            Assert.True(plan.Proven, $"Seed {seed} is not proven.");
            PlanRank best = CpSatNotes.Best(request);
            Assert.True(best == PlanRank.Of(plan), $"Seed {seed}: {PlanRank.Of(plan)} but the best is {best}.");
        }
    }

    [Theory]
    [InlineData(new long[] { 1, 2, 5, 10, 20, 50, 100 })]
    [InlineData(new long[] { 5, 10, 20, 50, 100, 200, 500 })]
    [InlineData(new long[] { 20, 50, 100, 200, 500, 1000 })]
    [InlineData(new long[] { 5, 20, 50, 100 })]
    public void Plan_OnePotAndManyNotesOnHand_MatchesTheSolver(long[] system)
    {
        for (int seed = 0; seed < 50; seed++)
        {
            NoteRequest request = RandomRequests.Large(seed, system, pots: 1);
            NotePlan plan = NotePlanner.Plan(request);
            Assert.True(plan.Proven);
            Assert.Equal(CpSatNotes.Best(request), PlanRank.Of(plan));
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Plan_LargeHousehold_IsProvenAndMatchesTheSolver(int seed)
    {
        foreach (long[] system in new long[][] { [1, 2, 5, 10, 20, 50, 100], [5, 10, 20, 50, 100, 200, 500] })
        {
            NoteRequest request = RandomRequests.Large(seed, system);
            NotePlan plan = NotePlanner.Plan(request);
            Assert.True(plan.Proven);
            Assert.Equal(CpSatNotes.Best(request), PlanRank.Of(plan));
        }
    }

    // What fives and what fifties ask for meets at the fives: with no loose fifty the parts ask for more there.
    [Fact]
    public void Plan_TwoBreaksThatMeetAtALevel_MatchesTheSolver()
    {
        NoteRequest request = Teller(
            Notes(1, 2, 5, 20, 50, 100), Part("a", 31, small: (10, 7)), Part("b", 59, top: 20), Part("c", 131), Part("d", 110, small: (20, 5)), Part("e", 135)) with
        {
            Loose = Loose((1, 4), (20, 1), (50, 1), (100, 3)),
        };
        NotePlan plan = NotePlanner.Plan(request);

        Assert.True(plan.Proven);
        Assert.Equal(25, plan.NoteCount);
        Assert.Equal(CpSatNotes.Best(request), PlanRank.Of(plan));
    }

    // Each of the parts has an odd five, however many twos there are.
    [Fact]
    public void Plan_MoreLooseNotesThanAUnitAndNotesBelowAtHome_MatchesTheSolver()
    {
        NoteRequest request = Teller(
            Notes(2, 5, 10, 50, 200, 1000),
            [Part("a", 550), .. Enumerable.Range(0, 4).Select(i => Part($"b{i}", 125, top: 50)), Part("c", 465)]) with
        {
            Loose = Loose((2, 43), (50, 12), (1000, 34)),
        };
        NotePlan plan = NotePlanner.Plan(request);

        Assert.True(plan.Proven);
        Assert.Equal(CpSatNotes.Best(request), PlanRank.Of(plan));
    }
}
