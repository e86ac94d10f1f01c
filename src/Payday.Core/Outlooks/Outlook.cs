using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Routines;

namespace Payday.Core.Outlooks;

/// <summary>The coming paydays, each closed with all its proposals taken.</summary>
/// <param name="Paydays">In their order. The last one can't be closed where something of it can't be paid; none comes after that.</param>
/// <param name="Reached">The pots that get full, in the order of their days.</param>
/// <param name="PaidOff">The debts that end, in the order of their days.</param>
/// <param name="Book">The book as it would be at the end.</param>
/// <remarks>
/// <para>
/// It is the routine itself, run forward (design, rule 18): spending pots are used up by the end of their period, sinking
/// pots that are full are spent on their date, ladders and reserves are kept. What was begun of the next payday counts.
/// Nothing of it is stored.
/// </para>
/// <para>A payday that is short takes from the buffer only what the household's setting allows; where nothing is set, nothing.</para>
/// </remarks>
public sealed record Outlook(
    ImmutableArray<OutlookPayday> Paydays, ImmutableArray<PotReached> Reached, ImmutableArray<DebtPaidOff> PaidOff, Book Book)
{
    /// <summary>How many paydays are looked at where nobody says how many: a year of a pay every other week.</summary>
    public const int UsualPaydays = 26;

    /// <summary>The payday with the least to spare, the first of equals; null where there is none.</summary>
    public OutlookPayday? Tightest => Paydays.IsEmpty ? null : Paydays.MinBy(payday => payday.Spare);

    /// <summary>Whether it ends early, at a payday that can't be closed.</summary>
    public bool IsCutShort => Paydays is [.., { Faults.IsEmpty: false }];

    /// <summary>Looks ahead.</summary>
    /// <param name="book">The book.</param>
    /// <param name="count">How many paydays, from 1.</param>
    /// <returns>The outlook; fewer paydays where no more are known. Refused where there is no next payday.</returns>
    public static Result<Outlook> Of(Book book, int count)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        Result<RoutineDraft> first = Routine.Begun(book);
        if (!first.Ok)
        {
            return Result.Refused<Outlook>(first.Faults);
        }

        var life = new OutlookLife(book, first.Value.Payday);
        life.UseUp(first.Value.Payday.PlusDays(-1));
        RoutineDraft? draft = first.Value;
        while (draft is not null && life.Paydays.Count < count)
        {
            Result<RoutinePlan> plan = Routine.Plan(life.Book, draft);
            if (!plan.Ok)
            {
                return life.Paydays.Count == 0 ? Result.Refused<Outlook>(plan.Faults) : Result.Of(life.Seen());
            }

            draft = life.Live(plan.Value) && Routine.Next(life.Book) is { Ok: true } next ? new RoutineDraft(next.Value) : null;
        }

        return Result.Of(life.Seen());
    }
}
