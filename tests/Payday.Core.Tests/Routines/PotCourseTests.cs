using NodaTime;
using NodaTime.Text;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

public class PotCourseTests
{
    // Fortnightly paydays from 6 March: 20 March, 3 April, 17 April, 1 May. 100 by 2 May over five of them is 20 each.
    private static readonly Pot Boots = AccountPot("Boots", 0) with { Kind = new PotKind.Sinking(Usd(100), new(2026, 5, 2)) };

    private static readonly Pot Reserve = AccountPot("Reserve", 0) with { Kind = new PotKind.Reserve(Usd(60), Usd(10)) };

    private static readonly Pot Steps = AccountPot("Steps", 0) with { Kind = new PotKind.Ladder(Usd(5), 4, LadderOrder.Rising) };

    private static readonly Book Start = Book.Begin(Bare with { Pots = [Boots, Reserve, Steps, AccountPot("Gifts", 5)] });

    // What is placed on a sinking pot comes off its four later fills, each an even part of what is missing.
    [Theory]
    [InlineData(0, "2026-05-01", 20)]
    [InlineData(20, "2026-05-01", 15)]
    [InlineData(79.96, "2026-05-01", 0.01)]
    [InlineData(80, "2026-03-06", 0)]
    [InlineData(500, "2026-03-06", 0)]
    public void Of_PlacedOnASinkingPot_MakesLaterFillsSmaller(decimal placed, string full, decimal next)
    {
        PotCourse course = Course("boots", placed);

        Assert.Equal((new LocalDate(2026, 5, 1), Usd(80), Usd(20)), (course.Without!.Value, course.Lacks, course.NextWithout));
        Assert.Equal(full, LocalDatePattern.Iso.Format(course.With!.Value));
        Assert.Equal(Usd(next), course.NextWith);
    }

    // 10 today, and 10 a payday: 50 more are there after five of them.
    [Theory]
    [InlineData(0, "2026-05-15", 10)]
    [InlineData(9.99, "2026-05-15", 10)]
    [InlineData(10, "2026-05-01", 10)]
    [InlineData(41, "2026-03-20", 9)]
    [InlineData(50, "2026-03-06", 0)]
    public void Of_PlacedOnAReserve_IsFullSooner(decimal placed, string full, decimal next)
    {
        PotCourse course = Course("reserve", placed);

        Assert.Equal((full, Usd(next)), (LocalDatePattern.Iso.Format(course.With!.Value), course.NextWith));
    }

    // Steps of 5, 10, 15 and 20, the first of them today. 12 on top is the second and 2 of the third.
    [Theory]
    [InlineData(0, "2026-04-17", 10)]
    [InlineData(12, "2026-04-03", 13)]
    [InlineData(45, "2026-03-06", 0)]
    public void Of_PlacedOnALadder_CountsAsSteps(decimal placed, string full, decimal next)
    {
        PotCourse course = Course("steps", placed);

        Assert.Equal((full, Usd(next)), (LocalDatePattern.Iso.Format(course.With!.Value), course.NextWith));
    }

    [Fact]
    public void Of_MoreThanThreeYears_HasNoDate()
    {
        Pot large = Reserve with { Kind = new PotKind.Reserve(Usd(100_000), Usd(10)) };

        Assert.Null(PotCourse.Of(Routine.Plan(Book.Begin(Bare with { Pots = [large] }), new RoutineDraft(Friday6March)).Value!).Single().Without);
    }

    [Fact]
    public void Of_SpendingPot_HasNoCourse() =>
        Assert.Equal(["boots", "reserve", "steps"], PotCourse.Of(Routine.Plan(Start, new RoutineDraft(Friday6March)).Value!).Select(course => course.PotId.Text));

    private static PotCourse Course(string pot, decimal placed) => PotCourse.Of(Routine.Plan(Start, new RoutineDraft(Friday6March)
    {
        Placements = placed == 0 ? [] : [new Placement(MoveTarget.Pot(new PotId(pot)), Usd(placed))],
    }).Value!).Single(course => course.PotId == new PotId(pot));
}
