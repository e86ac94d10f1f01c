using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Drafts;
using Payday.Store.Json;
using Members = Payday.Calculators.NotesDraft.Members;

namespace Payday.Calculators;

/// <summary>The input of the <c>notes</c> calculator.</summary>
internal static class NotesFile
{
    /// <summary>Reads it.</summary>
    public static NoteRequest Read(JsonCursor file) => CalculatorFile.Read(file, NotesDraft.Fields, draft => draft.Currency, Of);

    private static NoteRequest Of(NotesDraft draft, DraftCheck check)
    {
        check.IsThere(draft.Currency, DraftPlace.Of(Members.Currency));
        ImmutableArray<Money> notes = check.IsThere(draft.Notes, DraftPlace.Of(Members.Notes))
            ? PieceCheck.Notes(draft.Notes!.Value, Members.Notes, DraftPlace.Whole, check)
            : [];

        // At home there may be notes that are in use no more.
        ImmutableSortedDictionary<long, int> onHand = PieceCheck.Counts(draft.OnHand ?? [], Members.OnHand, DraftPlace.Whole, check);
        check.Notes = notes;
        check.IsThere(draft.Pots, DraftPlace.Of(Members.Pots));
        return new NoteRequest(
            notes,
            onHand,
            BankCheck.Of(draft.Source, DraftPlace.Of(Members.Source), check),
            [.. (draft.Pots ?? []).Select((pot, i) => Of(pot, i, check))]);
    }

    // A pot's place in the list tells it from another of the same name.
    private static NotePart Of(PotDraft pot, int index, DraftCheck check)
    {
        DraftPlace place = DraftPlace.Of(Members.Pots, index);
        return new NotePart(
            new(index.ToString(CultureInfo.InvariantCulture)),
            check.Line(pot.Name, place.Then(ItemMembers.Name)),
            null,
            check.Amount(pot.Amount, place.Then(PotDraft.Members.Amount)),
            WishCheck.Of(pot, place, check));
    }
}
