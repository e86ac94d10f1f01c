using System.Collections.Immutable;
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
        NotePlan rest = NotePlanner.Plan(new NoteRequest(
            household.Settings.Cash.Notes,
            onHand.Less(taken),
            facts.Draft.AsksATeller ? new CashSource.Teller() : household.Settings.Bank,
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

    private static PartNotes? Chosen(RoutineDraft draft, NotePart part)
    {
        if (!draft.Notes.TryGetValue(new PartKey(part.Pot, part.Week), out Notes? notes))
        {
            return null;
        }

        return new PartNotes(part, part.Amount, notes, part.Amount - notes.Worth(part.Amount.Currency));
    }
}
