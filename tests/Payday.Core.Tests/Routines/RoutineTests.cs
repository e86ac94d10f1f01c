using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

public class RoutineTests
{
    [Fact]
    public void Next_NewBook_IsTheFirstPaydayFromTheStart() =>
        Assert.Equal(Friday6March, Routine.Next(Book.Begin(Bare)).Value);

    [Fact]
    public void Plan_NothingToPayFor_PlacesAllInTheBuffer()
    {
        RoutinePlan plan = Plan(Bare);

        Assert.Equal(Usd(1000), plan.Surplus.Before);
        Assert.Equal([new Placement(MoveTarget.Buffer, Usd(1000))], plan.Surplus.Placements);
        Assert.Equal(Usd(0), plan.LeftToPlace);
        Assert.Equal(new PayPeriod(Friday6March, new(2026, 3, 19)), plan.Period);
    }

    [Theory]
    [InlineData("2026-03-05", "The household starts on 2026-03-06, after 2026-03-05.")]
    [InlineData("2026-03-07", "2026-03-07 is not a payday. The next payday is 2026-03-06. The first after 2026-03-07 is 2026-03-20.")]
    public void Plan_NotAnOpenPayday_SaysWhy(string date, string fault) =>
        Assert.Equal(fault, Routine.Plan(Book.Begin(Bare), new RoutineDraft(Date(date))).Fault);

    [Fact]
    public void Plan_NoLaterPayday_AsksForOne()
    {
        Household home = Bare with { Sources = [Bare.Sources[0] with { Schedule = new Schedule.OnDates([Friday6March]) }] };

        Assert.Equal(
            "No payday is known after 2026-03-06; add dates to an income source, so that its pay period has an end.",
            Routine.Plan(Book.Begin(home), new RoutineDraft(Friday6March)).Fault);
    }

    [Fact]
    public void Plan_BillBeyondThisPeriod_IsHeldBackLevel()
    {
        // 600 on 1 May, five paydays of 1,000 until then, the last on the day itself: 120 each.
        Household home = Bare with { Bills = [Bill("Rates", 600, new(2026, 5, 1), months: 120)] };

        BillsStep bills = Plan(home).Bills;

        Assert.Empty(bills.Dues);
        Assert.Equal(Usd(120), bills.Total);
        Assert.Equal(Usd(120), Assert.Single(bills.SetAsides).SetAside);
    }

    [Fact]
    public void Plan_AsTheyFall_HoldsBackOnlyThisPeriod()
    {
        Household home = Bare with { Bills = [Bill("Rates", 600, new(2026, 5, 1), months: 120), Bill("Phone", 40, new(2026, 3, 10), months: 120)] };

        BillsStep bills = Plan(home, draft => draft with { SetAsides = SetAsideMode.AsTheyFall }).Bills;

        Assert.Equal(Usd(40), bills.Total);
        Assert.False(Assert.Single(bills.Dues).Paid);
    }

    [Fact]
    public void Plan_ActualAmount_ChangesTheDueAndWhatIsHeld()
    {
        Household home = Bare with { Bills = [Bill("Phone", 40, new(2026, 3, 10), months: 120)] };
        var key = new DueKey(new BillId("phone"), new(2026, 3, 10));

        BillsStep bills = Plan(home, draft => draft with { Dues = draft.Dues.Add(key, new DueDecision(Usd(43.17m))) }).Bills;

        Assert.Equal(Usd(43.17m), bills.Total);
        Assert.True(bills.Dues[0].Changed);
    }

    [Fact]
    public void Plan_DebtDueInThePeriod_IsPaidItsMinimum()
    {
        Household home = Bare with { Debts = [Debt("Card", 1200, 0.12m, 30, due: 12), Debt("Loan", 500, 0.06m, 50, due: 25)] };

        DebtsStep debts = Plan(home).Debts;

        Assert.Equal((Usd(12), Usd(30), Usd(1182)), (debts.Rows[0].Interest, debts.Rows[0].Payment, debts.Rows[0].NewBalance));
        Assert.Null(debts.Rows[1].Due);
        Assert.Equal(Usd(30), debts.Total);
    }

    [Fact]
    public void Plan_PaymentAboveTheDebt_IsCapped()
    {
        Household home = Bare with { Debts = [Debt("Card", 20, 0.12m, 5, due: 12)] };

        DebtsStep debts = Plan(home, draft => draft with { DebtPayments = draft.DebtPayments.Add(new DebtId("card"), Usd(500)) }).Debts;

        Assert.Equal(Usd(20.20m), debts.Rows[0].Payment);
        Assert.Equal(Usd(0), debts.Rows[0].NewBalance);
    }

    [Fact]
    public void Plan_Surplus_GoesToTheSmallestDebtAndOn()
    {
        Household home = Bare with { Debts = [Debt("Loan", 800, 0.06m, 50, due: 25), Debt("Card", 300, 0.12m, 30, due: 25)] };

        SurplusStep surplus = Plan(home).Surplus;

        Assert.Equal(
            [new Placement(MoveTarget.Debt(new DebtId("card")), Usd(300)), new Placement(MoveTarget.Debt(new DebtId("loan")), Usd(700))],
            surplus.Placements);
        Assert.True(surplus.With.Interest < surplus.Without.Interest);
    }

    [Fact]
    public void Plan_SurplusClearsADebt_ItsMinimumRollsOnSoThatNothingEndsLater()
    {
        Household home = Bare with { Debts = [Debt("Loan", 1400, 0.06m, 20, due: 25), Debt("Card", 300, 0, 30, due: 25)] };

        SurplusStep surplus = Plan(home).Surplus;

        Assert.True(surplus.With.Debts[1].AtOnce);
        Assert.True(surplus.With.Debts[0].PaidOff < surplus.Without.Debts[0].PaidOff);

        // 700 at half a percent a month, 20 and 30 paid: -ln(1 - 700 x 0.005 / 50) / ln 1.005 = 14.55 months from March, whose minimum is still to come (computed).
        Assert.Equal(new YearMonth(2027, 5), surplus.With.Debts[0].PaidOff);
    }

    [Fact]
    public void Plan_CashPot_IsSplitOverTheWeeksAndTheRestKeptBack()
    {
        Household home = Bare with { Pots = [CashPot("Food", 33.40m)] };

        CashPotRow food = Assert.Single(Plan(home).Withdrawal.Pots);

        Assert.Equal(Usd(66.80m), food.Amount);
        Assert.Equal([Usd(35), Usd(30)], food.Weeks.Select(week => week.Amount));
        Assert.Equal([Friday6March, new LocalDate(2026, 3, 13)], food.Weeks.Select(week => week.Week!.Value));
        Assert.Equal(Usd(1.80m), food.KeptBack);
    }

    [Fact]
    public void Plan_LessThanANote_IsKeptBackWithoutAWish()
    {
        var wishes = new NoteWishes(Usd(20), new SmallMoney(Usd(5), Usd(10)));
        Household home = Bare with { Pots = [CashPot("Fares", 2.20m) with { Notes = wishes }] };

        WithdrawalStep step = Plan(home).Withdrawal;

        Assert.Equal(Usd(4.40m), step.KeptBack);
        Assert.Empty(step.Plan.Faults);
    }

    [Fact]
    public void Plan_PlacementOnACashPot_IsWithdrawnToo()
    {
        Household home = Bare with { Pots = [CashPot("Food", 30)] };

        RoutinePlan plan = Plan(home, draft => draft with
        {
            Placements = [new Placement(MoveTarget.Pot(new PotId("food")), Usd(40)), new Placement(MoveTarget.Buffer, Usd(900))],
        });

        Assert.Equal(Usd(100), plan.Withdrawal.Plan.WithdrawTotal);
        Assert.Equal(Usd(0), plan.LeftToPlace);
    }

    [Fact]
    public void Plan_ChangedFill_SurvivesAChangedIncome()
    {
        Household home = Bare with { Pots = [CashPot("Food", 30), CashPot("Treats", 20, rank: 2)] };
        RoutineDraft draft = new(Friday6March) { Fills = PotSums(("food", 75)) };

        PotRow food = Routine.Plan(Book.Begin(home), draft with { Incomes = SourceSums(("wage", 80)) }).Value!.Pots.Rows[0];

        Assert.Equal((Usd(75), true), (food.Fill, food.Changed));
    }

    private static LocalDate Date(string iso) => NodaTime.Text.LocalDatePattern.Iso.Parse(iso).Value;

    private static RoutinePlan Plan(Household home, Func<RoutineDraft, RoutineDraft>? decide = null) =>
        Routine.Plan(Book.Begin(home), (decide ?? (draft => draft))(new RoutineDraft(Friday6March))).Value!;
}
