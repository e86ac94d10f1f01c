using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CardPurchases;
using Payday.Core.ClosedPaydays;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Outlooks;
using Payday.Core.Pots;
using Payday.Core.Routines;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Outlooks;

/// <summary>The outlook is the routine run forward: a household that lives so comes to the same figures.</summary>
public sealed class OutlookTests
{
    private static readonly Gen<LaterAmounts> SomeLater =
        from changes in Gen.Select(Gen.Int[0, 150], Gen.Int[1, 900]).Array[0, 3]
        select LaterAmounts.Of([.. changes.DistinctBy(change => change.Item1).OrderBy(change => change.Item1).Select(change => new LaterAmount(Friday6March.PlusDays(change.Item1), Usd(change.Item2)))]);

    private static readonly Gen<Household> SomeHome =
        from income in Gen.Int[600, 2000]
        from bills in Gen.Select(Gen.Int[1, 300], Gen.Int[0, 60], Gen.OneOf(Gen.Const(1), Gen.Const(3), Gen.Const(12))).Array[0, 4]
        from debts in Gen.Select(Gen.Int[20, 90], Gen.Int[1, 28], Gen.Int[100, 900]).Array[0, 2]
        from pots in Gen.Select(Gen.Int[1, 60], Gen.Int[0, 5], Gen.Bool, Gen.Int[10, 200]).Array[0, 5]
        from keeps in Gen.Int[0, 500]
        from account in Gen.OneOf(Gen.Const(1500), Gen.Int[-3000, 300])
        from later in SomeLater.Array[10]
        select Bare with
        {
            Settings = Bare.Settings with { BufferKeeps = Usd(keeps) },
            Sources = [Bare.Sources[0] with { Expected = Usd(income), Later = later[9] }],
            Bills = [.. bills.Select((bill, i) => Bill("Bill" + (char)('a' + i), bill.Item1, Friday6March.PlusDays(bill.Item2), bill.Item3) with { Later = later[i] })],
            Debts = [.. debts.Select((debt, i) => Debt("Debt" + (char)('a' + i), debt.Item3, 0.12m, debt.Item1, debt.Item2))],
            Pots = [.. pots.Select((pot, i) => Pot((char)('a' + i), pot.Item1, pot.Item2, pot.Item3, pot.Item4, i + 1, later[i + 4]))],
            Opening = Bare.Opening with { Account = Usd(account) },
        };

    [Fact]
    public void Of_TwoPaydays_SaysWhatComesInAndWhereItGoes()
    {
        Household home = Bare with
        {
            Settings = Bare.Settings with { SetAsides = SetAsideMode.AsTheyFall },
            Bills = [Bill("Rent", 600, new(2026, 3, 10))],
            Pots = [CashPot("Food", 50), AccountPot("Phone", 30)],
        };

        Outlook outlook = Outlook.Of(Book.Begin(home), 2).Value!;

        // 1,000 in: 600 of rent, 100 for two weeks of food, 30 on the phone; the rest stays in the account.
        Assert.Equal([Friday6March, Friday6March.PlusWeeks(2)], outlook.Paydays.Select(payday => payday.Date));
        OutlookPayday first = outlook.Paydays[0];
        Assert.Equal((Usd(1000), Usd(600), Usd(0), Usd(130), Usd(270)), (first.Income, first.Bills, first.Minimums, first.Pots, first.Surplus));
        Assert.Equal((Usd(500 + 1000 - 100 - 30), Usd(0)), (first.AccountAfter, first.CashAfter));

        // The next period has no rent, but the one before is paid by then.
        OutlookPayday second = outlook.Paydays[1];
        Assert.Equal((Usd(1000), Usd(0), Usd(130), Usd(870)), (second.Income, second.Bills, second.Pots, second.Surplus));
        Assert.Equal(Usd(1370 - 600 + 1000 - 130), second.AccountAfter);
        Assert.False(first.IsTight);
        Assert.Equal(first, outlook.Tightest);
    }

    [Fact]
    public void Of_APaydayThatDoesNotFit_EndsThereAndSaysWhy()
    {
        Household home = Bare with { Bills = [Bill("Rent", 1100, new(2026, 3, 25), months: 3, essential: true)], Sources = [Bare.Sources[0] with { Expected = Usd(100) }] };

        Outlook outlook = Outlook.Of(Book.Begin(home), 6).Value!;

        Assert.True(outlook.IsCutShort);
        Assert.Equal(Friday6March.PlusWeeks(2), outlook.Paydays[^1].Date);
        Assert.Equal(["Rent"], outlook.Paydays[^1].Unpayable.Select(one => one.Obligation.Name));
        Assert.True(outlook.Paydays[^1].IsTight);
        Assert.Equal(outlook.Paydays[^1], outlook.Tightest);
    }

    [Fact]
    public void Of_PotsAndDebts_SaysWhenTheyAreDone()
    {
        Household home = Bare with
        {
            Debts = [Debt("Card", 300, 0, 100, 15)],
            Pots =
            [
                CashPot("Boots", 0) with { Kind = new PotKind.Sinking(Usd(80), new(2026, 4, 24)) },
                AccountPot("Reserve", 0) with { Kind = new PotKind.Reserve(Usd(60), Usd(20)) },
                AccountPot("Steps", 0) with { Kind = new PotKind.Ladder(Usd(5), 3, LadderOrder.Rising) },
            ],
            Sources = [Bare.Sources[0] with { Expected = Usd(150) }],
        };

        Outlook outlook = Outlook.Of(Book.Begin(home), 6).Value!;

        // 80 by 24 April over the four paydays before it; three of 20; 5, 10 and 15. What is left of each pay goes on the card.
        Assert.Equal(
            [("Reserve", new LocalDate(2026, 4, 3)), ("Steps", new(2026, 4, 3)), ("Boots", new(2026, 4, 17))],
            outlook.Reached.Select(pot => (pot.Name, pot.On)));
        // The rest of it waits from 3 April for its minimum of the 15th, which the next payday takes as paid.
        Assert.Equal([("Card", new LocalDate(2026, 4, 17))], outlook.PaidOff.Select(debt => (debt.Name, debt.On)));
        Assert.Equal(Usd(80), outlook.Book.Ledger.Balances[LedgerEnd.SpentFrom(new PotId("boots"))]);
    }

    [Fact]
    public void Of_WhatWasBegun_Counts()
    {
        var draft = new RoutineDraft(Friday6March) { Incomes = SourceSums(("wage", 700)) };

        Assert.Equal(Usd(700), Outlook.Of(Book.Begin(Bare) with { Draft = draft }, 1).Value!.Paydays[0].Income);
    }

    [Fact]
    public void In_ABillAndASource_ChangeWhatIsExpectedAndNothingElse()
    {
        Book book = Book.Begin(Bare with { Bills = [Bill("Rent", 600, new(2026, 3, 10))] });

        Book tried = new Trial.OfSource(new("wage"), Usd(900)).In(new Trial.OfBill(new("rent"), Usd(650)).In(book));
        Outlook outlook = Outlook.Of(tried, 1).Value!;

        Assert.Equal((Usd(900), Usd(650)), (outlook.Paydays[0].Income, outlook.Paydays[0].Bills));
        Assert.Same(book.Ledger, tried.Ledger);
    }

    /// <summary>Played forward by hand, week by week and pot by pot, with the same ends.</summary>
    [Fact]
    public void Of_AnyHousehold_EqualsTheRoutinePlayedForward() => SomeHome.Sample(
        home =>
        {
            const int count = 8;
            Outlook outlook = Outlook.Of(Book.Begin(home), count).Value!;
            Book book = Book.Begin(home);
            foreach (OutlookPayday expected in outlook.Paydays)
            {
                RoutinePlan plan = Routine.Plan(book, new RoutineDraft(Routine.Next(book).Value)).Value!;
                Result<Book> closed = Closing.Of(plan);
                Assert.Equal(expected.Faults.IsEmpty, closed.Ok);
                book = closed.Ok ? Lived(closed.Value, plan.Period) : book;

                Assert.Equal(expected.Period, plan.Period);
                Assert.Equal(
                    (expected.Income, expected.ToOverdraft, expected.Bills, expected.Minimums, expected.Pots, expected.Surplus),
                    (plan.Income.Own, plan.Income.Overdraft.Amount, plan.Bills.Total, plan.Debts.Total, plan.Pots.Total, plan.Surplus.Before));
                Assert.Equal(expected.Overdrawn, book.Ledger.Balances.Overdrawn);
                Assert.Equal((expected.AccountAfter, expected.CashAfter), (book.Ledger.Balances.In(Place.Account), book.Ledger.Balances.In(Place.Cash)));
            }

            Assert.True(outlook.Paydays.Length == count || outlook.IsCutShort);
            Assert.Empty(LedgerCheck.Faults(book.Ledger.Balances));
        },
        iter: 300);

    // Fills are marked on their days, half of what is in a wallet is spent in the middle of each week, the rest by the end.
    private static Book Lived(Book book, PayPeriod period)
    {
        foreach (Pot pot in book.Household.Pots.Where(pot => pot.Kind is PotKind.Sinking sinking
            && sinking.By <= period.Last && PotMoney.InItsPlace(book.Ledger.Balances, pot.Id) >= sinking.TargetBy(sinking.By)
            && book.Ledger.Balances[LedgerEnd.SpentFrom(pot.Id)].IsZero).OrderBy(pot => ((PotKind.Sinking)pot.Kind).By))
        {
            book = Emptied(book, pot, ((PotKind.Sinking)pot.Kind).By);
        }

        foreach (FillPart part in FillPart.Of(book).Where(part => part.Marked is null && part.Moves.IsPositive && part.Key.Day <= period.Last))
        {
            book = WalletFills.Mark(book, part.Key, FillState.Done, part.Key.Day).Value!;
        }

        foreach (Pot pot in book.Household.Pots.Where(pot => pot.Kind is PotKind.Spending).Reverse())
        {
            book = Emptied(book, pot, period.Last);
        }

        return book;
    }

    private static Book Emptied(Book book, Pot pot, LocalDate day)
    {
        Money has = PotMoney.InItsPlace(book.Ledger.Balances, pot.Id);
        if (has.IsZero)
        {
            return book;
        }

        return pot.Place == Place.Account
            ? Purchasing.Enter(book, new PurchaseEntry(day, pot.Id, has, "all of it")).Value!
            : CountPlan.Of(book, new CountDraft(day).With(pot.Id, new CountEntry(Usd(0)))).Confirm().Value!;
    }

    private static Pot Pot(char letter, int amount, int kind, bool inCash, int target, int rank, LaterAmounts later)
    {
        Pot pot = inCash ? CashPot("Pot" + letter, amount, rank) : AccountPot("Pot" + letter, amount, rank);
        return kind switch
        {
            0 => pot with { Kind = new PotKind.Sinking(Usd(target * 5), Friday6March.PlusDays(target)) { Later = later } },
            1 => pot with { Kind = new PotKind.Reserve(Usd(target * 5), Usd(amount)) { Later = later } },
            2 => pot with { Kind = new PotKind.Ladder(Usd(5), (target / 20) + 1, LadderOrder.Falling) },
            3 => pot with { Kind = new PotKind.Spending(Usd(amount), FillPer.Month) { Later = later } },
            _ => pot with { Kind = (PotKind.Spending)pot.Kind with { Later = later } },
        };
    }
}
