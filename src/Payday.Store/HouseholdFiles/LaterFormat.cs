using Payday.Core.Drafts;
using Payday.Store.Formats;
using Members = Payday.Core.Drafts.LaterDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>What an amount changes to: <c>[{"from":"2027-01-01","amount":"1480.00"}]</c>.</summary>
internal static class LaterFormat
{
    public static ItemsValue<LaterDraft> Value { get; } = new(
        new(
            FileField.Of(Members.From, "from", FileValues.Date),
            FileField.Of(Members.Amount, "amount", FileValues.Amount)),
        HouseholdLimits.MostChanges);
}
