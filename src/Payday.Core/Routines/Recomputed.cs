using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Households;

namespace Payday.Core.Routines;

/// <summary>A routine after a further decision.</summary>
/// <param name="Plan">All seven steps as they stand.</param>
/// <param name="Dropped">What was decided in later steps and no longer fits.</param>
public sealed record Recomputed(RoutinePlan Plan, ImmutableArray<Dropped> Dropped)
{
    /// <summary>Takes a decision, and drops of those in later steps what no longer makes sense.</summary>
    /// <param name="before">The routine before.</param>
    /// <param name="draft">Its decisions with the new one.</param>
    /// <remarks>
    /// Notes chosen by hand are for a share: where an earlier step changed the share they are proposed anew. Placements
    /// are of an amount: where less is left than was placed, the proposal takes their place. What was filled, paid or
    /// came in stays as decided. A decision in the same step is never undone by this.
    /// </remarks>
    public static Result<Recomputed> After(RoutinePlan before, RoutineDraft draft)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(draft);
        Result<RoutinePlan> plan = Routine.Plan(before.Book, draft);
        if (!plan.Ok)
        {
            return Result.Refused<Recomputed>(plan.Faults);
        }

        var dropped = ImmutableArray.CreateBuilder<Dropped>();
        RoutineDraft fitting = WithoutOverplaced(before, plan.Value, dropped);
        RoutinePlan placed = fitting == draft ? plan.Value : Routine.Plan(before.Book, fitting).Value!;
        RoutineDraft noted = WithoutStaleNotes(before, placed, dropped);
        return Result.Of(new Recomputed((noted == fitting ? placed : Routine.Plan(before.Book, noted).Value!).Foreseen(), dropped.ToImmutable()));
    }

    private static RoutineDraft WithoutOverplaced(RoutinePlan before, RoutinePlan after, ImmutableArray<Dropped>.Builder dropped)
    {
        bool isStale = before.Draft.Placements == after.Draft.Placements
            && after.Draft.Placements is not null
            && before.Surplus.Before != after.Surplus.Before
            && after.LeftToPlace.IsNegative;
        if (!isStale)
        {
            return after.Draft;
        }

        dropped.Add(new Dropped.Placements(after.Surplus.Placed, after.Surplus.Before.ClampToZero()));
        return after.Draft with { Placements = null };
    }

    private static RoutineDraft WithoutStaleNotes(RoutinePlan before, RoutinePlan after, ImmutableArray<Dropped>.Builder dropped)
    {
        if (after.Draft.Notes.IsEmpty)
        {
            return after.Draft;
        }

        Dictionary<PartKey, Money> was = Shares(before);
        Dictionary<PartKey, Money> now = Shares(after);
        PartKey[] stale =
        [
            .. after.Draft.Notes.Keys.Where(part => before.Draft.Notes.ContainsKey(part)
                && (!now.TryGetValue(part, out Money share) || (was.TryGetValue(part, out Money old) && old != share))),
        ];
        if (stale.Length == 0)
        {
            return after.Draft;
        }

        Household household = after.Book.Household;
        dropped.Add(new Dropped.Notes([.. stale.Select(part => household.Pots.Single(pot => pot.Id == part.PotId).Name).Distinct()]));
        return after.Draft with { Notes = after.Draft.Notes.RemoveRange(stale) };
    }

    private static Dictionary<PartKey, Money> Shares(RoutinePlan plan) => plan.Withdrawal.Pots
        .SelectMany(row => row.Weeks.Select(week => (Key: new PartKey(row.Pot.Id, week.Week), week.Share)))
        .ToDictionary(part => part.Key, part => part.Share);
}
