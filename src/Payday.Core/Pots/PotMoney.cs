using Payday.Core.Amounts;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Pots;

/// <summary>What a pot has, over all the ends of the ledger that hold money for it.</summary>
public static class PotMoney
{
    /// <summary>In its place, and kept back for its next fill.</summary>
    public static Money HasNow(Balances balances, PotId potId)
    {
        ArgumentNullException.ThrowIfNull(balances);
        return InItsPlace(balances, potId) + balances[LedgerEnd.InAccount(Purpose.KeptBack(potId))] + InLooseNotes(balances, potId);
    }

    /// <summary>In the account for an account pot; at home and in the wallet for a cash pot.</summary>
    public static Money InItsPlace(Balances balances, PotId potId)
    {
        ArgumentNullException.ThrowIfNull(balances);
        return balances[LedgerEnd.InAccount(Purpose.Pot(potId))] + InCash(balances, potId);
    }

    /// <summary>In cash: at home and in the wallet, without what it owes back.</summary>
    public static Money InCash(Balances balances, PotId potId)
    {
        ArgumentNullException.ThrowIfNull(balances);
        return balances[LedgerEnd.InCash(Purpose.Pot(potId))] + balances[LedgerEnd.InCash(Purpose.Wallet(potId))];
    }

    /// <summary>In loose notes at home that no pot could take, kept back for its next fill.</summary>
    public static Money InLooseNotes(Balances balances, PotId potId)
    {
        ArgumentNullException.ThrowIfNull(balances);
        return balances[LedgerEnd.InCash(Purpose.KeptBack(potId))];
    }

    /// <summary>In cash, put apart for the account.</summary>
    public static Money OwedBack(Balances balances, PotId potId)
    {
        ArgumentNullException.ThrowIfNull(balances);
        return balances[LedgerEnd.InCash(Purpose.OwedBack(potId))];
    }
}
