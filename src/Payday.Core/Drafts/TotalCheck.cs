using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Drafts;

/// <summary>Checks that look at all of a household's amounts together.</summary>
internal static class TotalCheck
{
    /// <summary>Notes a total that is too large to count with, and opening parts above the account.</summary>
    /// <param name="household">The household; where something of it is wrong, with stand-ins.</param>
    /// <param name="hasOpening">Whether what was there at the start was given at all.</param>
    /// <param name="check">The check.</param>
    public static void Of(Household household, bool hasOpening, DraftCheck check)
    {
        Int128 total = 0;
        foreach (Money amount in household.Amounts())
        {
            total += Int128.Abs(amount.MinorUnits);
        }

        foreach ((long note, int count) in household.Opening.LooseNotes)
        {
            total += (Int128)note * count;
        }

        foreach (PotKind.Ladder ladder in household.Pots.Select(pot => pot.Kind).OfType<PotKind.Ladder>())
        {
            total += (Int128)ladder.Unit.MinorUnits * ladder.Steps * ladder.Steps;
        }

        DraftPlace openingAt = DraftPlace.Of(HouseholdDraft.Members.Opening);
        if (total > HouseholdLimits.LargestTotal)
        {
            check.Refuse(new DraftFault.TotalTooLarge(DraftPlace.Whole, household.Amounts().Max()));
        }
        else if (check.IsSound(openingAt))
        {
            Account(household, hasOpening ? openingAt.Then(OpeningDraft.Members.Account) : DraftPlace.Whole, check);
        }
    }

    private static void Account(Household household, DraftPlace place, DraftCheck check)
    {
        OpeningBalances opening = household.Opening;
        Money parts = Money.Sum(opening.SetAside.Values, household.Currency);
        foreach (Pot pot in household.Pots.Where(pot => pot.Place == Place.Account))
        {
            parts += opening.Pots.GetValueOrDefault(pot.Id, Money.Zero(household.Currency));
        }

        // An account below zero holds nothing.
        if (parts > opening.Account.ClampToZero())
        {
            check.Refuse(new DraftFault.AccountTooLow(place, parts, opening.Account));
        }
    }
}
