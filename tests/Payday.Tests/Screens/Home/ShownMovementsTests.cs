using NodaTime;
using Payday.Commands;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Screens.Reviews;

namespace Payday.Tests.Screens.Home;

public class ShownMovementsTests
{
    private static readonly Book Demo = Book.Begin(DemoCommand.Household());

    [Fact]
    public void Dates_OfOneYear_GoWithoutIt() => Assert.Equal("5 Mar", new ShownMovements(Demo, new MovementFilter()).Cells(0)[1]);

    [Fact]
    public void Dates_OfSeveralYears_HaveIt()
    {
        Movement first = Demo.Ledger.Movements[0];
        Book later = Demo with { Ledger = Demo.Ledger.Add([first with { Date = new LocalDate(2027, 1, 9) }]) };
        var shown = new ShownMovements(later, new MovementFilter());

        Assert.Equal("9 Jan 2027", shown.Cells(0)[1]);
        Assert.Equal("5 Mar 2026", shown.Cells(1)[1]);
        Assert.True(shown.IsOf(later, new MovementFilter()));
        Assert.False(shown.IsOf(Demo, new MovementFilter()));
    }

    [Fact]
    public void Widest_IsNoNarrowerThanAnyCell()
    {
        var shown = new ShownMovements(Demo, new MovementFilter());
        Assert.All(
            Enumerable.Range(0, shown.Movements.Length).Select(shown.Cells),
            cells => Assert.All(cells.Zip(shown.Widest), pair => Assert.True(pair.First.Length <= pair.Second.Length, pair.First)));
        Assert.Equal(Money.FromMinorUnits(630_288, Demo.Household.Currency).ToString(Demo.Household.Settings.Numbers), shown.Widest[4]);
    }
}
