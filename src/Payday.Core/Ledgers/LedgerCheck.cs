using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>What must always hold of a ledger (design, section 4).</summary>
public static class LedgerCheck
{
    /// <summary>Everything that doesn't hold, a sentence each; none in a sound ledger.</summary>
    /// <param name="balances">The balances to look at.</param>
    /// <param name="style">How numbers are written in the sentences.</param>
    public static IEnumerable<string> Faults(Balances balances, NumberStyle style) => Damage(balances, style).Concat(Overdrawn(balances, style));

    /// <summary>What only lost or changed movements can bring about: such a ledger can't be worked with.</summary>
    /// <inheritdoc cref="Faults"/>
    public static IEnumerable<string> Damage(Balances balances, NumberStyle style)
    {
        ArgumentNullException.ThrowIfNull(balances);
        foreach (Place place in new[] { Place.Account, Place.Cash })
        {
            Money purposes = Money.Sum(balances.PurposesIn(place).Select(purpose => purpose.Amount), balances.Currency);
            if (purposes != balances.In(place))
            {
                yield return $"The purposes in {Word(place)} add up to {purposes.ToString(style)}, but {balances.In(place).ToString(style)} is there.";
            }
        }

        Money total = Money.Sum(balances.All.Select(pair => pair.Value), balances.Currency);
        if (!total.IsZero)
        {
            yield return $"All ends of the ledger should add up to zero, but come to {total.ToString(style)}.";
        }

        foreach ((Purpose purpose, Money amount) in balances.PurposesIn(Place.Cash).Where(purpose => purpose.Amount.IsNegative))
        {
            yield return $"{LedgerKeys.Of(Place.Cash, purpose)} is {amount.ToString(style)}: cash can't be below zero.";
        }
    }

    /// <summary>What has less than nothing in the account: an earlier version let it come to that, and the next payday makes it good.</summary>
    /// <inheritdoc cref="Faults"/>
    public static IEnumerable<string> Overdrawn(Balances balances, NumberStyle style)
    {
        ArgumentNullException.ThrowIfNull(balances);
        foreach ((Purpose purpose, Money amount) in balances.PurposesIn(Place.Account).Where(purpose => purpose.Amount.IsNegative && !MayBeNegative(LedgerEnd.InAccount(purpose.Purpose))))
        {
            yield return $"{LedgerKeys.Of(Place.Account, purpose)} is {amount.ToString(style)}: more has left it than was there.";
        }
    }

    /// <summary>Whether an end may be below zero.</summary>
    /// <remarks>
    /// Nothing that money is for may, but what is owed back to the account. What is left to place may for a while, where an
    /// income was undone whose money had gone on: the next payday makes up for it first.
    /// </remarks>
    internal static bool MayBeNegative(LedgerEnd end) =>
        end is not LedgerEnd.Held { Place: var place, Purpose.Kind: var kind }
        || (place == Place.Account && kind is PurposeKind.OwedBack or PurposeKind.LeftToPlace);

    private static string Word(Place place) => place == Place.Account ? "the account" : "cash";
}
