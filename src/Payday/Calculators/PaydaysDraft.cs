using System.Collections.Immutable;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Store.Formats;
using Payday.Store.HouseholdFiles;

namespace Payday.Calculators;

/// <summary>The input of the <c>paydays</c> calculator as it was written.</summary>
internal sealed record PaydaysDraft
{
    public ImmutableArray<SourceDraft>? Sources { get; init; }

    public HolidayDraft? Holidays { get; init; }

    public static PartFormat<PaydaysDraft> Fields { get; } = new(
        FileField.Of(Members.Sources, "sources", new ItemsValue<SourceDraft>(new(
            FileField.OfItem<SourceDraft>(ItemMembers.Name, "name"),
            FileField.Of(SourceDraft.Members.Schedule, "schedule", ScheduleFormat.Value),
            FileField.Of(SourceDraft.Members.Shift, "shift", new WordValue<Shift>(Words.Shifts))))),
        FileField.Of(Members.Holidays, "holidays", new HolidayFormat(takesDates: true)));

    public static class Members
    {
        public static DraftMember<PaydaysDraft, ImmutableArray<SourceDraft>?> Sources { get; } = new(file => file.Sources, (file, value) => file with { Sources = value });

        public static DraftMember<PaydaysDraft, HolidayDraft?> Holidays { get; } = new(file => file.Holidays, (file, value) => file with { Holidays = value });
    }
}
