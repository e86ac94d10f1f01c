using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>Decisions of a payday that have a limit, whoever takes them.</summary>
public static class Deciding
{
    /// <summary>Pays another amount on a minimum.</summary>
    /// <param name="plan">The routine as it stands.</param>
    /// <param name="row">A row of it that is due.</param>
    /// <param name="amount">Zero or more.</param>
    /// <returns>The decisions with it; or the refusal, where that is more than is owed with its interest.</returns>
    public static Result<RoutineDraft> Minimum(RoutinePlan plan, DebtRow row, Money amount)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(row);
        Money most = row.Balance + row.Interest;
        return amount > most
            ? Result.Refused<RoutineDraft>(new RoutineFault.MoreThanOwed(most))
            : Result.Of(plan.Draft with { Minimums = plan.Draft.Minimums.SetItem(row.Key!.Value, amount) });
    }

    /// <summary>Places an amount of the surplus; what is not left is taken from the other placements, as <see cref="Placing.Set"/> does.</summary>
    /// <param name="plan">The routine as it stands.</param>
    /// <param name="target">A debt, a pot or the buffer.</param>
    /// <param name="amount">Zero or more; null for all that is left, and where nothing is for the whole surplus.</param>
    /// <returns>The decisions with it; or the refusal, where that is more than the surplus, than is owed, or than a bill lacks.</returns>
    public static Result<RoutineDraft> Placement(RoutinePlan plan, MoveTarget target, Money? amount)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Money? most = target switch
        {
            MoveTarget.ToDebt debt => Placing.MostOn(plan, debt.Id),
            MoveTarget.ToBill bill => BillCourse.Of(plan).FirstOrDefault(course => course.BillId == bill.Id)?.Lacks ?? Money.Zero(plan.Surplus.Before.Currency),
            _ => null,
        };
        if (amount is not { } named)
        {
            return Result.Of(plan.Draft with { Placements = Placing.Rest(plan, target, most) });
        }

        return most is { } limit && named > limit
            ? Result.Refused<RoutineDraft>(new RoutineFault.MoreThanOwed(limit))
            : Placing.Set(plan, target, named).Map(placements => plan.Draft with { Placements = (ImmutableArray<Placement>?)placements });
    }

    /// <summary>Chooses the notes of one part.</summary>
    /// <param name="plan">The routine as it stands.</param>
    /// <param name="row">A cash pot of its withdrawal.</param>
    /// <param name="week">A part of that pot.</param>
    /// <param name="notes">The notes.</param>
    /// <returns>The decisions with it; or the refusal, where the pot's notes would come to more than it has.</returns>
    public static Result<RoutineDraft> Notes(RoutinePlan plan, CashPotRow row, WeekPart week, Notes notes)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(row);
        ArgumentNullException.ThrowIfNull(week);
        ArgumentNullException.ThrowIfNull(notes);
        Money left = row.KeptBack + week.Amount - notes.Worth(row.Amount.Currency);
        return left.IsNegative
            ? Result.Refused<RoutineDraft>(new RoutineFault.NotesAbovePot(row.Pot.Name, row.Amount, row.Amount - left))
            : Result.Of(plan.Draft with { Notes = plan.Draft.Notes.SetItem(new PartKey(row.Pot.Id, week.Week), notes) });
    }
}
