using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>When the account holds all of a bill's next due, by the set-asides of the paydays to come as they are planned on each.</summary>
/// <param name="BillId">A bill with a due after this period.</param>
/// <param name="Due">The day of it.</param>
/// <param name="Amount">What is due then.</param>
/// <param name="Lacks">What of it isn't set aside once today's set-asides are, before anything is placed; zero or more.</param>
/// <param name="Without">The payday on which it is whole without what is placed today; null where the pay expected isn't enough by then.</param>
/// <param name="With">The payday with it.</param>
/// <remarks>
/// Set-asides are planned for all bills together and stay even, so that what is placed on one makes later ones smaller; it is whole sooner as a rule only where
/// nothing lacks any more.
/// </remarks>
public sealed record BillCourse(BillId BillId, LocalDate Due, Money Amount, Money Lacks, LocalDate? Without, LocalDate? With)
{
    /// <summary>All bills of a routine that are due later, with what is placed in it.</summary>
    /// <returns>By the day of their due.</returns>
    public static ImmutableArray<BillCourse> Of(RoutinePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Of(plan, plan.Surplus.Placements);
    }

    /// <summary>All bills of a routine that are due later.</summary>
    /// <param name="plan">The routine.</param>
    /// <param name="placements">What is placed on them.</param>
    /// <returns>By the day of their due.</returns>
    public static ImmutableArray<BillCourse> Of(RoutinePlan plan, ImmutableArray<Placement> placements)
    {
        ArgumentNullException.ThrowIfNull(plan);
        SetAsideLine[] lines = [.. plan.Bills.ByNextDue.Where(line => line.NextDue is not null)];
        if (lines.Length == 0)
        {
            return [];
        }

        SetAsideParts parts = SetAsideParts.Of(plan.Bills);
        var run = new SetAsideRun(plan);
        ImmutableDictionary<BillId, Money> holds = plan.Bills.SetAsides.ToImmutableDictionary(
            line => line.BillId, line => parts.Later(line.BillId).Held + parts.Later(line.BillId).SetAside);
        ImmutableDictionary<BillId, Money> placed = holds.SetItems(placements.Where(placement => placement.Target is MoveTarget.ToBill to && holds.ContainsKey(to.Id))
            .Select(placement => ((MoveTarget.ToBill)placement.Target).Id)
            .Distinct()
            .Select(id => KeyValuePair.Create(id, holds[id] + Placing.On(placements, MoveTarget.Bill(id), holds[id].Currency))));
        ImmutableDictionary<BillId, LocalDate> without = run.Whole(holds);
        ImmutableDictionary<BillId, LocalDate> with = placed == holds ? without : run.Whole(placed);
        return
        [
            .. lines.Select(line => new BillCourse(
                line.BillId,
                line.NextDue!.Value,
                line.NextAmount,
                (line.NextAmount - holds[line.BillId]).ClampToZero(),
                without.TryGetValue(line.BillId, out LocalDate before) ? before : null,
                with.TryGetValue(line.BillId, out LocalDate after) ? after : null)),
        ];
    }
}
