using Payday.Core.Amounts;

namespace Payday.Core.Pots;

/// <summary>Shares an amount evenly in whole units.</summary>
internal static class LevelShares
{
    /// <summary>
    /// One share of an amount: equal whole units for each, the spare ones one each from the first on. What
    /// is less than a unit is in no share.
    /// </summary>
    /// <param name="amount">Zero or more.</param>
    /// <param name="shares">How many shares, one or more.</param>
    /// <param name="index">Which one, 0 for the first.</param>
    /// <param name="unit">Above zero.</param>
    public static Money Share(Money amount, int shares, int index, Money unit)
    {
        long units = amount.FloorTo(unit).MinorUnits / unit.MinorUnits;
        (long each, long spare) = Math.DivRem(units, shares);
        return unit * (index < spare ? each + 1 : each);
    }

    /// <summary>As <see cref="Share"/>, but the last share also has what is less than a unit: all add up.</summary>
    public static Money ExactShare(Money amount, int shares, int index, Money unit)
    {
        Money share = Share(amount, shares, index, unit);
        return index == shares - 1 ? share + (amount - amount.FloorTo(unit)) : share;
    }
}
