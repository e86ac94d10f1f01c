using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Ids;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>When a pot that fills up is full, if each later payday puts in what this one's fill is.</summary>
/// <param name="PotId">A sinking pot or a reserve.</param>
/// <param name="Without">The payday without today's placements; null where it takes more than three years or never comes.</param>
/// <param name="With">The payday with them.</param>
/// <remarks>Common practice, no source: a placement comes once, a fill each time. A pot that asks what becomes of it has no course.</remarks>
public sealed record PotCourse(PotId PotId, LocalDate? Without, LocalDate? With)
{
    private const int MostYears = 3;

    internal static ImmutableArray<PotCourse> Of(RoutineFacts facts, PotsStep pots, ImmutableArray<Placement> placements)
    {
        (PotRow Row, Money Target)[] filling = [.. pots.Rows.Where(row => row.Sinking?.Stage is null or SinkingStage.Saving).SelectMany(row => Target(row.Pot.Kind) is { } target ? new[] { (row, target) } : [])];
        if (filling.Length == 0)
        {
            return [];
        }

        LocalDate first = facts.Period.First;
        ImmutableArray<ScheduledPayday> later = PayCalendar.Paydays(
            facts.Book.Household.Sources, facts.Holidays, first.PlusDays(1), first.PlusYears(MostYears));
        return
        [
            .. filling.Select(pot =>
            {
                Money missing = pot.Target - pot.Row.HasNow - pot.Row.Fill;
                Money placed = placements
                    .Where(placement => placement.Target == MoveTarget.Pot(pot.Row.Pot.Id))
                    .Aggregate(Money.Zero(missing.Currency), (sum, placement) => sum + placement.Amount);
                return new PotCourse(pot.Row.Pot.Id, FullOn(missing, pot.Row.Fill), FullOn(missing - placed, pot.Row.Fill));
            }),
        ];

        LocalDate? FullOn(Money missing, Money fill)
        {
            if (!missing.IsPositive)
            {
                return first;
            }

            long more = fill.IsPositive ? ((missing.MinorUnits - 1) / fill.MinorUnits) + 1 : long.MaxValue;
            return more <= later.Length ? later[(int)(more - 1)].Date : null;
        }
    }

    private static Money? Target(PotKind kind) => kind switch
    {
        PotKind.Sinking sinking => sinking.Target,
        PotKind.Reserve reserve => reserve.Level,
        _ => null,
    };
}
