using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Pots;

public class PotMoneyTests
{
    private static readonly PotId Food = new("food");

    // A power of two each, so that no wrong sum looks right.
    [Fact]
    public void Sums_EachEnd_CountsWhereItShould()
    {
        Balances balances = Of(
            (LedgerEnd.InAccount(Purpose.Pot(Food)), 1), (LedgerEnd.InAccount(Purpose.KeptBack(Food)), 2), (LedgerEnd.InCash(Purpose.Pot(Food)), 4),
            (LedgerEnd.InCash(Purpose.Wallet(Food)), 8), (LedgerEnd.InCash(Purpose.KeptBack(Food)), 16), (LedgerEnd.InCash(Purpose.OwedBack(Food)), 32),
            (LedgerEnd.InAccount(Purpose.OwedBack(Food)), 64), (LedgerEnd.InAccount(Purpose.Pot(new PotId("fuel"))), 128));

        Assert.Equal(Usd(1 + 2 + 4 + 8 + 16), PotMoney.HasNow(balances, Food));
        Assert.Equal(Usd(1 + 4 + 8), PotMoney.InItsPlace(balances, Food));
        Assert.Equal(Usd(4 + 8), PotMoney.InCash(balances, Food));
        Assert.Equal(Usd(16), PotMoney.InLooseNotes(balances, Food));
        Assert.Equal(Usd(32), PotMoney.OwedBack(balances, Food));
    }

    private static Balances Of(params (LedgerEnd End, decimal Amount)[] ends) => Ledger.Empty(Usd(0).Currency).Add(
        ends.Select((one, i) => new Movement(i + 1, new(2026, 3, 6), LedgerEnd.Opening, one.End, Usd(one.Amount), "opening", null))).Balances;
}
