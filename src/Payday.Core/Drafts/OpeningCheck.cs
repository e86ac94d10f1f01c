using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Drafts;

/// <summary>Makes what was there at the start of a draft, but for what bills and pots have of it.</summary>
internal static class OpeningCheck
{
    public static (Money Account, ImmutableSortedDictionary<long, int> Notes) Of(OpeningDraft? opening, DraftCheck check)
    {
        if (opening is null)
        {
            return (Money.Zero(check.Currency), ImmutableSortedDictionary<long, int>.Empty);
        }

        DraftPlace place = DraftPlace.Of(HouseholdDraft.Members.Opening);
        Money account = check.Amount(opening.Account, place.Then(OpeningDraft.Members.Account));
        return (account, PieceCheck.Counts(opening.NotesOnHand ?? [], OpeningDraft.Members.NotesOnHand, place, check));
    }
}
