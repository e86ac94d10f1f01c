using Payday.Core.Drafts;
using Payday.Store.Formats;
using Members = Payday.Core.Drafts.ScheduleDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>A schedule: an object whose <c>kind</c> says which other fields it has.</summary>
public static class ScheduleFormat
{
    /// <summary>The fields.</summary>
    public static PartValue<ScheduleDraft> Value { get; } = new(new(
        FileField.Of(Members.Kind, "kind", new WordValue<ScheduleKind>(Words.Schedules)),
        FileField.Of(Members.Weeks, "weeks", new CountValue(1, HouseholdLimits.MostWeeks)),
        FileField.Of(Members.Days, "days", new DaysValue()),
        FileField.Of(Members.Day, "day", FileValues.Day),
        FileField.Of(Members.Months, "months", new CountValue(1, HouseholdLimits.MostMonths)),
        FileField.Of(Members.Anchor, "anchor", FileValues.Date),
        FileField.Of(Members.Dates, "dates", FileValues.Dates))
    {
        IsKnown = schedule => schedule.Kind is not null,
    });
}
