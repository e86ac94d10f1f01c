using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Status;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Status;

public class GlanceTests
{
    // What a spending pot began with is no part of a fill: until a payday puts something in, it is held against nothing.
    [Fact]
    public void Pots_BeforeAnyFill_AreOfNothing()
    {
        PotGlance[] pots = [.. Spending(Book.Begin(House))];

        Assert.NotEmpty(pots);
        Assert.All(pots, pot => Assert.True(pot.Whole.IsZero, $"{pot}"));
    }

    // Of what the payday put in, loose notes or not.
    [Fact]
    public void Pots_AfterAPayday_AreFullOfWhatItPutIn()
    {
        Book begun = Book.Begin(House with { Opening = House.Opening with { LooseNotes = Notes((5, 6), (10, 2)) } });
        Book closed = Close(begun, Friday6March);

        Assert.NotEmpty(Spending(closed));
        Assert.All(Spending(closed), pot => Assert.Equal(pot.Has, pot.Whole));
        Assert.All(Spending(closed), pot => Assert.Equal(100, pot.Percent));
    }

    [Fact]
    public void Pots_WithATarget_AreOfIt()
    {
        Book book = Book.Begin(House);

        Assert.All(PotGlance.Of(book, Friday6March).Where(pot => pot.HasTarget), pot =>
        {
            Assert.True(pot.Whole.IsPositive);
            Assert.Equal((int)(pot.Has.MinorUnits * 100 / pot.Whole.MinorUnits), pot.Percent);
        });
    }

    [Theory]
    [InlineData(100, 0)]
    [InlineData(75, 25)]
    [InlineData(1, 99)]
    [InlineData(0, 100)]
    [InlineData(130, 0)] // more was borrowed
    public void Debt_OwingSoMuchOfAHundred_IsPaidByTheRest(decimal owed, int percent)
    {
        var debt = new DebtGlance(House.Debts[0], Usd(owed), Usd(100));

        Assert.Equal((percent, Usd(Math.Max(0, 100 - owed))), (debt.Percent, debt.Paid));
    }

    [Fact]
    public void Debts_OfABook_BeginWithNothingPaid() =>
        Assert.All(DebtGlance.Of(Book.Begin(House)), debt => Assert.Equal((0, debt.Debt.Opening), (debt.Percent, debt.Balance)));

    // What is set aside is all that the account has for bills and debts, each with the due that it is for.
    [Fact]
    public void SetAside_AfterAPayday_IsAllThatTheAccountHasForBillsAndDebts()
    {
        Book closed = Close(Book.Begin(House), Friday6March);

        ImmutableArray<SetAsideGlance> aside = SetAsideGlance.Of(closed, Friday6March);

        Assert.NotEmpty(aside);
        Assert.Equal(
            closed.Ledger.Balances.PurposesIn(Place.Account).Where(line => line.Purpose.BillId is not null || line.Purpose.DebtId is not null).Sum(line => line.Amount.MinorUnits),
            aside.Sum(line => line.Has.MinorUnits));
        Assert.Equal(aside.OrderBy(line => line.Next?.Date ?? LocalDate.MaxIsoValue), aside);
        Assert.All(aside, line => Assert.Equal(
            ComingDues.Waiting(closed, Friday6March, Friday6March.PlusYears(1)).FirstOrDefault(due => due.Owner == line.Owner), line.Next));
    }

    [Fact]
    public void SetAside_OfABookThatBegins_IsNothing() => Assert.Empty(SetAsideGlance.Of(Book.Begin(House), Friday6March));

    private static IEnumerable<PotGlance> Spending(Book book) => PotGlance.Of(book, Friday6March).Where(pot => !pot.HasTarget);
}
