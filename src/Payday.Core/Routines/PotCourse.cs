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
        PotRow[] filling = [.. pots.Rows.Where(row => row is { Sinking.Stage: SinkingStage.Saving } or { Pot.Kind: PotKind.Reserve })];
        if (filling.Length == 0)
        {
            return [];
        }

        LocalDate first = facts.Period.First;
        ImmutableArray<ScheduledPayday> later = PayCalendar.Paydays(
            facts.Book.Household.Sources, facts.Holidays, first.PlusDays(1), first.PlusYears(MostYears));
        return
        [
            .. filling.Select(row =>
            {
                Money has = row.HasNow + row.Fill;
                Money placed = placements
                    .Where(placement => placement.Target == MoveTarget.Pot(row.Pot.Id))
                    .Aggregate(Money.Zero(has.Currency), (sum, placement) => sum + placement.Amount);
                return new PotCourse(row.Pot.Id, FullOn(row, has), FullOn(row, has + placed));
            }),
        ];

        LocalDate? FullOn(PotRow row, Money has) => has >= Target(row, first) ? first : later
            .Select((payday, i) => (payday.Date, Has: has + (row.Fill * (i + 1))))
            .Where(there => there.Has >= Target(row, there.Date))
            .Select(there => (LocalDate?)there.Date)
            .FirstOrDefault();
    }

    private static Money Target(PotRow row, LocalDate payday) => row.Pot.Kind switch
    {
        PotKind.Sinking sinking => sinking.TargetBy(row.Sinking!.By),
        PotKind.Reserve reserve => reserve.LevelOn(payday),
        _ => throw new ArgumentOutOfRangeException(nameof(row)),
    };
}
