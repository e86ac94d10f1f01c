using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.NotePlanning;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>Notes chosen by hand, and a plan for the rest around them.</summary>
internal static class WithdrawalNotes
{
    /// <summary>Plans the notes of all parts, in their order.</summary>
    public static NotePlan Plan(
        RoutineFacts facts, Notes onHand, NotePart[] parts, ImmutableArray<Pot> pots)
    {
        Household household = facts.Book.Household;
        PartNotes?[] chosen = [.. parts.Select(part => Chosen(facts.Draft, part))];
        Notes taken = Notes.Sum(chosen.OfType<PartNotes>().Select(part => part.Notes));

        // Where a machine's limit leaves some out, the pots that matter most are served first.
        Dictionary<PotId, int> ranks = pots.ToDictionary(pot => pot.Id, pot => pot.Rank);
        NotePlan rest = Planned(facts, new NoteRequest(
            household.Settings.Cash.Notes,
            onHand.Less(taken),
            facts.Draft.BankFor(household.Settings.Bank),
            [.. parts.Where((_, i) => chosen[i] is null).OrderBy(part => ranks[part.Pot])]));
        Dictionary<PartKey, PartNotes> planned = rest.Parts.ToDictionary(part => new PartKey(part.Part.Pot, part.Part.Week));
        ImmutableArray<PartNotes> all =
            [.. parts.Select((part, i) => chosen[i] ?? planned[new PartKey(part.Pot, part.Week)])];
        Notes needed = Notes.Sum(all.Select(part => part.Notes));
        return rest with
        {
            Parts = all,
            Withdraw = needed.Less(onHand),
            Return = onHand.Less(needed),
            Reused = onHand.Common(needed),
        };
    }

    // A machine's limit is that of one visit: it is gone to once a day, as often as its limit needs and the period has days.
    private static NotePlan Planned(RoutineFacts facts, NoteRequest request)
    {
        if (request.Source is not CashSource.Machine { Limit: { } limit } machine || machine.Notes.All(note => note > limit))
        {
            return NotePlanner.Plan(request);
        }

        int days = Period.DaysBetween(facts.Period.First, facts.Period.Last) + 1;
        CashSource.Machine once = machine with { Notes = [.. machine.Notes.Where(note => note <= limit)], Limit = null };
        while (true)
        {
            NotePlan plan = NotePlanner.Plan(request with { Source = once });
            ImmutableArray<Notes> trips = MachineTrips.Of(plan.Withdraw, limit);
            if (trips.Length <= days)
            {
                return plan;
            }

            once = once with { Limit = Notes.Sum(trips.Take(days)).Worth(request.Currency) };
        }
    }

    private static PartNotes? Chosen(RoutineDraft draft, NotePart part)
    {
        if (!draft.Notes.TryGetValue(new PartKey(part.Pot, part.Week), out Notes? notes))
        {
            return null;
        }

        return new PartNotes(part, part.Amount, notes, part.Amount - notes.Worth(part.Amount.Currency));
    }
}
