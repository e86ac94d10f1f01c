using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

/// <summary>When the account has all of a bill's next due: with what is placed on it and without.</summary>
public class BillCourseTests
{
    // Paydays of 1,000 each fortnight from 6 March. Insurance once a year: 500 by 16 May are even parts of 100 over the five paydays before it.
    private static readonly Household Home = Bare with { Bills = [Bill("Insurance", 500, new(2026, 5, 14), months: 12)] };

    [Theory]
    [InlineData(SetAsideMode.Level, 0, "2026-05-01")]
    [InlineData(SetAsideMode.Level, 100, "2026-05-01")]
    [InlineData(SetAsideMode.Level, 400, "2026-03-06")]
    [InlineData(SetAsideMode.AsTheyFall, 0, "2026-05-01")]
    [InlineData(SetAsideMode.AsTheyFall, 499.99, "2026-05-01")]
    [InlineData(SetAsideMode.AsTheyFall, 500, "2026-03-06")]
    public void Of_PlacedOnABill_SaysWhenItIsWhole(SetAsideMode mode, decimal placed, string whole)
    {
        BillCourse course = Assert.Single(BillCourse.Of(Plan(Home with { Settings = Home.Settings with { SetAsides = mode } }, ("insurance", placed))));

        Assert.Equal((new LocalDate(2026, 5, 14), Usd(500), Usd(mode == SetAsideMode.Level ? 400 : 500)), (course.Due, course.Amount, course.Lacks));
        Assert.Equal(new LocalDate(2026, 5, 1), course.Without);
        Assert.Equal(NodaTime.Text.LocalDatePattern.Iso.Parse(whole).Value, course.With);
    }

    [Fact]
    public void Of_SeveralBills_AreByTheirNextDueAndWithoutThoseThatHaveNone()
    {
        Household home = Bare with
        {
            Bills = [Bill("Late", 100, new(2026, 9, 1), months: 12), Bill("Rent", 300, new(2026, 3, 10)), Bill("Once", 50, new(2026, 3, 9)) with { Until = new(2026, 3, 9) }],
        };

        Assert.Equal([("rent", new LocalDate(2026, 4, 10)), ("late", new(2026, 9, 1))], BillCourse.Of(Plan(home)).Select(course => (course.BillId.Text, course.Due)));
    }

    [Fact]
    public void Of_PayThatIsNotEnough_HasNoDate()
    {
        Household home = Home with { Sources = [Bare.Sources[0] with { Expected = Usd(50) }] };

        Assert.Null(Assert.Single(BillCourse.Of(Plan(home))).Without);
    }

    private static RoutinePlan Plan(Household home, params (string Bill, decimal Amount)[] placed) => Routine.Plan(Book.Begin(home), new RoutineDraft(Friday6March)
    {
        Placements = [.. placed.Where(one => one.Amount > 0).Select(one => new Placement(MoveTarget.Bill(new BillId(one.Bill)), Usd(one.Amount)))],
    }).Value!;
}
