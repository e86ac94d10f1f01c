using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

public class ShortfallTests
{
    private static readonly Household Tight = Bare with
    {
        Bills = [Bill("Rent", 500, new(2026, 3, 10), essential: true), Bill("Insurance", 900, new(2027, 2, 10), months: 12)],
        Debts = [Debt("Card", 2000, 0.2m, 60, due: 15)],
        Pots = [CashPot("Food", 100, rank: 1, floor: 150), CashPot("Treats", 40, rank: 2, floor: 20)],
    };

    [Fact]
    public void Plan_DoesNotFit_CutsTheLeastImportantPotFirstInWholeNotes()
    {
        // 500 rent, 60 minimum, 280 for pots: 840 is needed.
        RoutinePlan plan = Plan(817, draft => draft with { SetAsides = SetAsideMode.AsTheyFall });

        // 23 lack: 55 of the treats' 80 come in notes, and what the cut of whole notes gives beyond the need waits for them.
        Assert.Equal([Usd(200), Usd(57)], plan.Pots.Rows.Select(row => row.Fill));
        Assert.Equal(Usd(23), plan.Pots.Cut);
        Assert.Equal((Usd(0), Usd(2)), (plan.Surplus.Before, plan.Withdrawal.Pots[1].KeptBack));
        Assert.StartsWith("23.00 less; ", plan.Pots.Rows[1].Why, StringComparison.Ordinal);
        Assert.True(Closing.Of(plan).Ok);
    }

    [Fact]
    public void Plan_PotsAtTheirFloors_SetsLessAsideForLaterBills()
    {
        // Rent is due in the next period only, so nothing needs to be held for it today: 300 - 60 - 170 is left for it.
        RoutinePlan plan = Plan(300, home: Tight with { Bills = [Bill("Rent", 500, new(2026, 3, 25), essential: true)] });

        Assert.Equal([Usd(150), Usd(20)], plan.Pots.Rows.Select(row => row.Fill));
        Assert.Equal(Usd(70), plan.Bills.Total);
        Assert.True(plan.Bills.Total < plan.Bills.Planned);
        Assert.Equal(Usd(0), plan.LeftToPlace);
        Assert.True(Closing.Of(plan).Ok);
    }

    [Fact]
    public void Plan_NotEvenTheDues_NamesWhatCantBePaidAndDoesNotClose()
    {
        RoutinePlan plan = Plan(650);

        // 650 less the floors of 170 leaves 480: rent lacks 20, the card all of its 60.
        Assert.Equal([("Rent", Usd(20)), ("Card", Usd(60))], plan.Unpayable.Select(unpaid => (unpaid.Obligation.Name, unpaid.Short)));
        Assert.Equal(Usd(-80), plan.LeftToPlace);
        Assert.Equal(
            "Rent can't be paid in full: 20.00 short by 10 Mar 2026. Card can't be paid in full: 60.00 short by 15 Mar 2026.",
            Closing.Of(plan).Faults.Said());
    }

    [Fact]
    public void Plan_FillDecidedByHand_IsNotCut()
    {
        RoutinePlan plan = Plan(780, draft => draft with { Fills = PotSums(("treats", 80)) });

        Assert.Equal([Usd(150), Usd(80)], plan.Pots.Rows.Select(row => row.Fill));
    }

    [Fact]
    public void Of_LeftToPlace_IsRefused()
    {
        RoutinePlan plan = Plan(2000, draft => draft with { Placements = [] });

        Assert.Contains("is left to place.", Closing.Of(plan).Faults.Said(), StringComparison.Ordinal);
    }

    private static RoutinePlan Plan(decimal income, Func<RoutineDraft, RoutineDraft>? decide = null, Household? home = null)
    {
        var draft = new RoutineDraft(Friday6March) { Incomes = SourceSums(("wage", income)) };
        return Routine.Plan(Book.Begin(home ?? Tight), (decide ?? (same => same))(draft)).Value!;
    }
}
