using Payday.Core.Amounts;
using Payday.Core.Debts;

namespace Payday.Core.Drafts;

/// <summary>Makes the least payment on a debt of a draft.</summary>
public static class MinimumCheck
{
    /// <summary>Checks it.</summary>
    /// <param name="minimum">The draft, or null where there is none.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="check">The check.</param>
    public static MinimumRule Of(MinimumDraft? minimum, DraftPlace place, DraftCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return !check.IsThere(minimum, place) ? new MinimumRule.Fixed(Money.Zero(check.Currency))
            : minimum!.Kind == MinimumKind.Fixed ? new MinimumRule.Fixed(check.Amount(minimum.Fixed, place.Then(MinimumDraft.Members.Fixed)))
            : new MinimumRule.PercentOrFloor(
                check.Rate(minimum.Percent, HouseholdLimits.HighestPart, place.Then(MinimumDraft.Members.Percent)),
                check.Amount(minimum.Floor, place.Then(MinimumDraft.Members.Floor)))
            {
                PlusInterest = minimum.PlusInterest ?? false,
            };
    }
}
