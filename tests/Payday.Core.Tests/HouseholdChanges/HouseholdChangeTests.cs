using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.HouseholdChanges;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.HouseholdChanges;

public class HouseholdChangeTests
{
    private static readonly Household Home = Bare with
    {
        Bills = [Bill("Rent", 400, new(2026, 3, 25))],
        Debts = [Debt("Card", 300, 0.1m, 20, due: 25)],
        Pots = [CashPot("Food", 33.40m), AccountPot("Gifts", 10)],
        Opening = Bare.Opening with { Pots = PotSums(("gifts", 40)), SetAside = BillSums(("rent", 100)) },
    };

    [Fact]
    public void Begin_OpeningBalances_AddUpToTheAccount()
    {
        Balances balances = Book.Begin(Home).Ledger.Balances;

        Assert.Equal(Usd(500), balances.In(Place.Account));
        Assert.Equal(Usd(360), balances[LedgerEnd.InAccount(Purpose.Buffer)]);
        Assert.Equal(Usd(300), balances.OwedOn(new DebtId("card")));
        Assert.Empty(LedgerCheck.Faults(balances, NumberStyle.Plain));
    }

    [Fact]
    public void Of_SameHousehold_WritesNothing() =>
        Assert.Empty(HouseholdChange.Of(Book.Begin(Home), Home with { Name = "Renamed" }).Movements);

    [Fact]
    public void Of_OpeningChangedBeforeAnyClosing_IsWrittenAnew()
    {
        HouseholdChange change = HouseholdChange.Of(Book.Begin(Home), Home with { Opening = Home.Opening with { Account = Usd(800) } });

        Assert.Equal(Usd(800), change.Book.Ledger.Balances.In(Place.Account));
        Assert.Equal(Usd(300), change.Book.Ledger.Balances.OwedOn(new DebtId("card")));
        Assert.Empty(HouseholdChange.Of(change.Book, change.Book.Household).Movements);
    }

    [Fact]
    public void Of_HistoryWouldChange_NamesEverythingAndChangesNothing()
    {
        Book closed = Closed();
        Household next = Home with { Start = new LocalDate(2026, 1, 1), Bills = [], Pots = [], Opening = Bare.Opening };

        HouseholdChange change = HouseholdChange.Of(closed, next);

        Assert.Same(closed, change.Book);
        Assert.Equal(5, change.Refusals.Length);
        Assert.Contains(change.Refusals, refusal => refusal.StartsWith("The household started on 2026-03-06", StringComparison.Ordinal));
        Assert.Contains(change.Refusals, refusal => refusal.Contains("Food (id food) has 66.80", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_AnotherCurrency_IsRefused()
    {
        Household euros = Home with { Settings = Home.Settings with { Currency = Currency.FromCode("EUR") } };

        Assert.StartsWith("The ledger is in USD, the file in EUR.", Assert.Single(HouseholdChange.Of(Book.Begin(Home), euros).Refusals), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NewDebtAfterAClosing_ComesWithWhatIsOwed()
    {
        HouseholdChange change = HouseholdChange.Of(Closed(), Home with { Debts = Home.Debts.Add(Debt("Loan", 900, 0.05m, 50, due: 3)) });

        Assert.Equal(Usd(900), change.Book.Ledger.Balances.OwedOn(new DebtId("loan")));
        Assert.Single(change.Movements);
    }

    [Fact]
    public void Of_ThingsOfADraftAreGone_KeepsTheRestOfIt()
    {
        var draft = new RoutineDraft(Friday6March)
        {
            Fills = PotSums(("gifts", 3), ("food", 10)),
            Placements = [new Placement(MoveTarget.Debt(new DebtId("card")), Usd(5)), new Placement(MoveTarget.Buffer, Usd(1))],
        };

        Book after = HouseholdChange.Of(Book.Begin(Home) with { Draft = draft }, Home with { Debts = [], Pots = [Home.Pots[0]], Opening = Bare.Opening }).Book;

        Assert.Equal(PotSums(("food", 10)), after.Draft!.Fills);
        Assert.Equal([new Placement(MoveTarget.Buffer, Usd(1))], after.Draft.Placements!.Value);
    }

    [Fact]
    public void Of_DraftIsNoPaydayAnyMore_Goes()
    {
        Household later = Home with { Sources = [Home.Sources[0] with { Schedule = new Core.Calendar.Schedule.EveryWeeks(2, new(2026, 3, 9)) }] };

        Assert.Null(HouseholdChange.Of(Book.Begin(Home) with { Draft = new RoutineDraft(Friday6March) }, later).Book.Draft);
    }

    private static Book Closed()
    {
        RoutineDraft draft = new(Friday6March) { Placements = [new Placement(MoveTarget.Buffer, Usd(0.01m))] };
        RoutinePlan plan = Routine.Plan(Book.Begin(Home), draft).Value!;
        return Closing.Of(Routine.Plan(
            Book.Begin(Home), draft with { Placements = [new Placement(MoveTarget.Buffer, plan.Surplus.Before)] }).Value!).Value!.Book;
    }
}
