using Payday.Core.Bills;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Bills.Plans;

namespace Payday.Core.Tests.Bills;

public class DueFundingTests
{
    private static readonly Due Rent = DueOn(3, 100, "rent");
    private static readonly Due Power = DueOn(3, 30, "power");
    private static readonly Due School = DueOn(10, 60, "school");
    private static readonly Due[] Dues = [School, Rent, Power];

    [Fact]
    public void FromHeld_PartOfWhatIsDue_PaysTheEarliestFirst()
    {
        Assert.Equal([new DueFunding(Rent, Cents(40))], DueFunding.FromHeld(Cents(40), Dues).ToArray());
        Assert.Empty(DueFunding.FromHeld(Cents(0), Dues));
    }

    [Fact]
    public void FromHeld_MoreThanIsDue_PaysAllAndNoMore() =>
        Assert.Equal(
            [new DueFunding(Rent, Cents(100)), new DueFunding(Power, Cents(30)), new DueFunding(School, Cents(60))],
            DueFunding.FromHeld(Cents(500), Dues).ToArray());

    [Fact]
    public void FromPayday_EachInTurn_GoesOnWhereTheLastOneStopped()
    {
        SetAsidePlan plan = SetAsidePlanner.Plan(SetAsideMode.AsTheyFall, Cents(40), Paydays(200, 200), Dues);

        Assert.Equal(
            [new DueFunding(Rent, Cents(60)), new DueFunding(Power, Cents(30))],
            DueFunding.FromPayday(plan, 0, Cents(40), Dues).ToArray());
        Assert.Equal([new DueFunding(School, Cents(60))], DueFunding.FromPayday(plan, 1, Cents(40), Dues).ToArray());
    }
}
