using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>When a pot that fills up is full, if each later payday puts in what its rule then asks for, and nothing is spent of it.</summary>
/// <param name="PotId">A sinking pot, a ladder or a reserve.</param>
/// <param name="Without">The payday without what is placed today; null where it takes more than three years or never comes.</param>
/// <param name="With">The payday with it.</param>
/// <param name="Lacks">What it lacks once today's fill is in, before anything is placed; zero or more.</param>
/// <param name="NextWithout">What the next payday puts in without it.</param>
/// <param name="NextWith">What it puts in with it.</param>
/// <remarks>
/// What is placed on a sinking pot comes off its later fills, which stay even: it is full sooner only where nothing is missing any more. A pot that asks what
/// becomes of it has no course.
/// </remarks>
public sealed record PotCourse(PotId PotId, LocalDate? Without, LocalDate? With, Money Lacks, Money NextWithout, Money NextWith)
{
    /// <summary>All pots of a routine that fill up, with what is placed in it.</summary>
    public static ImmutableArray<PotCourse> Of(RoutinePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Of(plan, plan.Surplus.Placements);
    }

    /// <summary>All pots of a routine that fill up.</summary>
    /// <param name="plan">The routine.</param>
    /// <param name="placements">What is placed on them.</param>
    public static ImmutableArray<PotCourse> Of(RoutinePlan plan, ImmutableArray<Placement> placements)
    {
        ArgumentNullException.ThrowIfNull(plan);
        PotRow[] filling = [.. plan.Pots.Rows.Where(row => row is { Sinking.Stage: SinkingStage.Saving } or { Pot.Kind: PotKind.Reserve or PotKind.Ladder })];
        if (filling.Length == 0)
        {
            return [];
        }

        var run = new PotRun(plan.Book, plan.Period.First);
        return [.. filling.Select(Course)];

        PotCourse Course(PotRow row)
        {
            Money placed = Money.Sum(
                placements.Where(placement => placement.Target == MoveTarget.Pot(row.Pot.Id)).Select(placement => placement.Amount), row.Fill.Currency);
            Money putIn = PotRun.PutInOutside(plan.Book.Ledger.Balances, row.Pot.Id);
            PotRunEnd without = run.On(row.Pot, row.Sinking?.By, row.HasNow + row.Fill, putIn);
            PotRunEnd with = placed.IsZero ? without : run.On(row.Pot, row.Sinking?.By, row.HasNow + row.Fill + placed, putIn);
            return new PotCourse(row.Pot.Id, without.Full, with.Full, PotRun.Lacks(row.Pot, row.Sinking?.By, row.HasNow + row.Fill, putIn, plan.Period.First), without.Next, with.Next);
        }
    }
}
