using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Debts;

namespace Payday.Core.Routines;

/// <summary>Where the rest goes. Worked out by <see cref="SurplusRules"/>.</summary>
/// <param name="Before">What is left once bills, minimums and pots have theirs; below zero in a shortfall.</param>
/// <param name="Placements">Where it goes.</param>
/// <param name="Changed">Whether the person decided, or this is the proposal.</param>
/// <param name="Placed">The sum of the placements.</param>
public sealed record SurplusStep(Money Before, ImmutableArray<Placement> Placements, bool Changed, Money Placed)
{
    /// <summary>The debts' course without the placements. Worked out when it is first asked for, as the other one: closing and the outlook don't.</summary>
    public DebtProjection Without => field ??= SurplusRules.Course(Outlook, [], Order, Before.Currency);

    /// <summary>The debts' course with the placements.</summary>
    public DebtProjection With => field ??= SurplusRules.Course(Outlook, Placements, Order, Before.Currency);

    /// <summary>The debts as their courses begin.</summary>
    public required DebtOutlook Outlook { get; init; }

    /// <summary>The same, each with what today's money can pay on it as its balance.</summary>
    public required ImmutableArray<DebtState> Owed { get; init; }

    /// <summary>The household's order.</summary>
    public required DebtOrder Order { get; init; }

    /// <summary>What the two courses come to, beside each other.</summary>
    public ImmutableArray<DebtChange> Debts => field.IsDefault ? field = DebtChange.All(Without, With) : field;
}
