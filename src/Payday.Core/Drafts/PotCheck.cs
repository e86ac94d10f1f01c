using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Members = Payday.Core.Drafts.PotDraft.Members;

namespace Payday.Core.Drafts;

/// <summary>Makes pots of drafts.</summary>
/// <param name="check">The check.</param>
/// <param name="pots">The names of all pots.</param>
/// <param name="debts">The names of all debts.</param>
/// <param name="held">Takes what pots have at the start.</param>
/// <param name="ranks">The rank of each pot.</param>
internal sealed class PotCheck(DraftCheck check, ItemNames pots, ItemNames debts, OpeningParts<PotId> held, ImmutableArray<int> ranks)
{
    public Pot Of(PotDraft pot, string idText, string name, DraftPlace place)
    {
        var id = new PotId(idText);
        PotKind? kind = KindCheck.Of(pot, place, check);
        Place at = check.Needed(pot.Place, place.Then(Members.Place), Place.Cash);
        Money floor = check.AmountOrNone(pot.Floor, place.Then(Members.Floor)) ?? Money.Zero(check.Currency);
        NoteWishes wishes = WishCheck.Of(pot, place, check);
        if (pot.Place is not null)
        {
            Fits(pot, at, kind, wishes, place);
        }

        MoveTarget? movesOnTo = LeftOver(pot, id, at, place.Then(Members.LeftOver));
        held.Add(id, check.AmountOrNone(pot.Has, place.Then(Members.Has)));
        return new Pot(id, name, at, ranks[place.Steps[^1].Item!.Value], floor, kind ?? StandIn(), wishes) { MovesOnTo = movesOnTo };
    }

    // A kind that asks for nothing, for a pot that is refused anyway.
    private PotKind.Spending StandIn() => new(Money.Zero(check.Currency), FillPer.Payday);

    // What a pot in the account can't have, and small money that no fill of the pot can hold.
    private void Fits(PotDraft pot, Place at, PotKind? kind, NoteWishes wishes, DraftPlace place)
    {
        if (at == Place.Account)
        {
            Refuse(pot.TopNote is not null, new DraftFault.NotesInAccount(place.Then(Members.TopNote)));
            Refuse(pot.Small is not null, new DraftFault.NotesInAccount(place.Then(Members.Small)));
            Refuse(kind is PotKind.Spending && pot.SplitsOverWeeks is not null, new DraftFault.WeeksInAccount(place.Then(Members.SplitsOverWeeks)));
        }
        else if (wishes.Small is { } small && kind is not null && check.IsSound(place) && small.AtLeast > kind.LargestFill)
        {
            check.Refuse(new DraftFault.SmallTooMuch(place.Then(Members.Small), kind.LargestFill, small.AtLeast));
        }
    }

    private void Refuse(bool isThere, DraftFault fault)
    {
        if (isThere)
        {
            check.Refuse(fault);
        }
    }

    private MoveTarget? LeftOver(PotDraft pot, PotId id, Place at, DraftPlace place)
    {
        MoveTarget? target = pot.LeftOver is { } left ? Target(left, place) : null;
        if (target is not null && at == Place.Account)
        {
            check.Refuse(new DraftFault.LeftOverInAccount(place));
        }
        else if (target == MoveTarget.Pot(id))
        {
            check.Refuse(new DraftFault.LeftOverToItself(place));
        }

        return target;
    }

    private MoveTarget? Target(LeftOverDraft left, DraftPlace place)
    {
        if (!check.IsThere(left.To, place) || left.To is not (LeftOverTo.Pot or LeftOverTo.Debt))
        {
            return left.To == LeftOverTo.Buffer ? MoveTarget.Buffer : null;
        }

        bool isDebt = left.To == LeftOverTo.Debt;
        DraftPlace namedAt = place.Then(isDebt ? LeftOverDraft.Members.Debt : LeftOverDraft.Members.Pot);
        string named = check.Line(isDebt ? left.Debt : left.Pot, namedAt);
        string? found = (isDebt ? debts : pots).Find(named);
        if (check.IsSound(namedAt) && found is null)
        {
            check.Refuse(new DraftFault.LeftOverUnknown(namedAt, named, isDebt));
        }

        return found is null ? null : isDebt ? MoveTarget.Debt(new(found)) : MoveTarget.Pot(new(found));
    }
}
