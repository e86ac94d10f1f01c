using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>Changes where a surplus goes, by hand.</summary>
public static class Placing
{
    /// <summary>
    /// Places an amount on one target, in the place of what it has now. What is not left is taken from the other placements,
    /// the last first: of the proposal the buffer and the debts that come last in its order, then what was placed by hand
    /// longest ago.
    /// </summary>
    /// <param name="plan">The routine as it stands.</param>
    /// <param name="target">A debt, a pot, a bill or the buffer.</param>
    /// <param name="amount">Zero or more; zero takes the placement away.</param>
    /// <returns>The placements, together no more than the surplus; or the refusal, where the amount alone is more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is below zero.</exception>
    public static Result<ImmutableArray<Placement>> Set(RoutinePlan plan, MoveTarget target, Money amount)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfNegative(amount.MinorUnits, nameof(amount));
        Money surplus = plan.Surplus.Before.ClampToZero();
        if (amount > surplus)
        {
            return Result.Refused<ImmutableArray<Placement>>(new RoutineFault.MoreThanSurplus(surplus));
        }

        Money room = surplus - amount;
        var placements = ImmutableArray.CreateBuilder<Placement>();
        if (amount.IsPositive)
        {
            placements.Add(new Placement(target, amount));
        }

        foreach (Placement other in plan.Surplus.Placements.Where(placement => placement.Target != target))
        {
            Money stays = Money.Min(other.Amount, room);
            room -= stays;
            if (stays.IsPositive)
            {
                placements.Add(other with { Amount = stays });
            }
        }

        return Result.Of(placements.ToImmutable());
    }

    /// <summary>Places on one target what is left; where nothing is, the whole surplus.</summary>
    /// <param name="plan">The routine as it stands.</param>
    /// <param name="target">A debt, a pot, a bill or the buffer.</param>
    /// <param name="most">What it can take, such as what is owed; null for any amount. What it can't take stays where it is.</param>
    /// <returns>The placements, together no more than the surplus.</returns>
    public static ImmutableArray<Placement> Rest(RoutinePlan plan, MoveTarget target, Money? most)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Money placed = On(plan, target);
        Money all = plan.LeftToPlace.IsPositive ? placed + plan.LeftToPlace : plan.Surplus.Before.ClampToZero();
        return Set(plan, target, most is { } limit ? Money.Min(all, limit) : all).Value;
    }

    /// <summary>What can be placed on a debt: what is owed on it after its minimums, less interest whose day is still to come.</summary>
    public static Money MostOn(RoutinePlan plan, DebtId debtId)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return SurplusRules.BalanceAfter(plan.Debts, debtId);
    }

    /// <summary>What is placed on a target.</summary>
    public static Money On(RoutinePlan plan, MoveTarget target)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return On(plan.Surplus.Placements, target, plan.Surplus.Before.Currency);
    }

    /// <summary>What is placed on a target.</summary>
    public static Money On(ImmutableArray<Placement> placements, MoveTarget target, Currency currency) =>
        Money.Sum(placements.Where(placement => placement.Target == target).Select(placement => placement.Amount), currency);

    /// <summary>What each other placement gave up for a target, the most first; nothing where it got what was left.</summary>
    /// <param name="before">The routine before.</param>
    /// <param name="after">The placements since.</param>
    /// <param name="target">The target that money was placed on.</param>
    public static ImmutableArray<Placement> GaveWay(RoutinePlan before, ImmutableArray<Placement> after, MoveTarget target)
    {
        ArgumentNullException.ThrowIfNull(before);
        return
        [
            .. before.Surplus.Placements
                .Where(placement => placement.Target != target)
                .Select(placement => placement with { Amount = placement.Amount - On(after, placement.Target, placement.Amount.Currency) })
                .Where(placement => placement.Amount.IsPositive)
                .OrderByDescending(placement => placement.Amount),
        ];
    }
}
