using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Routines;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Routines;

/// <summary>Rule (design, 10): what the buffer has beyond what it keeps and thirty days of bills, minimums and spending pots. Worked out by hand.</summary>
public class IdleBufferTests
{
    // 6 March to 4 April: rent 310 on 25 March, one minimum of 25, five Fridays of 60 and of 20 (6, 13, 20, 27 March and
    // 3 April), gifts 15 on each of the paydays 6 and 20 March and 3 April: 310 + 25 + 400 + 45 = 780.
    private static readonly Household Home = House with { Bills = [Bill("Rent", 310, new(2026, 3, 25), essential: true)] };

    [Fact]
    public void Needed_ThirtyDays_IsBillsMinimumsAndSpendingPots() => Assert.Equal(Usd(780), IdleBuffer.Needed(Book.Begin(Home), Friday6March));

    [Theory]
    [InlineData(500, null, 0)]
    [InlineData(780, null, 0)]
    [InlineData(1000, null, 220)]
    [InlineData(1000, 200, 20)]
    [InlineData(1000, 300, 0)]
    public void Of_ABufferBeyondThat_IsTheRest(decimal has, int? keeps, decimal idle) => Assert.Equal(Usd(idle), IdleBuffer.Of(Plan(has, keeps)));

    // Where the day falls short the buffer helps, and nothing of it is idle.
    [Fact]
    public void Of_APaydayThatFallsShort_IsNothing()
    {
        RoutinePlan plan = Plan(3000, 0);
        RoutinePlan none = Routine.Plan(plan.Book, plan.Draft with { Incomes = SourceSums(("wage", 0)) }).Value!;

        Assert.True(IdleBuffer.Of(plan).IsPositive);
        Assert.Equal(Usd(0), IdleBuffer.Of(none));
    }

    // Placed, it is given to the day, and no more of it is idle.
    [Fact]
    public void Of_OncePlaced_IsNothing()
    {
        RoutinePlan plan = Plan(1000, null);
        RoutinePlan placed = Routine.Plan(plan.Book, plan.Draft with { FromBuffer = IdleBuffer.Of(plan) }).Value!;

        Assert.Equal((Usd(0), plan.Surplus.Before + Usd(220)), (IdleBuffer.Of(placed), placed.Surplus.Before));
    }

    private static RoutinePlan Plan(decimal has, int? keeps) => Routine.Plan(
        Book.Begin(Home with
        {
            Settings = Home.Settings with { BufferKeeps = keeps is { } least ? Usd(least) : null },
            Opening = Home.Opening with { Account = Usd(has) },
        }),
        new RoutineDraft(Friday6March)).Value!;
}
