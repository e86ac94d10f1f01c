using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.HouseholdChanges;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
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
        Assert.Empty(LedgerCheck.Faults(balances));
    }

    [Fact]
    public void Of_SameHousehold_WritesNothing()
    {
        Book begun = Book.Begin(Home);

        Assert.Empty(HouseholdChange.Of(begun, Home with { Name = "Renamed" }).Value!.Ledger.Since(begun.Ledger));
    }

    [Fact]
    public void Of_OpeningChangedBeforeAnyClosing_IsWrittenAnew()
    {
        Book changed = HouseholdChange.Of(Book.Begin(Home), Home with { Opening = Home.Opening with { Account = Usd(800) } }).Value!;

        Assert.Equal(Usd(800), changed.Ledger.Balances.In(Place.Account));
        Assert.Equal(Usd(300), changed.Ledger.Balances.OwedOn(new DebtId("card")));
        Assert.Empty(HouseholdChange.Of(changed, changed.Household).Value!.Ledger.Since(changed.Ledger));
    }

    [Fact]
    public void Of_HistoryWouldChange_NamesEverythingAndGivesNoBook()
    {
        Book closed = Closed();
        Household next = Home with { Start = new LocalDate(2026, 1, 1), Bills = [], Pots = [], Opening = Bare.Opening };

        Result<Book> changed = HouseholdChange.Of(closed, next);

        Assert.Null(changed.Value);
        Assert.Equal(5, changed.Faults.Length);
        Assert.Contains(changed.Faults, refusal => refusal.InAFile().StartsWith("The household started on 2026-03-06", StringComparison.Ordinal));
        Assert.Contains(changed.Faults, refusal => refusal.InAFile().Contains("Food (id food) has 66.80", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_AnotherCurrency_IsRefused()
    {
        Household euros = Home with { Settings = Home.Settings with { Currency = Currency.FromCode("EUR") } };

        Assert.StartsWith("The ledger is in USD, the file in EUR.", Assert.Single(HouseholdChange.Of(Book.Begin(Home), euros).Faults).InAFile(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NewDebtAfterAClosing_ComesWithWhatIsOwed()
    {
        Book before = Closed();

        Book changed = HouseholdChange.Of(before, Home with { Debts = Home.Debts.Add(Debt("Loan", 900, 0.05m, 50, due: 3)) }).Value!;

        Assert.Equal(Usd(900), changed.Ledger.Balances.OwedOn(new DebtId("loan")));
        Assert.Single(changed.Ledger.Since(before.Ledger));
    }

    [Fact]
    public void Of_ThingsOfADraftAreGone_KeepsTheRestOfIt()
    {
        var draft = new RoutineDraft(Friday6March)
        {
            Fills = PotSums(("gifts", 3), ("food", 10)),
            Placements = [new Placement(MoveTarget.Debt(new DebtId("card")), Usd(5)), new Placement(MoveTarget.Buffer, Usd(1))],
        };

        Book after = HouseholdChange.Of(Book.Begin(Home) with { Draft = draft }, Home with { Debts = [], Pots = [Home.Pots[0]], Opening = Bare.Opening }).Value!;

        Assert.Equal(PotSums(("food", 10)), after.Draft!.Fills);
        Assert.Equal([new Placement(MoveTarget.Buffer, Usd(1))], after.Draft.Placements!.Value);
    }

    [Fact]
    public void Of_DraftIsNoPaydayAnyMore_Goes()
    {
        Household later = Home with { Sources = [Home.Sources[0] with { Schedule = new Core.Calendar.Schedule.EveryWeeks(2, new(2026, 3, 9)) }] };

        Assert.Null(HouseholdChange.Of(Book.Begin(Home) with { Draft = new RoutineDraft(Friday6March) }, later).Value!.Draft);
    }

    private static Book Closed()
    {
        RoutineDraft draft = new(Friday6March) { Placements = [new Placement(MoveTarget.Buffer, Usd(0.01m))] };
        RoutinePlan plan = Routine.Plan(Book.Begin(Home), draft).Value!;
        return Closing.Of(Routine.Plan(
            Book.Begin(Home), draft with { Placements = [new Placement(MoveTarget.Buffer, plan.Surplus.Before)] }).Value!).Value!;
    }
}
