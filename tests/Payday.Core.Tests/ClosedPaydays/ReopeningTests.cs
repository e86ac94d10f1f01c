using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.ClosedPaydays;

public class ReopeningTests
{
    private static readonly LocalDate Today = new(2026, 3, 7);

    private static readonly Household Full = Bare with
    {
        Bills = [Bill("Rent", 610, Friday6March, essential: true)],
        Debts = [Debt("Card", 640, 0.1999m, 25, due: 15)],
        Pots = [CashPot("Food", 93.40m), AccountPot("Gifts", 12.50m)],
    };

    private static readonly Money Wage = Usd(1234.56m);

    [Fact]
    public void Of_LastClosed_IsAsIfItHadNeverBeenClosed()
    {
        Book before = Book.Begin(Full);
        Book closed = Close(before);

        Book reopened = Reopening.Of(closed, Today).Value!;

        Assert.Equal(before.Ledger.Balances.All.ToHashSet(), reopened.Ledger.Balances.All.ToHashSet());
        Assert.Empty(reopened.Closed);
        Assert.Equal(Friday6March, reopened.OpenFrom);
        Assert.Equal(Wage, reopened.Draft!.Incomes[new SourceId("wage")]);
        Assert.Equal(closed.LastClosed!.LastMovement - closed.LastClosed.FirstMovement + 1, reopened.Ledger.Since(closed.Ledger).Count());
        Assert.All(reopened.Ledger.Since(closed.Ledger), movement => Assert.Equal("payday of 6 Mar 2026 reopened", movement.Reason));
    }

    [Fact]
    public void Of_ClosedAgainWithoutAChange_WritesTheSame()
    {
        Book once = Close(Book.Begin(Full));
        Book again = Closing.Of(Plan(Reopening.Of(once, Today).Value!)).Value!;

        Assert.Equal(once.Ledger.Balances.All.ToHashSet(), again.Ledger.Balances.All.ToHashSet());
        Assert.Equal(MonthSummary.OfYear(once.Ledger, 2026).AsEnumerable(), MonthSummary.OfYear(again.Ledger, 2026));
    }

    [Fact]
    public void Of_NothingClosed_IsRefused() =>
        Assert.Equal("No payday has been closed yet, so there is none to reopen.", Reopening.Of(Book.Begin(Full), Today).Fault.Said());

    [Fact]
    public void Of_LaterMovement_IsRefusedUntilThatIsUndone()
    {
        Book closed = Close(Book.Begin(Full));
        Ledger spent = closed.Ledger.Add([new Movement(
            0, Today, LedgerEnd.InAccount(Purpose.Pot(new PotId("gifts"))), LedgerEnd.SpentFrom(new PotId("gifts")), Usd(3), "a card")]);
        int number = spent.Movements.Count;

        Assert.Equal(
            $"The payday of 6 Mar 2026 can't be reopened: ledger line {number} was written since and may depend on it; undo that first.",
            Reopening.Of(closed with { Ledger = spent }, Today).Fault.Said());
        Book undone = Undoing.Of(closed with { Ledger = spent }, number, Today, "typed twice").Value!;
        Assert.True(Reopening.Of(undone, Today).Ok);
    }

    [Fact]
    public void Of_MovementOfThePaydayUndoneBefore_UndoesTheRest()
    {
        Book before = Book.Begin(Full);
        Book closed = Close(before);
        Movement fill = closed.Ledger.Movements.Single(movement => movement.To == LedgerEnd.InAccount(Purpose.Pot(new PotId("gifts"))));
        Book undone = Undoing.Of(closed, fill.Number, Today, "not this time").Value!;

        Book reopened = Reopening.Of(undone, Today).Value!;

        Assert.Equal(before.Ledger.Balances.All.ToHashSet(), reopened.Ledger.Balances.All.ToHashSet());
    }

    [Fact]
    public void Of_LaterPaydayBegun_IsNamedAsDropped()
    {
        Book closed = Close(Book.Begin(Full));
        var begun = new RoutineDraft(new(2026, 3, 20));

        Assert.Null(Reopening.Drops(closed with { Draft = begun with { Step = RoutineStep.Pots } }));
        RoutineDraft decided = begun with { Incomes = SourceSums(("wage", 900)) };
        Assert.Equal(decided, Reopening.Drops(closed with { Draft = decided }));
    }

    private static Book Close(Book book) => Closing.Of(Plan(book with { Draft = new RoutineDraft(Friday6March) { Incomes = SourceSums().Add(new SourceId("wage"), Wage) } })).Value!;

    private static RoutinePlan Plan(Book book) => Routine.Plan(book, book.Draft!).Value!;
}
