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
/// <param name="Without">The debts' course without the placements.</param>
/// <param name="With">The debts' course with them.</param>
/// <param name="Pots">When each pot that fills up is full, with them and without.</param>
public sealed record SurplusStep(
    Money Before,
    ImmutableArray<Placement> Placements,
    bool Changed,
    Money Placed,
    DebtProjection Without,
    DebtProjection With,
    ImmutableArray<PotCourse> Pots);
