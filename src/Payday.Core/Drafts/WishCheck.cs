using Payday.Core.Cash;
using Members = Payday.Core.Drafts.PotDraft.Members;

namespace Payday.Core.Drafts;

/// <summary>Makes which notes a pot wants of a draft.</summary>
public static class WishCheck
{
    /// <summary>Checks the wishes of a pot.</summary>
    public static NoteWishes Of(PotDraft pot, DraftPlace place, DraftCheck check)
    {
        ArgumentNullException.ThrowIfNull(pot);
        ArgumentNullException.ThrowIfNull(check);
        DraftPlace smallAt = place.Then(Members.Small);
        return new NoteWishes(
            pot.TopNote is null ? null : PieceCheck.Note(pot.TopNote, place.Then(Members.TopNote), check),
            pot.Small is { } small
                ? new SmallMoney(
                    PieceCheck.Note(small.Note, smallAt.Then(SmallMoneyDraft.Members.Note), check),
                    check.AmountAboveZero(small.AtLeast, smallAt.Then(SmallMoneyDraft.Members.AtLeast)))
                : null);
    }
}
