using NodaTime;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

public class PotCourseTests
{
    // Fortnightly paydays from 6 March: 20 March, 3 April, 17 April, 1 May. 100 by 2 May over five of them is 20 each.
    private static readonly Pot Boots = AccountPot("Boots", 0) with { Kind = new PotKind.Sinking(Usd(100), new(2026, 5, 2)) };

    private static readonly Pot Reserve = AccountPot("Reserve", 0) with { Kind = new PotKind.Reserve(Usd(100_000), Usd(10)) };

    private static readonly Book Start = Book.Begin(Bare with { Pots = [Boots, Reserve, AccountPot("Gifts", 5)] });

    [Theory]
    [InlineData(0, "2026-05-01")]
    [InlineData(19.99, "2026-05-01")]
    [InlineData(20, "2026-04-17")]
    [InlineData(41, "2026-04-03")]
    [InlineData(80, "2026-03-06")]
    [InlineData(500, "2026-03-06")]
    public void Of_Placement_BringsTheDateForward(decimal placed, string full)
    {
        PotCourse course = Course("boots", placed);

        Assert.Equal(new LocalDate(2026, 5, 1), course.Without);
        Assert.Equal(full, NodaTime.Text.LocalDatePattern.Iso.Format(course.With!.Value));
    }

    [Fact]
    public void Of_MoreThanThreeYears_HasNoDate() => Assert.Null(Course("reserve", 0).Without);

    [Fact]
    public void Of_SpendingPot_HasNoCourse() =>
        Assert.Equal(["boots", "reserve"], Routine.Plan(Start, new RoutineDraft(Friday6March)).Value!.Surplus.Pots.Select(course => course.PotId.Text));

    private static PotCourse Course(string pot, decimal placed) => Routine.Plan(Start, new RoutineDraft(Friday6March)
    {
        Placements = placed == 0 ? [] : [new Placement(MoveTarget.Pot(new PotId(pot)), Usd(placed))],
    }).Value!.Surplus.Pots.Single(course => course.PotId == new PotId(pot));
}
