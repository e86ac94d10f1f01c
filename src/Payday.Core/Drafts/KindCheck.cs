using Payday.Core.Pots;
using Members = Payday.Core.Drafts.PotDraft.Members;

namespace Payday.Core.Drafts;

/// <summary>Makes what a pot is for of a draft.</summary>
internal static class KindCheck
{
    /// <summary>Checks it; null where the kind is missing.</summary>
    public static PotKind? Of(PotDraft pot, DraftPlace place, DraftCheck check) =>
        !check.IsThere(pot.Kind, place.Then(Members.Kind)) ? null : pot.Kind!.Value switch
        {
            PotUse.Spending => Spending(pot, place, check),
            PotUse.Sinking => new PotKind.Sinking(
                check.AmountAboveZero(pot.Target, place.Then(Members.Target)),
                check.LaterDate(pot.By, place.Then(Members.By)))
            {
                Later = LaterCheck.Of(pot.Later, Members.Later, place, check, aboveZero: true),
                Repeats = pot.Repeats is { } repeats ? ScheduleCheck.Of(repeats, place.Then(Members.Repeats), check) : null,
                SettledTo = check.LaterDateOrNone(pot.SettledTo, place.Then(Members.SettledTo)),
                Finished = pot.Finished ?? false,
            },
            PotUse.Ladder => new PotKind.Ladder(
                check.AmountAboveZero(pot.Unit, place.Then(Members.Unit)),
                check.Count(pot.Steps, 1, HouseholdLimits.MostSteps, place.Then(Members.Steps)),
                check.Needed(pot.Order, place.Then(Members.Order), LadderOrder.Rising)),
            PotUse.Reserve => new PotKind.Reserve(
                check.AmountAboveZero(pot.Level, place.Then(Members.Level)),
                check.AmountAboveZero(pot.PerPayday, place.Then(Members.PerPayday)))
            {
                Later = LaterCheck.Of(pot.Later, Members.Later, place, check, aboveZero: true),
            },
            _ => throw new ArgumentOutOfRangeException(nameof(pot)),
        };

    private static PotKind.Spending Spending(PotDraft pot, DraftPlace place, DraftCheck check)
    {
        var spending = new PotKind.Spending(
            check.Amount(pot.Amount, place.Then(Members.Amount)),
            check.Needed(pot.Per, place.Then(Members.Per), FillPer.Payday))
        {
            SplitsOverWeeks = pot.SplitsOverWeeks ?? false,
            Later = LaterCheck.Of(pot.Later, Members.Later, place, check),
        };
        if (spending.Per == FillPer.Week && pot.SplitsOverWeeks == false)
        {
            check.Refuse(new DraftFault.WeeksOfAWeek(place.Then(Members.SplitsOverWeeks)));
        }

        return spending;
    }
}
