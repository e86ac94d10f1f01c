using CsCheck;
using Payday.Core.Amounts;
using Payday.Core.Ids;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Pots;

public class ShortfallTests
{
    private static readonly CuttableFill[] Fills =
    [
        new(new PotId("food"), 1, Usd(260), Usd(200), Usd(20)),
        new(new PotId("treats"), 3, Usd(60), Usd(0), Usd(20)),
        new(new PotId("boots"), 2, Usd(40), Usd(10), Usd(5)),
        new(new PotId("boiler"), 2, Usd(18.75m), Usd(0), Cents(1)),
    ];

    [Theory]
    [InlineData(0, "", 0, 0)]
    [InlineData(-10, "", 0, 0)]
    [InlineData(40, "treats 40.00", 0, 0)]
    [InlineData(45, "treats 60.00", 0, 15)] // whole twenties: fifteen too much
    [InlineData(70, "treats 60.00, boiler 10.00", 0, 0)] // the later of two with the same rank
    [InlineData(80, "treats 60.00, boiler 18.75, boots 5.00", 0, 3.75)]
    [InlineData(120, "treats 60.00, boiler 18.75, boots 30.00, food 20.00", 0, 8.75)]
    [InlineData(200, "treats 60.00, boiler 18.75, boots 30.00, food 60.00", 31.25, 0)]
    public void Propose_Need_IsCutByRankDownToTheFloors(decimal need, string cuts, decimal uncovered, decimal overshoot)
    {
        Shortfall shortfall = Shortfall.Propose(Fills, Usd(need));

        Assert.Equal(cuts, string.Join(", ", shortfall.Cuts.Select(cut => $"{cut.PotId} {cut.Cut.ToPlain()}")));
        Assert.Equal(Usd(uncovered), shortfall.Uncovered);
        Assert.Equal(Usd(overshoot), shortfall.Overshoot);
    }

    [Fact]
    public void Propose_WholeUnitsNotEnough_TakesTheOddPartsToo()
    {
        // Treats has 5 above its whole twenties, and so has fares; the need takes one of them and part of the other.
        CuttableFill[] fills =
            [new(new PotId("fares"), 1, Usd(25), Usd(0), Usd(20)), new(new PotId("treats"), 2, Usd(45), Usd(0), Usd(20))];

        Shortfall shortfall = Shortfall.Propose(fills, Usd(68));

        Assert.Equal([new(new PotId("treats"), Usd(45), Usd(0)), new FillCut(new PotId("fares"), Usd(23), Usd(2))], shortfall.Cuts);
        Assert.Equal((Usd(0), Usd(0)), (shortfall.Uncovered, shortfall.Overshoot));
    }

    [Fact]
    public void Propose_FillBelowItsFloor_IsNotCut() =>
        Assert.Equal(
            Usd(10), Shortfall.Propose([new(new PotId("food"), 1, Usd(50), Usd(80), Usd(10))], Usd(10)).Uncovered);

    [Fact]
    public void Propose_NoFills_LeavesTheNeed() => Assert.Equal(Usd(10), Shortfall.Propose([], Usd(10)).Uncovered);

    [Fact]
    public void Propose_AnyFills_CutsWholeUnitsAboveTheFloorsAndAddsUp() =>
        Gen.Select(
            Gen.Select(Gen.Int[1, 4], Gen.Int[0, 20_000], Gen.Int[0, 10_000], Gen.OneOf(1, 500, 2_000)).Array[0, 6],
            Gen.Int[0, 60_000]).Sample((pots, need) =>
        {
            CuttableFill[] fills = [.. pots.Select((pot, i) => new CuttableFill(
                new($"{i}"), pot.Item1, Cents(pot.Item2), Cents(pot.Item3), Cents(pot.Item4)))];
            Shortfall shortfall = Shortfall.Propose(fills, Cents(need));
            Money room = Money.Sum(fills.Select(fill => (fill.Fill - fill.Floor).ClampToZero()), Dollars);
            Money wholeRoom = Money.Sum(
                fills.Select(fill => (fill.Fill - fill.Floor).ClampToZero().FloorTo(fill.Unit)), Dollars);
            Assert.Equal(
                Cents(need) + shortfall.Overshoot - shortfall.Uncovered,
                Money.Sum(shortfall.Cuts.Select(cut => cut.Cut), Dollars));
            Assert.Equal((Cents(need) - room).ClampToZero(), shortfall.Uncovered);
            Assert.True(shortfall.Uncovered.IsZero || shortfall.Overshoot.IsZero);
            int lastRank = int.MaxValue;
            foreach (FillCut cut in shortfall.Cuts)
            {
                CuttableFill fill = fills.Single(f => f.PotId == cut.PotId);
                Assert.Equal(fill.Fill, cut.Cut + cut.Left);
                Assert.True(cut.Left >= fill.Floor && cut.Cut.IsPositive);
                Assert.True(Cents(need) > wholeRoom || cut.Cut.MinorUnits % fill.Unit.MinorUnits == 0);
                Assert.True(fill.Rank <= lastRank);
                lastRank = fill.Rank;
            }

            Assert.True(shortfall.Overshoot.IsZero
                || shortfall.Overshoot < fills.Single(f => f.PotId == shortfall.Cuts[^1].PotId).Unit);
        });
}
