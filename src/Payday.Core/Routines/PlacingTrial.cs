using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Debts;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>What it would do to place on one target what is left, or else the whole surplus (<see cref="Placing.Rest"/>).</summary>
/// <param name="Amount">What the target would have then.</param>
/// <param name="Placements">All placements then; those of the routine where nothing would change.</param>
/// <param name="Own">Of a debt its course without anything placed and with this; null for other targets.</param>
/// <param name="Debts">All debts as they are placed on now and with this.</param>
public sealed record PlacingTrial(Money Amount, ImmutableArray<Placement> Placements, DebtChange? Own, ImmutableArray<DebtChange> Debts)
{
    /// <summary>Tries it; nothing is decided.</summary>
    /// <param name="plan">The routine as it stands.</param>
    /// <param name="target">A debt, a pot, a bill or the buffer.</param>
    /// <param name="most">What it can take; null for any amount.</param>
    public static PlacingTrial Of(RoutinePlan plan, MoveTarget target, Money? most)
    {
        ArgumentNullException.ThrowIfNull(plan);
        SurplusStep surplus = plan.Surplus;
        ImmutableArray<Placement> placements = Placing.Rest(plan, target, most);
        DebtProjection course = SurplusRules.Course(surplus.Outlook, placements, surplus.Order, surplus.Before.Currency);
        return new PlacingTrial(
            Placing.On(placements, target, surplus.Before.Currency),
            placements,
            target is MoveTarget.ToDebt to ? DebtChange.All(surplus.Without, course).Single(debt => debt.After.Id == to.Id) : null,
            DebtChange.All(surplus.With, course));
    }
}
