using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

/// <summary>What can't be paid, over households of all sizes: named where and as far as something is missing, and nowhere else.</summary>
public class UnpayableProperties
{
    private static readonly Gen<Household> SomeHome =
        from income in Gen.Int[0, 400]
        from bills in Gen.Select(Gen.Int[0, 300], Gen.Int[0, 300], Gen.Int[0, 20], Gen.Bool).Array[0, 3]
        from december in Gen.Int[0, 300]
        from debts in Gen.Select(Gen.Int[1, 90], Gen.Int[0, 13]).Array[0, 2]
        from pots in Gen.Select(Gen.Int[0, 80], Gen.Int[0, 120]).Array[0, 3]
        from keeps in Gen.Int[0, 500]
        select Bare with
        {
            Settings = Bare.Settings with { BufferKeeps = Usd(keeps) },
            Sources = [Bare.Sources[0] with { Expected = Usd(income) }],
            Bills =
            [
                .. bills.Select((bill, i) => Bill("Bill" + (char)('a' + i), bill.Item1, Friday6March.PlusDays(bill.Item3), essential: bill.Item4)),
                Bill("December", 600, new(2026, 12, 1), months: 12),
            ],
            Debts = [.. debts.Select((debt, i) => Debt("Debt" + (char)('a' + i), 1000, 0.12m, debt.Item1, Friday6March.PlusDays(debt.Item2).Day))],
            Pots = [.. pots.Select((pot, i) => CashPot("Pot" + (char)('a' + i), pot.Item2, rank: i + 1, floor: pot.Item1))],
            Opening = Bare.Opening with
            {
                Account = Usd(bills.Sum(bill => bill.Item2) + december + 500),
                SetAside = BillSums([.. bills.Select((bill, i) => ("bill" + (char)('a' + i), (decimal)bill.Item2)), ("december", december)]),
            },
        };

    [Fact]
    public void Plan_AnyHousehold_NamesAllThatIsMissingAndNoBillThatIsHeldInFull() =>
        SomeHome.Sample(
            home =>
            {
                RoutinePlan plan = Plan(home);
                Money missing = (-plan.Surplus.Before).ClampToZero();

                Assert.Equal(missing, Money.Sum(plan.Unpayable.Select(one => one.Short), Dollars));
                Assert.All(plan.Unpayable, one => Assert.True(one.Short.IsPositive && one.Short <= one.Obligation.Amount));
                foreach (DueRow due in plan.Bills.Dues.Where(due => plan.Bills.Dues.Count(other => other.BillId == due.BillId) == 1))
                {
                    bool isHeld = home.Opening.SetAside[due.BillId] >= due.Amount;
                    Assert.False(isHeld && plan.Unpayable.Any(one => one.Obligation.Name == due.Name), $"{due.Name} is held in full");
                }

                // Money for December's bill pays no minimum: what there is today must carry all of them.
                Money minimums = plan.Debts.Total;
                Money named = Money.Sum(plan.Unpayable.Where(one => plan.Debts.Rows.Any(row => row.Name == one.Obligation.Name)).Select(one => one.Short), Dollars);
                Assert.True(minimums - named <= plan.Income.ToPlace);
            },
            iter: 2000);

    /// <summary>It closes, with nothing below zero; or it doesn't, and says why.</summary>
    [Fact]
    public void Of_AnyHousehold_ClosesWithNothingBelowZeroOrSaysWhatIsMissing() =>
        SomeHome.Sample(
            home =>
            {
                RoutinePlan plan = Plan(home);
                Result<Book> closing = Closing.Of(plan);

                Assert.Equal(plan.Unpayable.IsEmpty, closing.Ok);
                if (!closing.Ok)
                {
                    Assert.All(plan.Unpayable, one => Assert.Contains(one.Obligation.Name, closing.Faults.Said(), StringComparison.Ordinal));
                    return;
                }

                // On no day, however the movements are dated.
                foreach (LocalDate day in closing.Value!.Ledger.Movements.Select(movement => movement.Date).Distinct())
                {
                    Balances then = Balances.Empty(Dollars).After([.. closing.Value.Ledger.Movements.Where(movement => movement.Date <= day)]);
                    Assert.Empty(LedgerCheck.Faults(then));
                }
            },
            iter: 1000);

    /// <summary>An earlier version paid 900 from a set-aside of 600. Such a book goes on, and its next payday makes it good.</summary>
    [Theory]
    [InlineData(1000, true)]
    [InlineData(200, false)]
    public void Plan_SetAsideBelowZero_IsMadeGoodFirst(decimal income, bool closes)
    {
        Household home = Bare with { Bills = [Bill("Rent", 900, new(2026, 4, 3), essential: true)], Sources = [Bare.Sources[0] with { Expected = Usd(income) }] };
        Ledger ledger = Ledger.Of(Dollars,
        [
            .. Opening.Movements(home).Select((movement, i) => movement with { Number = i + 1 }),
            new Movement(2, Friday6March, LedgerEnd.InAccount(Purpose.SetAside(new BillId("rent"))), LedgerEnd.PaidFor(new BillId("rent")), Usd(300), "due"),
        ]);
        Book book = Book.Begin(home) with { Ledger = ledger };

        RoutinePlan plan = Routine.Plan(book, new RoutineDraft(Friday6March)).Value!;
        Result<Book> closing = Closing.Of(plan);

        Assert.Equal(["account/set-aside:rent is -300.00: more has left it than was there."], LedgerCheck.Faults(ledger.Balances).Select(fault => fault.Said()));
        Assert.Equal(closes, closing.Ok);
        Assert.Equal(closes ? [] : [Usd(100)], plan.Unpayable.Select(one => one.Short));
        Assert.Empty(closes ? LedgerCheck.Faults(closing.Value!.Ledger.Balances) : []);
    }

    private static RoutinePlan Plan(Household home) => Routine.Plan(Book.Begin(home), new RoutineDraft(Friday6March)).Value!;
}
