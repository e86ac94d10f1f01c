using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>What must always hold of a ledger (design, section 4).</summary>
public static class LedgerCheck
{
    /// <summary>Everything that doesn't hold; nothing in a sound ledger.</summary>
    /// <param name="balances">The balances to look at.</param>
    public static IEnumerable<LedgerFault> Faults(Balances balances) => Damage(balances).Concat(Overdrawn(balances));

    /// <summary>What only lost or changed movements can bring about: such a ledger can't be worked with.</summary>
    /// <inheritdoc cref="Faults"/>
    public static IEnumerable<LedgerFault> Damage(Balances balances)
    {
        ArgumentNullException.ThrowIfNull(balances);
        (Money account, Money cash, Money all) = balances.AddedUp();
        foreach ((Place place, Money purposes) in new[] { (Place.Account, account), (Place.Cash, cash) })
        {
            if (purposes != balances.In(place))
            {
                yield return new LedgerFault.PurposesDiffer(place, purposes, balances.In(place));
            }
        }

        if (!all.IsZero)
        {
            yield return new LedgerFault.NotBalanced(all);
        }

        foreach ((Purpose purpose, Money amount) in balances.NegativesIn(Place.Cash))
        {
            yield return new LedgerFault.CashBelowZero(LedgerEnd.InCash(purpose), amount);
        }
    }

    /// <summary>What has less than nothing in the account: an earlier version let it come to that, and the next payday makes it good.</summary>
    /// <inheritdoc cref="Faults"/>
    public static IEnumerable<LedgerFault> Overdrawn(Balances balances)
    {
        ArgumentNullException.ThrowIfNull(balances);
        foreach ((Purpose purpose, Money amount) in balances.NegativesIn(Place.Account).Where(purpose => !MayBeNegative(LedgerEnd.InAccount(purpose.Purpose))))
        {
            yield return new LedgerFault.Overdrawn(LedgerEnd.InAccount(purpose), amount);
        }
    }

    /// <summary>Whether an end may be below zero.</summary>
    /// <remarks>
    /// Nothing that money is for may, but what is owed back to the account; an overdraft is below zero by what it is. What is left to place may for a while, where an
    /// income was undone whose money had gone on: the next payday makes up for it first.
    /// </remarks>
    internal static bool MayBeNegative(LedgerEnd end) =>
        end is not LedgerEnd.At { Place: var place, Purpose.Kind: var kind }
        || (place == Place.Account && kind is PurposeKind.OwedBack or PurposeKind.LeftToPlace or PurposeKind.Overdraft);
}
