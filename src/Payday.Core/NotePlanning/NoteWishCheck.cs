using Payday.Core.Amounts;
using Payday.Core.Cash;

namespace Payday.Core.NotePlanning;

/// <summary>Says which wishes a plan doesn't meet, and what would help: only what was reckoned to.</summary>
/// <param name="request">What was asked.</param>
internal sealed class NoteWishCheck(NoteRequest request)
{
    // Beyond so many of the smallest notes nobody raises an amount for small money.
    private const long MostSmallNotes = 1_000;

    private readonly Effort effort = new(Effort.OfPlan / 10);
    private readonly Money smallest = request.Fetched.Min();

    /// <summary>The fault of a part, or null where its wishes are met.</summary>
    /// <param name="part">Its notes.</param>
    /// <param name="limited">Whether it gets less because of the machine's limit.</param>
    public NoteFault? FaultOf(PartNotes part, bool limited)
    {
        NoteWishes wishes = part.Part.Wishes;

        // What would help is reckoned from the amount that was wished: only here does a machine's plan move money between weeks.
        Money amount = part.Part.Amount;
        if (part.Amount.IsZero)
        {
            return null;
        }

        if (limited)
        {
            return Named(part, NoteFaultKind.Limit, part.Amount, part.Paid);
        }

        // What not even the smallest note makes is kept back whatever the top note is.
        Money least = request.SmallestFor(part.Part) is { } taken && taken < smallest ? taken : smallest;
        if (wishes.TopNote is { } top && top < smallest && part.KeptBack >= least)
        {
            return Named(part, NoteFaultKind.TopNote, top, smallest) with
            {
                Enough = amount >= smallest ? smallest : null,
                ByTeller = request.Source is CashSource.Machine && request.Notes.Any(note => note <= top && note <= amount),
            };
        }

        if (wishes.Small is not { } small)
        {
            return null;
        }

        Money held = Money.FromMinorUnits(
            part.Notes.Where(note => note.Key <= small.Note.MinorUnits).Sum(note => note.Key * note.Value), part.Amount.Currency);
        return held >= small.AtLeast ? null : Named(part, NoteFaultKind.SmallMoney, small.AtLeast, held) with
        {
            Enough = LeastWith(request.Fetched, wishes) is { } enough && enough > amount ? enough : null,
            ByTeller = request.Source is CashSource.Machine && LeastWith(request.Notes, wishes) <= amount,
        };
    }

    // The least amount in which any number of these notes give the small money; null where none do.
    private Money? LeastWith(IEnumerable<Money> notes, NoteWishes wishes)
    {
        SmallMoney small = wishes.Small!;
        long[] values = [.. notes.Where(note => note <= small.Note && (wishes.TopNote is not { } top || note <= top)).Select(note => note.MinorUnits).Distinct().Order()];
        if (values.Length == 0 || small.AtLeast.MinorUnits / values[0] > MostSmallNotes)
        {
            return null;
        }

        try
        {
            long? sum = new Sums(values, checked(small.AtLeast.MinorUnits + values[0]), effort).Ceiling(small.AtLeast.MinorUnits);
            return sum is { } enough ? Money.FromMinorUnits(enough, small.Note.Currency) : null;
        }
        catch (Exception fault) when (fault is EffortSpentException or OverflowException)
        {
            return null;
        }
    }

    private static NoteFault Named(PartNotes part, NoteFaultKind kind, Money wished, Money possible) =>
        new(kind, part.Part.Pot, part.Part.Name, part.Part.Week, wished, possible);
}
