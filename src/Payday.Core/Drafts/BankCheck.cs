using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;

namespace Payday.Core.Drafts;

/// <summary>Makes where notes come from of a draft.</summary>
public static class BankCheck
{
    /// <summary>Checks it; a teller where there is none.</summary>
    /// <param name="bank">The draft, or null.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="check">The check; a machine gives no notes but those in use.</param>
    public static CashSource Of(BankDraft? bank, DraftPlace place, DraftCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        if (bank is null || !check.IsThere(bank.Kind, place.Then(BankDraft.Members.Kind)) || bank.Kind == BankKind.Teller)
        {
            return new CashSource.Teller();
        }

        ImmutableArray<Money> notes = check.IsThere(bank.Notes, place.Then(BankDraft.Members.Notes))
            ? PieceCheck.Notes(bank.Notes!.Value, BankDraft.Members.Notes, place, check)
            : [];
        DraftPlace limitAt = place.Then(BankDraft.Members.Limit);
        Money? limit = bank.Limit is null ? null : check.AmountAboveZero(bank.Limit, limitAt);
        if (check.IsSound(place) && limit is { } most && most < notes[^1])
        {
            check.Refuse(new DraftFault.LimitTooLow(limitAt, notes[^1]));
        }

        return new CashSource.Machine(notes, limit);
    }
}
