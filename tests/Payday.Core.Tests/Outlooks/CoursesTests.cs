using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Amounts;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Outlooks;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Status;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Outlooks;

/// <summary>What the Surplus step says of pots and bills is what comes of it, with a surplus placed by hand too.</summary>
public sealed class CoursesTests
{
    private const int Ahead = 14;

    private static readonly Gen<Household> SomeHome =
        from bills in Gen.Select(Gen.Int[1, 200], Gen.Int[0, 90], Gen.OneOf(Gen.Const(1), Gen.Const(3), Gen.Const(12))).Array[0, 4]
        from pots in Gen.Select(Gen.Int[1, 40], Gen.Int[0, 2], Gen.Bool, Gen.Int[10, 170]).Array[0, 4]
        from mode in Gen.Enum<SetAsideMode>()
        select Bare with
        {
            Settings = Bare.Settings with { SetAsides = mode },
            Sources = [Bare.Sources[0] with { Expected = Usd(3000) }],
            Bills = [.. bills.Select((bill, i) => Bill("Bill" + (char)('a' + i), bill.Item1, Friday6March.PlusDays(bill.Item2), bill.Item3))],
            Debts = [Debt("Loan", 90_000, 0.06m, 50, due: 25)],
            Pots = [.. pots.Select((pot, i) => Pot((char)('a' + i), pot.Item1, pot.Item2, pot.Item3, pot.Item4))],
        };

    // Placements by hand on any pots and bills, and what is left on the loan.
    private static readonly Gen<(Household Home, int[] Placed)> SomePlaced = Gen.Select(SomeHome, Gen.OneOf(Gen.Const(0), Gen.Int[1, 30_000]).Array[8]);

    [Fact]
    public void PotCourse_AnyHousehold_IsThatOfTheRoutinePlayedForward() => SomePlaced.Sample((home, placed) =>
    {
        Book book = Book.Begin(home);
        RoutineDraft draft = Placed(book, placed);

        Outlook outlook = Outlook.Of(book with { Draft = draft }, Ahead).Value!;

        Assert.All(outlook.Paydays, payday => Assert.False(payday.IsTight));
        foreach (PotCourse course in PotCourse.Of(Routine.Plan(book, draft).Value!))
        {
            // One that was spent on its date is there again later, but it was full before.
            LocalDate? reached = outlook.Reached.FirstOrDefault(pot => pot.PotId == course.PotId)?.On;
            Assert.Equal((course.PotId, course.With <= outlook.Paydays[^1].Date ? course.With : null), (course.PotId, reached));
        }
    }, iter: 60);

    [Fact]
    public void BillCourse_AnyHousehold_IsThatOfTheRoutinePlayedForward() => SomePlaced.Sample((home, placed) =>
    {
        Book book = Book.Begin(home);
        RoutinePlan plan = Routine.Plan(book, Placed(book, placed)).Value!;
        ImmutableArray<BillCourse> courses = BillCourse.Of(plan);
        var whole = new Dictionary<BillId, LocalDate>();
        for (int payday = 0; payday < Ahead; payday++)
        {
            book = Closing.Of(plan).Value!;
            foreach (BillCourse course in courses.Where(course => !whole.ContainsKey(course.BillId)))
            {
                // What is paid in this period is no longer held for it at its end.
                DueRow? now = plan.Bills.Dues.FirstOrDefault(due => due.BillId == course.BillId && due.Date >= course.Due);
                bool isHeld = book.Ledger.Balances[LedgerEnd.InAccount(Purpose.SetAside(course.BillId))]
                    - Money.Sum(plan.Bills.Dues.Where(due => due.BillId == course.BillId && !due.Paid && due.Date < course.Due).Select(due => due.Amount), Dollars) >= course.Amount;
                if (now is not null || isHeld)
                {
                    whole.Add(course.BillId, plan.Period.First);
                }
            }

            plan = Routine.Plan(book, new RoutineDraft(Routine.Next(book).Value)).Value!;
        }

        LocalDate last = Friday6March.PlusWeeks(2 * (Ahead - 1));
        Assert.All(courses, course => Assert.Equal(
            (course.BillId, course.With <= last ? course.With : null),
            (course.BillId, whole.TryGetValue(course.BillId, out LocalDate day) ? (LocalDate?)day : null)));
    }, iter: 60);

    // Lived as the outlook does it: each payday as proposed, pots spent on their dates. What was placed by hand makes them ahead at once.
    [Fact]
    public void PotPlan_AnyHousehold_IsOnPlanAndDoneWhenTheOutlookSaysSo() => SomePlaced.Sample((home, placed) =>
    {
        Book book = Book.Begin(home);
        Outlook outlook = Outlook.Of(book, Ahead).Value!;
        foreach (PotPlan plan in PotPlan.Of(book).Where(plan => plan.Lacks.IsPositive))
        {
            Assert.Equal(plan.Done <= outlook.Paydays[^1].Date ? plan.Done : null, outlook.Reached.FirstOrDefault(pot => pot.PotId == plan.Pot.Id)?.On);
        }

        for (int count = 1; count <= Ahead; count += 4)
        {
            Assert.All(PotPlan.Of(Outlook.Of(book, count).Value!.Book), plan => Assert.Equal((plan.Pot.Id, Usd(0)), (plan.Pot.Id, plan.Ahead)));
        }

        RoutineDraft draft = Placed(book, placed);
        Book closed = Closing.Of(Routine.Plan(book, draft).Value!).Value!;
        Assert.All(PotPlan.Of(closed), plan => Assert.Equal(
            (plan.Pot.Id, Placing.On(draft.Placements!.Value, MoveTarget.Pot(plan.Pot.Id), Dollars)), (plan.Pot.Id, plan.Ahead)));
    }, iter: 60);

    private static RoutineDraft Placed(Book book, int[] placed)
    {
        RoutinePlan plan = Routine.Plan(book, new RoutineDraft(Friday6March) { Placements = [] }).Value!;
        MoveTarget[] targets = [.. book.Household.Pots.Select(pot => MoveTarget.Pot(pot.Id)), .. book.Household.Bills.Select(bill => MoveTarget.Bill(bill.Id))];
        foreach ((MoveTarget target, int cents) in targets.Zip(placed))
        {
            Result<ImmutableArray<Placement>> set = Placing.Set(plan, target, Usd(cents / 100m));
            plan = Routine.Plan(book, plan.Draft with { Placements = set.Ok ? set.Value : plan.Surplus.Placements }).Value!;
        }

        return plan.Draft with { Placements = Placing.Rest(plan, MoveTarget.Debt(new DebtId("loan")), null) };
    }

    private static Pot Pot(char letter, int amount, int kind, bool inCash, int target)
    {
        Pot pot = inCash ? CashPot("Pot" + letter, amount) : AccountPot("Pot" + letter, amount);
        return pot with
        {
            Kind = kind switch
            {
                0 => new PotKind.Sinking(Usd(target * 5), Friday6March.PlusDays(target)),
                1 => new PotKind.Reserve(Usd(target * 5), Usd(amount)),
                _ => new PotKind.Ladder(Usd(5), (target / 20) + 1, LadderOrder.Falling),
            },
        };
    }
}
