using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Pots;

/// <summary>Divides a cash pot's fill over the weeks of a pay period.</summary>
public static class WeekSplit
{
    /// <summary>
    /// Equal whole units each week, the spare ones one each from the first week on; what is less than a unit
    /// is kept back.
    /// </summary>
    /// <param name="fill">Zero or more.</param>
    /// <param name="weeks">The fill days of the period, one or more.</param>
    /// <param name="unit">The smallest note the pot uses, above zero.</param>
    /// <returns>Shares in whole units that, with what is kept back, add up to the fill.</returns>
    /// <remarks>Source of the rule: common practice, no source; 70 over 4 weeks in tens is 20, 20, 20, 10.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The fill, the weeks or the unit is out of its range.</exception>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static WeekShares Split(Money fill, int weeks, Money unit)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fill.MinorUnits, nameof(fill));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(weeks);
        return new(
            [.. Enumerable.Range(0, weeks).Select(week => LevelShares.Share(fill, weeks, week, unit))],
            fill - fill.FloorTo(unit));
    }

    /// <summary>Whole units by what each week is meant to have, which may change from one to the next; what is less than a unit is kept back.</summary>
    /// <param name="fill">Zero or more.</param>
    /// <param name="weeks">What each week is meant to have, zero or more; one or more weeks.</param>
    /// <param name="unit">The smallest note the pot uses, above zero.</param>
    /// <remarks>
    /// Where all are meant to have the same it is the split above. Else each week's share is its quota of the units rounded
    /// down or up (<see cref="Money.Allocate"/>): 50 then 60, twice each, of 220 in tens is just that.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The fill, the weeks or the unit is out of its range.</exception>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static WeekShares Split(Money fill, ImmutableArray<Money> weeks, Money unit)
    {
        if (weeks.Distinct().Count() <= 1)
        {
            return Split(fill, weeks.Length, unit);
        }

        ArgumentOutOfRangeException.ThrowIfNegative(fill.MinorUnits, nameof(fill));
        Money units = Money.FromMinorUnits(fill.FloorTo(unit).MinorUnits / unit.MinorUnits, fill.Currency);
        return new(
            [.. units.Allocate([.. weeks.Select(week => week.MinorUnits)]).Select(share => unit * share.MinorUnits)],
            fill - fill.FloorTo(unit));
    }
}

/// <summary>A fill, week by week.</summary>
/// <param name="Shares">What each week gets, in whole units.</param>
/// <param name="KeptBack">Less than a unit: it stays in the account for the same pot and joins its next fill.</param>
public readonly record struct WeekShares(ImmutableArray<Money> Shares, Money KeptBack);
