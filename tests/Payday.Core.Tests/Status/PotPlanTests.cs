using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CardPurchases;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Status;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Status;

/// <summary>Pots against what they would have by their rules, worked out by hand; held against the outlook in <c>CoursesTests</c>.</summary>
public class PotPlanTests
{
    // Paydays each fortnight from 6 March. 100 by 2 May over five of them is 20 each; a reserve of 10 a payday; steps of 5, 10, 15, 20.
    private static readonly Household Home = Bare with
    {
        Pots =
        [
            AccountPot("Boots", 0) with { Kind = new PotKind.Sinking(Usd(100), new(2026, 5, 2)) },
            AccountPot("Reserve", 0) with { Kind = new PotKind.Reserve(Usd(60), Usd(10)) },
            AccountPot("Steps", 0) with { Kind = new PotKind.Ladder(Usd(5), 4, LadderOrder.Rising) },
            AccountPot("Gifts", 5),
        ],
    };

    [Fact]
    public void Of_NothingClosedYet_PlansNothingAndSaysWhenItWillBeFull() =>
        Assert.Equal(
            [("Boots", 0m, 100m, "1 May"), ("Reserve", 0, 60, "15 May"), ("Steps", 0, 50, "17 Apr")],
            PotPlan.Of(Book.Begin(Home)).Select(plan => (plan.Pot.Name, Plain(plan.Planned), Plain(plan.Lacks), Day(plan.Done))));

    [Theory]
    [InlineData(1, 20, 10, 5)]
    [InlineData(2, 40, 20, 15)]
    [InlineData(3, 60, 30, 30)]
    [InlineData(4, 80, 40, 50)]
    [InlineData(5, 100, 50, 50)]
    [InlineData(6, 100, 60, 50)]
    public void Of_EachPaydayAsProposed_IsOnPlan(int paydays, decimal boots, decimal reserve, decimal steps)
    {
        Book book = Closed(Book.Begin(Home), paydays);

        Assert.Equal([boots, reserve, steps], PotPlan.Of(book).Select(plan => Plain(plan.Planned)));
        Assert.All(PotPlan.Of(book), plan => Assert.Equal(Usd(0), plan.Ahead));
    }

    // The second payday puts nothing in the boots, and 25 in the reserve by hand.
    [Fact]
    public void Of_FilledOtherwise_IsAheadOrBehind()
    {
        Book book = Closed(Book.Begin(Home), 1);
        book = Closing.Of(Routine.Plan(book, new RoutineDraft(new(2026, 3, 20)) { Fills = PotSums(("boots", 0), ("reserve", 25)) }).Value!).Value!;

        Assert.Equal(
            [("Boots", 40m, -20m, "1 May"), ("Reserve", 20, 15, "1 May"), ("Steps", 15, 0, "17 Apr")],
            PotPlan.Of(book).Select(plan => (plan.Pot.Name, Plain(plan.Planned), Plain(plan.Ahead), Day(plan.Done))));
    }

    // Trouble takes 15 of the reserve's 30; of the steps as much, but they are counted by what was put in.
    [Fact]
    public void Of_SpentFromAReserve_IsBehindByThat()
    {
        Book book = Closed(Book.Begin(Home), 3);
        foreach (string pot in new[] { "reserve", "steps" })
        {
            book = Purchasing.Enter(book, new PurchaseEntry(new(2026, 4, 5), new PotId(pot), Usd(15), "trouble")).Value!;
        }

        Assert.Equal([("Boots", 0m), ("Reserve", -15), ("Steps", 0)], PotPlan.Of(book).Select(plan => (plan.Pot.Name, Plain(plan.Ahead))));
        Assert.Equal(15m, Plain(PotPlan.Of(book)[2].Planned));
    }

    // Bought for 100 on 1 May after its last fill; it begins anew for May next year, and 5 were there before.
    [Fact]
    public void Of_ASinkingPotThatRepeats_BeginsAnewWithItsPurchase()
    {
        Household yearly = Home with
        {
            Pots = [Home.Pots[0] with { Kind = (PotKind.Sinking)Home.Pots[0].Kind with { Repeats = new Schedule.EveryMonths(12, new(2026, 5, 2)) } }],
            Opening = Home.Opening with { Pots = PotSums(("boots", 5)) },
        };
        Book book = Closed(Book.Begin(yearly), 5);
        book = Purchasing.Enter(book, new PurchaseEntry(new(2026, 5, 2), new PotId("boots"), Usd(90), "boots")).Value!;

        PotPlan begun = Assert.Single(PotPlan.Of(book));
        Assert.Equal((Usd(10), Usd(10), Usd(90)), (begun.Has, begun.Planned, begun.Lacks));

        // 90 over the 26 paydays before 2 May 2027 are 3.46 each, and the next one later.
        PotPlan next = Assert.Single(PotPlan.Of(Closed(book, 1)));
        Assert.Equal((Usd(0), new LocalDate(2027, 4, 30)), (next.Ahead, next.Done));
    }

    [Fact]
    public void Of_APotThatAsks_HasNoPlan()
    {
        Book book = Closed(Book.Begin(Home), 5);
        book = Purchasing.Enter(book, new PurchaseEntry(new(2026, 5, 2), new PotId("boots"), Usd(90), "boots")).Value!;

        Assert.DoesNotContain(PotPlan.Of(book), plan => plan.Pot.Name == "Boots");
    }

    [Fact]
    public void Of_APotThatIsFull_IsDone()
    {
        PotPlan steps = PotPlan.Of(Closed(Book.Begin(Home), 4))[2];

        Assert.Equal((Usd(0), (LocalDate?)null), (steps.Lacks, steps.Done));
    }

    private static Book Closed(Book book, int paydays) => paydays == 0
        ? book
        : Closed(Closing.Of(Routine.Plan(book, new RoutineDraft(Routine.Next(book).Value)).Value!).Value!, paydays - 1);

    private static decimal Plain(Money amount) => amount.MinorUnits / 100m;

    private static string? Day(LocalDate? day) => day?.ToString("d MMM", CultureInfo.InvariantCulture);
}
