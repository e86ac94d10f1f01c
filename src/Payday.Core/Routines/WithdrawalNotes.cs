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
        RoutineFacts facts, ImmutableSortedDictionary<long, int> onHand, NotePart[] parts, ImmutableArray<Pot> pots)
    {
        Household household = facts.Book.Household;
        PartNotes?[] chosen = [.. parts.Select(part => Chosen(facts.Draft, part))];
        ImmutableSortedDictionary<long, int> taken = Count(chosen.OfType<PartNotes>());

        // Where a machine's limit leaves some out, the pots that matter most are served first.
        Dictionary<PotId, int> ranks = pots.ToDictionary(pot => pot.Id, pot => pot.Rank);
        NotePlan rest = NotePlanner.Plan(new NoteRequest(
            household.Settings.Cash.Notes,
            Less(onHand, taken),
            facts.Draft.AsksATeller ? new CashSource.Teller() : household.Settings.Bank,
            [.. parts.Where((_, i) => chosen[i] is null).OrderBy(part => ranks[part.Pot])]));
        Dictionary<PartKey, PartNotes> planned = rest.Parts.ToDictionary(part => new PartKey(part.Part.Pot, part.Part.Week));
        ImmutableArray<PartNotes> all =
            [.. parts.Select((part, i) => chosen[i] ?? planned[new PartKey(part.Pot, part.Week)])];
        ImmutableSortedDictionary<long, int> needed = Count(all);
        return rest with
        {
            Parts = all,
            Withdraw = Less(needed, onHand),
            Return = Less(onHand, needed),
            Reused = Less(onHand, Less(onHand, needed)),
        };
    }

    private static PartNotes? Chosen(RoutineDraft draft, NotePart part)
    {
        if (!draft.Notes.TryGetValue(new PartKey(part.Pot, part.Week), out ImmutableSortedDictionary<long, int>? notes))
        {
            return null;
        }

        Money paid = Money.Sum(notes.Select(note => Money.FromMinorUnits(note.Key, part.Amount.Currency) * note.Value), part.Amount.Currency);
        return new PartNotes(part, part.Amount, notes, part.Amount - paid);
    }

    private static ImmutableSortedDictionary<long, int> Count(IEnumerable<PartNotes> parts) => parts
        .SelectMany(part => part.Notes)
        .GroupBy(note => note.Key)
        .ToImmutableSortedDictionary(notes => notes.Key, notes => notes.Sum(note => note.Value));

    private static ImmutableSortedDictionary<long, int> Less(ImmutableSortedDictionary<long, int> from, ImmutableSortedDictionary<long, int> taken) => from
        .Select(note => (note.Key, Count: note.Value - taken.GetValueOrDefault(note.Key)))
        .Where(note => note.Count > 0)
        .ToImmutableSortedDictionary(note => note.Key, note => note.Count);
}
