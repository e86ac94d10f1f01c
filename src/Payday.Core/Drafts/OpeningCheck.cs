using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;

namespace Payday.Core.Drafts;

/// <summary>Makes what was there at the start of a draft, but for what bills and pots have of it.</summary>
internal static class OpeningCheck
{
    public static (Money Account, Notes Notes) Of(OpeningDraft? opening, DraftCheck check)
    {
        if (opening is null)
        {
            return (Money.Zero(check.Currency), Notes.None);
        }

        DraftPlace place = DraftPlace.Of(HouseholdDraft.Members.Opening);
        Money account = check.AnyAmount(opening.Account, place.Then(OpeningDraft.Members.Account));
        return (account, PieceCheck.Counts(opening.LooseNotes ?? [], OpeningDraft.Members.LooseNotes, place, check));
    }
}
