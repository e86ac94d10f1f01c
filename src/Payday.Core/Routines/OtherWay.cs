using Payday.Core.Amounts;
using Payday.Core.Debts;

namespace Payday.Core.Routines;

/// <summary>The surplus as the household's other order would propose it.</summary>
/// <param name="Order">The other order.</param>
/// <param name="Course">The debts' course with its proposal.</param>
/// <param name="Costs">What it costs more in interest than what is placed now, below zero where less; null where the two leave different debts without an end.</param>
public sealed record OtherWay(DebtOrder Order, DebtProjection Course, Money? Costs)
{
    /// <summary>Works it out.</summary>
    public static OtherWay Of(SurplusStep surplus)
    {
        ArgumentNullException.ThrowIfNull(surplus);
        DebtOrder other = Than(surplus.Order);
        DebtProjection course = Proposed(surplus, other);
        return new OtherWay(other, course, Costs: More(surplus.With, course));
    }

    /// <summary>What the proposal in the household's own order costs more than what is placed now, below zero where less; null where the two leave different debts without an end.</summary>
    public static Money? ProposalCosts(SurplusStep surplus)
    {
        ArgumentNullException.ThrowIfNull(surplus);
        return More(surplus.With, Proposed(surplus, surplus.Order));
    }

    /// <summary>The order that isn't this one.</summary>
    public static DebtOrder Than(DebtOrder order) => order == DebtOrder.SmallestBalance ? DebtOrder.HighestRate : DebtOrder.SmallestBalance;

    private static DebtProjection Proposed(SurplusStep surplus, DebtOrder order) =>
        SurplusRules.Course(surplus.Outlook, SurplusRules.Proposal(surplus.Owed, surplus.Before, order), order, surplus.Before.Currency);

    private static Money? More(DebtProjection now, DebtProjection then) => now.Never.SequenceEqual(then.Never) ? then.Interest - now.Interest : null;
}
