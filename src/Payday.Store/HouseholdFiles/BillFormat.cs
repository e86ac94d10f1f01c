using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Store.Formats;
using Members = Payday.Core.Drafts.BillDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>A bill in a household file, with what is set aside for it at the start.</summary>
internal static class BillFormat
{
    private const string Essential = "essential";

    public static PartFormat<BillDraft> Fields { get; } = new(
        FileField.OfItem<BillDraft>(ItemMembers.Name, "name"),
        FileField.OfItem<BillDraft>(ItemMembers.Id, "id") with { WrittenAfter = "" },
        FileField.Of(Members.Amount, "amount", FileValues.Amount),
        FileField.Of(Members.Later, "later", LaterFormat.Value),
        FileField.Of(Members.Schedule, "schedule", ScheduleFormat.Value),
        FileField.Of(Members.Shift, "shift", new WordValue<Shift>(Words.Shifts)),
        FileField.Of(Members.Essential, Essential, new FlagValue()),
        FileField.Of(Members.Until, "until", FileValues.Date),
        FileField.Of(Members.SetAside, "setAside", FileValues.Amount) with { WrittenAfter = Essential });
}
