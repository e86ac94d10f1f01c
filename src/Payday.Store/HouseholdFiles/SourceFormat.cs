using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Store.Formats;
using Members = Payday.Core.Drafts.SourceDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>An income source in a household file.</summary>
internal static class SourceFormat
{
    public static PartFormat<SourceDraft> Fields { get; } = new(
        FileField.OfItem<SourceDraft>(ItemMembers.Name, "name"),
        FileField.OfItem<SourceDraft>(ItemMembers.Id, "id") with { WrittenAfter = "" },
        FileField.Of(Members.Schedule, "schedule", ScheduleFormat.Value),
        FileField.Of(Members.Shift, "shift", new WordValue<Shift>(Words.Shifts)),
        FileField.Of(Members.Expected, "expected", FileValues.Amount),
        FileField.Of(Members.Later, "later", LaterFormat.Value),
        FileField.Of(Members.Until, "until", FileValues.Date));
}
