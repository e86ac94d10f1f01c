using Payday.Core.Cash;

namespace Payday.Core.Tests.NotePlanning;

/// <summary>What plans are compared by, most important first.</summary>
internal sealed record PlanRank(long SmallMoneyMissing, long KeptBack, long Withdrawn, long Notes)
{
    public static PlanRank Of(NotePlan plan) => new(
        plan.Parts.Sum(Missing),
        plan.KeptBack().MinorUnits,
        plan.WithdrawTotal.MinorUnits,
        plan.NoteCount);

    /// <summary>How much small money a part lacks.</summary>
    public static long Missing(PartNotes part)
    {
        if (part.Part.Wishes.Small is not { } small || part.Amount.IsZero)
        {
            return 0;
        }

        long held = part.Notes.Where(note => note.Key <= small.Note.MinorUnits).Sum(note => note.Key * note.Value);
        return Math.Max(0, small.AtLeast.MinorUnits - held);
    }
}
