using Payday.Core.Drafts;
using Payday.Store.Formats;
using Members = Payday.Core.Drafts.DebtDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>A debt in a household file.</summary>
internal static class DebtFormat
{
    public static PartFormat<DebtDraft> Fields { get; } = new(
        FileField.OfItem<DebtDraft>(ItemMembers.Name, "name"),
        FileField.OfItem<DebtDraft>(ItemMembers.Id, "id") with { WrittenAfter = "" },
        FileField.Of(Members.Balance, "balance", FileValues.Amount),
        FileField.Of(Members.Rate, "rate", FileValues.Rate),
        FileField.Of(Members.Minimum, "minimum", MinimumFormat.Value),
        FileField.Of(Members.Due, "due", FileValues.Day));
}
