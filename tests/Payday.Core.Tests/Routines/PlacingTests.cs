using System.Collections.Immutable;
using CsCheck;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Debts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

/// <summary>A surplus placed by hand: what is not left is taken from the proposal.</summary>
public class PlacingTests
{
    // 1,000 to place: the proposal pays the card's 300 and 500 of the loan off, and leaves 200 in the buffer.
    private static readonly Household Home = Bare with
    {
        Debts = [Debt("Loan", 500, 0.06m, 50, due: 25), Debt("Card", 300, 0.12m, 30, due: 25)],
        Pots = [CashPot("Food", 0)],
        Bills = [Bill("Insurance", 400, new(2026, 12, 1), months: 12)],
        Settings = Bare.Settings with { SetAsides = SetAsideMode.AsTheyFall },
    };

    [Theory]
    [InlineData(PlacementTarget.Pot, "food", 50, "food 50, card 300, loan 500, buffer 150")]
    [InlineData(PlacementTarget.Pot, "food", 250, "food 250, card 300, loan 450")]
    [InlineData(PlacementTarget.Pot, "food", 1000, "food 1000")]
    [InlineData(PlacementTarget.Debt, "loan", 100, "loan 100, card 300, buffer 200")]
    [InlineData(PlacementTarget.Buffer, "", 400, "buffer 400, card 300, loan 300")]
    [InlineData(PlacementTarget.Debt, "card", 0, "loan 500, buffer 200")]
    [InlineData(PlacementTarget.Bill, "insurance", 300, "insurance 300, card 300, loan 400")]
    public void Set_OnTheProposal_TakesWhatIsLackingFromItsEnd(PlacementTarget target, string id, decimal amount, string placed) =>
        Assert.Equal(placed, Shown(Placing.Set(Plan(null), Target(target, id), Usd(amount)).Value));

    [Fact]
    public void Set_MoreThanTheSurplus_IsRefused()
    {
        Result<ImmutableArray<Placement>> placed = Placing.Set(Plan(null), MoveTarget.Pot(new PotId("food")), Usd(1000.01m));
        Assert.Equal("There is 1,000.00 to place in all; write no more than that.", placed.Fault.Said());
    }

    [Fact]
    public void Set_AfterOthersByHand_TakesFromTheProposalFirst()
    {
        ImmutableArray<Placement> first = Placing.Set(Plan(null), MoveTarget.Pot(new PotId("food")), Usd(100)).Value;
        Assert.Equal("buffer 500, food 100, card 300, loan 100", Shown(Placing.Set(Plan(first), MoveTarget.Buffer, Usd(500)).Value));
    }

    [Theory]
    [InlineData(PlacementTarget.Buffer, "", null, "buffer 1000")]
    [InlineData(PlacementTarget.Pot, "food", null, "food 1000")]
    [InlineData(PlacementTarget.Debt, "loan", 500, "loan 500, card 300, buffer 200")]
    public void Rest_WithNothingLeft_MovesTheWholeSurplus(PlacementTarget target, string id, int? most, string placed) =>
        Assert.Equal(placed, Shown(Placing.Rest(Plan(null), Target(target, id), most is { } limit ? Usd(limit) : null)));

    [Theory]
    [InlineData(PlacementTarget.Pot, "food", null, "food 900, card 100")]
    [InlineData(PlacementTarget.Debt, "card", 300, "card 300")]
    public void Rest_WithSomeLeft_PlacesThat(PlacementTarget target, string id, int? most, string placed) =>
        Assert.Equal(placed, Shown(Placing.Rest(Plan([new Placement(MoveTarget.Debt(new DebtId("card")), Usd(100))]), Target(target, id), most is { } limit ? Usd(limit) : null)));

    [Theory]
    [InlineData(PlacementTarget.Pot, "food", 250, "buffer 200, loan 50")]
    [InlineData(PlacementTarget.Pot, "food", 1000, "loan 500, card 300, buffer 200")]
    [InlineData(PlacementTarget.Debt, "loan", 100, "")]
    public void GaveWay_OnTheProposal_SaysWhatItTook(PlacementTarget target, string id, decimal amount, string took) =>
        Assert.Equal(took, Shown(Placing.GaveWay(Plan(null), Placing.Set(Plan(null), Target(target, id), Usd(amount)).Value, Target(target, id))));

    [Fact]
    public void Closing_PlacedOnABill_IsSetAsideForIt()
    {
        RoutinePlan plan = Plan([new Placement(MoveTarget.Bill(new BillId("insurance")), Usd(400)), new Placement(MoveTarget.Buffer, Usd(600))]);

        Book closed = Closing.Of(plan).Value!;

        Assert.Equal(Usd(400), closed.Ledger.Balances[LedgerEnd.InAccount(Purpose.SetAside(new BillId("insurance")))]);
        Assert.Equal(Usd(0), Routine.Plan(closed, new RoutineDraft(Routine.Next(closed).Value)).Value!.Bills.Total);
    }

    [Fact]
    public void Trial_OfADebt_SaysWhatItWouldDoAndDecidesNothing()
    {
        RoutinePlan plan = Plan([]);

        PlacingTrial trial = PlacingTrial.Of(plan, MoveTarget.Debt(new DebtId("loan")), Placing.MostOn(plan, new DebtId("loan")));

        Assert.Equal((Usd(500), "loan 500"), (trial.Amount, Shown(trial.Placements)));
        Assert.True(trial.Own!.After.AtOnce);
        Assert.Equal(new RollOnChange(new DebtId("loan"), RollOnComes.AsWell), trial.Debts.Single(debt => debt.After.Id == new DebtId("card")).Because);
        Assert.Empty(plan.Surplus.Placements);
    }

    // 300 of the card at 1 % a month or 500 of the loan at half a percent: with 1,000 both are paid, with 250 the order decides.
    [Theory]
    [InlineData(DebtOrder.SmallestBalance, DebtOrder.HighestRate)]
    [InlineData(DebtOrder.HighestRate, DebtOrder.SmallestBalance)]
    public void OtherWay_OfTheProposal_IsThatOfAHouseholdWithTheOtherOrder(DebtOrder order, DebtOrder other)
    {
        Household Ordered(DebtOrder by) => Home with
        {
            Debts = [Debt("Loan", 200, 0.06m, 20, due: 25), Debt("Card", 300, 0.12m, 30, due: 25)],
            Sources = [Bare.Sources[0] with { Expected = Usd(300) }],
            Settings = Home.Settings with { SurplusOrder = by },
        };
        SurplusStep surplus = Routine.Plan(Book.Begin(Ordered(order)), new RoutineDraft(Friday6March)).Value!.Surplus;
        SurplusStep there = Routine.Plan(Book.Begin(Ordered(other)), new RoutineDraft(Friday6March)).Value!.Surplus;

        OtherWay way = OtherWay.Of(surplus);

        Assert.Equal((other, there.With.Interest, there.With.Interest - surplus.With.Interest), (way.Order, way.Course.Interest, way.Costs!.Value));
        Assert.Equal(order == DebtOrder.SmallestBalance, way.Costs.Value.IsNegative);
        Assert.Equal(Usd(0), OtherWay.ProposalCosts(surplus));
    }

    // Whatever is done, never more than the surplus is placed, nothing of zero or below, and each target once.
    [Fact]
    public void Placing_AnyWays_NeverComesToMoreThanTheSurplus()
    {
        MoveTarget[] targets = [MoveTarget.Debt(new DebtId("card")), MoveTarget.Debt(new DebtId("loan")), MoveTarget.Pot(new PotId("food")), MoveTarget.Buffer];
        Gen.Select(Gen.Int[0, 3], Gen.Int[-1, 120_000]).Array[1, 12].Sample(steps =>
        {
            ImmutableArray<Placement>? placed = null;
            foreach ((int at, int cents) in steps)
            {
                MoveTarget target = targets[at];
                RoutinePlan plan = Plan(placed);
                if (cents < 0)
                {
                    placed = Placing.Rest(plan, target, null);
                    Assert.True(Plan(placed).LeftToPlace.IsZero);
                }
                else if (Placing.Set(plan, target, Usd(cents / 100m)) is { Ok: true } set)
                {
                    Assert.Equal(Usd(cents / 100m), Placing.On(Plan(set.Value), target));
                    placed = set.Value;
                }

                RoutinePlan after = Plan(placed);
                Assert.False(after.LeftToPlace.IsNegative);
                Assert.All(after.Surplus.Placements, placement => Assert.True(placement.Amount.IsPositive));
                Assert.Distinct(after.Surplus.Placements.Select(placement => placement.Target));
            }
        });
    }

    private static MoveTarget Target(PlacementTarget target, string id) => target switch
    {
        PlacementTarget.Pot => MoveTarget.Pot(new PotId(id)),
        PlacementTarget.Debt => MoveTarget.Debt(new DebtId(id)),
        PlacementTarget.Bill => MoveTarget.Bill(new BillId(id)),
        _ => MoveTarget.Buffer,
    };

    private static RoutinePlan Plan(ImmutableArray<Placement>? placements) =>
        Routine.Plan(Book.Begin(Home), new RoutineDraft(Friday6March) { Placements = placements }).Value!;

    private static string Shown(ImmutableArray<Placement> placements) => string.Join(
        ", ", placements.Select(placement => $"{(placement.Target == MoveTarget.Buffer ? "buffer" : placement.Target.IdText)} {placement.Amount.MinorUnits / 100}"));
}
