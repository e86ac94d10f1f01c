using Payday.Core.Drafts;
using Payday.Store.Formats;
using Members = Payday.Core.Drafts.DebtDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>A debt in a household file.</summary>
internal static class DebtFormat
{
    private const string Minimum = "minimum";

    public static PartFormat<DebtDraft> Fields { get; } = new(
        FileField.OfItem<DebtDraft>(ItemMembers.Name, "name"),
        FileField.OfItem<DebtDraft>(ItemMembers.Id, "id") with { WrittenAfter = "" },
        FileField.Of(Members.Balance, "balance", FileValues.Amount),
        FileField.Of(Members.Rate, "rate", FileValues.Rate),
        FileField.Of(Members.Minimum, Minimum, MinimumFormat.Value),

        // One or the other: a debt that has a schedule has no day.
        FileField.Of(Members.Schedule, "schedule", ScheduleFormat.Value) with { WrittenAfter = "due" },
        FileField.Of(Members.Due, "due", FileValues.Day) with { WrittenAfter = Minimum });
}
