using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>A debt in two courses that it may take.</summary>
/// <param name="Before">In the one that it is held against.</param>
/// <param name="After">In the other.</param>
/// <param name="Because">The other debt whose money makes most of the difference; null where it costs the same and ends in the same month, or no such money comes differently.</param>
public sealed record DebtChange(ProjectedDebt Before, ProjectedDebt After, RollOnChange? Because)
{
    /// <summary>How many months sooner it ends, below zero for later; null where it never ends in one of them.</summary>
    /// <remarks>What is paid off at once ends before the first month: one sooner than by its first minimum.</remarks>
    public int? MonthsSooner => Before.PaidOff is { } before && After.PaidOff is { } after ? Place(before, Before.AtOnce) - Place(after, After.AtOnce) : null;

    /// <summary>Whether it ends in the second course alone.</summary>
    public bool EndsNow => Before.PaidOff is null && After.PaidOff is not null;

    /// <summary>Whether it ends in the first course alone.</summary>
    public bool EndsNoMore => Before.PaidOff is not null && After.PaidOff is null;

    /// <summary>How much less interest it costs, below zero for more; null where it never ends in one of them.</summary>
    public Money? Saved => Before.Interest is { } before && After.Interest is { } after ? before - after : null;

    /// <summary>All debts of two courses of the same debts.</summary>
    /// <exception cref="ArgumentException">The courses are of other debts.</exception>
    public static ImmutableArray<DebtChange> All(DebtProjection before, DebtProjection after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        if (!before.Debts.Select(debt => debt.Id).SequenceEqual(after.Debts.Select(debt => debt.Id)))
        {
            throw new ArgumentException("The courses are of other debts.", nameof(after));
        }

        ILookup<DebtId, RollOn> was = before.RollOns.ToLookup(one => one.To);
        ILookup<DebtId, RollOn> now = after.RollOns.ToLookup(one => one.To);
        return
        [
            .. before.Debts.Zip(after.Debts).Select(pair =>
            {
                var change = new DebtChange(pair.First, pair.Second, null);

                // Within the same month it is the interest that says which way it went.
                bool later = change.EndsNoMore || change.MonthsSooner < 0 || (change.MonthsSooner == 0 && change.Saved is { IsNegative: true });
                return later || change.EndsNow || change.MonthsSooner > 0 || (change.MonthsSooner == 0 && change.Saved is { IsPositive: true })
                    ? change with { Because = Why(was[pair.First.Id], now[pair.First.Id], later) }
                    : change;
            }),
        ];
    }

    // Of several the one that brings most: to a debt that ends later what it lacks, to one that ends sooner what it has now.
    private static RollOnChange? Why(IEnumerable<RollOn> before, IEnumerable<RollOn> after, bool later)
    {
        Dictionary<DebtId, RollOn> was = before.ToDictionary(one => one.From);
        Dictionary<DebtId, RollOn> now = after.ToDictionary(one => one.From);
        (Dictionary<DebtId, RollOn> less, Dictionary<DebtId, RollOn> more) = later ? (now, was) : (was, now);
        return more.Values
            .Select(one => (One: one, Other: less.GetValueOrDefault(one.From)))
            .Where(pair => pair.Other is null || pair.Other.First > pair.One.First || pair.Other.Total < pair.One.Total)
            .OrderBy(pair => pair.Other is null ? 0 : pair.Other.First > pair.One.First ? 1 : 2)
            .ThenByDescending(pair => pair.One.Total)
            .Select(pair => new RollOnChange(pair.One.From, (pair.Other is null, pair.Other?.First > pair.One.First) switch
            {
                (true, _) => later ? RollOnComes.NoMore : RollOnComes.AsWell,
                (_, true) => later ? RollOnComes.Later : RollOnComes.Sooner,
                _ => later ? RollOnComes.Less : RollOnComes.More,
            }))
            .FirstOrDefault();
    }

    private static int Place(YearMonth month, bool atOnce) => (month.Year * 12) + month.Month - (atOnce ? 1 : 0);
}
