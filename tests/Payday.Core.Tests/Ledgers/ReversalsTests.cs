using NodaTime;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Ledgers;

public class ReversalsTests
{
    private static readonly LocalDate Day = new(2026, 3, 6);

    [Fact]
    public void With_AReverse_NeitherOfTheTwoStands()
    {
        Movement first = Spent(1);
        Movement second = Spent(2);
        Movement back = Spent(3) with { Reverses = 1 };
        Reversals reversals = Reversals.None.With([first, second]).With([back]);

        Assert.False(reversals.IsEmpty);
        Assert.Equal([false, true, false], new[] { first, second, back }.Select(reversals.Stands));
        Assert.Equal((3, null, null), (reversals.By(1), reversals.By(2), reversals.By(3)));
    }

    [Fact]
    public void With_NothingUndone_IsTheSame() => Assert.Same(Reversals.None, Reversals.None.With([Spent(1), Spent(2)]));

    // Kept up from an addition to the next or read at once: the ledger says the same of what stands at an end.
    [Fact]
    public void Of_UndoneInTheAdditionItself_IsAsReadAtOnce()
    {
        LedgerEnd buffer = LedgerEnd.InAccount(Purpose.Buffer);
        Ledger ledger = Ledger.Empty(Dollars).Add([new Movement(0, Day, LedgerEnd.Opening, buffer, Usd(9), "start")]);
        Assert.Single(ledger.Of(buffer));
        Ledger after = ledger.Add([Spent(0), Spent(0)]);
        after = after.Add([.. after.Reverse([2], Day, "wrong").Value, Spent(0)]);

        Assert.Equal(Ledger.Of(Dollars, [.. after.Movements]).Of(buffer), after.Of(buffer));
        Assert.Equal([1L, 3L, 5L], after.Of(buffer).Select(movement => movement.Number));
    }

    private static Movement Spent(long number) =>
        new(number, Day, LedgerEnd.InAccount(Purpose.Buffer), LedgerEnd.SpentFrom(new PotId("food")), Usd(1), "spent");
}
