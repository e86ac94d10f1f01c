using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Receiving;
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

    // 190 by a machine that gives 100: what is paid each day is a line of its own, whatever pots it is for.
    [Fact]
    public void Of_TripsToAMachine_HasOneLineADay()
    {
        AccountLine[] trips = Trips(AtAMachine);
        Assert.Equal([(Friday6March, Usd(-100)), (Friday6March.PlusDays(1), Usd(-90))], trips.Select(trip => (trip.Date, trip.Amount)));
        Assert.Equal(AtAMachine.LastClosed!.Withdraw.Worth(Dollars), -Money.Sum(trips.Select(trip => trip.Amount), Dollars));
        Assert.Empty(trips[0].Movements.Intersect(trips[1].Movements));
    }

    // More came with the last trip, less is missing from the last ones; one that brought nothing is none.
    [Theory]
    [InlineData(210, 100, 110)]
    [InlineData(150, 100, 50)]
    [InlineData(100, 100)]
    [InlineData(60, 60)]
    public void Of_TripsThatBroughtSomethingElse_ChangeFromTheLastOn(int got, params int[] amounts)
    {
        Book book = ReceivingPlan.Of(AtAMachine, Notes((10, got / 10))).Value!.Confirm(Friday6March.PlusDays(1)).Value!;
        Assert.Equal(amounts.Select(amount => Usd(-amount)), Trips(book).Select(trip => trip.Amount));
        Assert.Equal(2, Trips(ReceivingUndo.Of(book, Friday13March).Value!).Length);
    }

    [Fact]
    public void Of_AReopenedPayday_HasNone() => Assert.Empty(AccountLines.Of(Reopening.Of(Closed, Friday13March).Value!).All);

    // An independent little model of the bank, after every event of random lives: the same lines, and the same balance once all has arrived.
    [Fact]
    public void Of_RandomLives_IsWhatAModelOfTheBankHas() => Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[10, 200], Gen.Bool).Sample(
        (seed, days, atAMachine) =>
        {
            // Some begin below zero.
            Household home = seed % 3 > 0 ? Living : Living with { Opening = Living.Opening with { Account = Usd(-seed % 1700) } };
            var life = new FiveYears(Book.Begin(atAMachine ? Machine(home) : home), seed);
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
        iter: 30);

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

    private static Book AtAMachine { get; } = Close(Book.Begin(Machine(House)), Friday6March);

    private static AccountLine[] Trips(Book book) => [.. AccountLines.Of(book).All.Where(line => line.Kind == AccountLineKind.Withdrawal)];

    private static Core.Households.Household Machine(Core.Households.Household home) =>
        home with { Settings = home.Settings with { Bank = new CashSource.Machine([Usd(20), Usd(10)], Usd(100)) } };
}
