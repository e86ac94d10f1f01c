using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Ledgers;
using Payday.Core.Reconciling;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.BankLines;

/// <summary>Rule (design, section 2): one income, one payment, one whole withdrawal, one deposit; undone movements and their reverses are none.</summary>
public class AccountLineTests
{
    private static readonly Core.Households.Household Living = House with
    {
        Bills = [Bill("Rent", 310, Friday6March, essential: true), Bill("Power", 45.99m, new LocalDate(2026, 3, 20))],
        Opening = House.Opening with { LooseNotes = Notes((5, 6), (10, 2)) },
    };

    [Fact]
    public void Of_APayday_HasOneLineForAllThatItFetches()
    {
        AccountLine[] lines = [.. AccountLines.Of(Closed).All];
        AccountLine fetched = Assert.Single(lines, line => line.Kind == AccountLineKind.Withdrawal);
        Assert.True(fetched.Movements.Length > 1);
        Assert.Equal(-Closed.LastClosed!.Withdraw.Worth(Dollars), fetched.Amount);
        Assert.Equal(Usd(1000), Assert.Single(lines, line => line.Kind == AccountLineKind.Income).Amount);
    }

    [Fact]
    public void Of_AReopenedPayday_HasNone() => Assert.Empty(AccountLines.Of(Reopening.Of(Closed, Friday13March).Value!).All);

    // An independent little model of the bank, after every event of random lives: the same lines, and the same balance once all has arrived.
    [Fact]
    public void Of_RandomLives_IsWhatAModelOfTheBankHas() => Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[10, 200]).Sample(
        (seed, days) =>
        {
            // Some begin below zero.
            var life = new FiveYears(Book.Begin(seed % 3 > 0 ? Living : Living with { Opening = Living.Opening with { Account = Usd(-seed % 1700) } }), seed);
            var bank = new BankModel(life.Book);
            for (int day = 0; day < days; day++)
            {
                life.Live(Friday6March.PlusDays(day), book =>
                {
                    bank.See(book);
                    Assert.Equal(bank.Balance, book.Ledger.Balances.In(Place.Account));
                    Assert.Equal(bank.Amounts, AccountLines.Of(book).All.Select(line => line.Amount).OrderBy(amount => amount.MinorUnits));
                });
            }
        },
        iter: 20);

    // Whichever lines have arrived so far, ticking those leaves no difference, again and again.
    [Fact]
    public void Reconciling_RandomLives_WithWhatHasArrived_ComesToZero() => Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[10, 120]).Sample(
        (seed, days) =>
        {
            var life = new FiveYears(Book.Begin(Living), seed);
            var chance = new Random(seed);
            for (int day = 0; day < days; day++)
            {
                LocalDate today = Friday6March.PlusDays(day);
                life.Live(today, _ => { });
                if (day % 9 != 8)
                {
                    continue;
                }

                ReconciliationPlan plan = ReconciliationPlan.Of(life.Book, new ReconciliationDraft(today, null, []));
                Money balance = Living.Opening.Account + Money.Sum(AccountLines.Of(life.Book).All.Except(plan.Lines).Select(line => line.Amount), Dollars);
                foreach (AccountLine line in plan.Lines.Where(_ => chance.Next(100) < 70))
                {
                    balance += line.Amount;
                    plan = plan.Tick(line.Number).Value!;
                }

                plan = plan.With(plan.Draft with { Balance = balance });
                Assert.Equal(Usd(0), plan.Difference);
                Assert.Empty(plan.Culprits);
                Assert.Equal(plan.Here, balance + plan.OnItsWay);
                life.Become(plan.Accept().Value!);
            }
        },
        iter: 20);
}
