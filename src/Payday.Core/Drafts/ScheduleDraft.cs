using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Calendar;

namespace Payday.Core.Drafts;

/// <summary>A schedule as it was entered: its kind, and what that kind asks for.</summary>
public sealed record ScheduleDraft
{
    /// <summary>How often.</summary>
    public ScheduleKind? Kind { get; init; }

    /// <summary>How many weeks from one time to the next.</summary>
    public int? Weeks { get; init; }

    /// <summary>How many months from one time to the next.</summary>
    public int? Months { get; init; }

    /// <summary>The day of the month.</summary>
    public MonthDay? Day { get; init; }

    /// <summary>The two days of the month; one that isn't known yet is null.</summary>
    public ImmutableArray<MonthDay?>? Days { get; init; }

    /// <summary>A date on which it falls.</summary>
    public LocalDate? Anchor { get; init; }

    /// <summary>All dates.</summary>
    public ImmutableArray<LocalDate>? Dates { get; init; }

    private bool IsCountedFromADate => Kind is ScheduleKind.Weekly or ScheduleKind.Fortnightly or ScheduleKind.EveryWeeks
        or ScheduleKind.EveryMonths or ScheduleKind.Yearly;

    /// <summary>The draft that <see cref="HouseholdCheck"/> makes a schedule of.</summary>
    public static ScheduleDraft Of(Schedule schedule) => schedule switch
    {
        Schedule.EveryWeeks { Weeks: 1 } weeks => new() { Kind = ScheduleKind.Weekly, Anchor = weeks.Anchor },
        Schedule.EveryWeeks { Weeks: 2 } weeks => new() { Kind = ScheduleKind.Fortnightly, Anchor = weeks.Anchor },
        Schedule.EveryWeeks weeks => new() { Kind = ScheduleKind.EveryWeeks, Weeks = weeks.Weeks, Anchor = weeks.Anchor },
        Schedule.TwiceMonthly twice => new() { Kind = ScheduleKind.TwiceMonthly, Days = [twice.First, twice.Second] },
        Schedule.Monthly monthly => new() { Kind = ScheduleKind.Monthly, Day = monthly.Day },
        Schedule.EveryMonths { Months: 12 } months => new() { Kind = ScheduleKind.Yearly, Anchor = months.Anchor },
        Schedule.EveryMonths months => new() { Kind = ScheduleKind.EveryMonths, Months = months.Months, Anchor = months.Anchor },
        Schedule.OnDates dates => new() { Kind = ScheduleKind.Dates, Dates = dates.Dates },
        _ => throw new ArgumentOutOfRangeException(nameof(schedule)),
    };

    /// <summary>The way to one of the two days of the month.</summary>
    /// <param name="index">0 or 1.</param>
    public static DraftPath<ScheduleDraft, MonthDay?> OneOfTwo(int index) => new(
        DraftPlace.Of(Members.Days, index),
        schedule => schedule.Days is { } days && days.Length > index ? days[index] : null,
        (schedule, day) => schedule with { Days = Both(schedule.Days ?? [], index, day) },
        Members.Days.Belongs);

    private static ImmutableArray<MonthDay?>? Both(ImmutableArray<MonthDay?> days, int index, MonthDay? day)
    {
        MonthDay? other = days.Length > 1 - index ? days[1 - index] : null;
        return day is null && other is null ? null : index == 0 ? [day, other] : [other, day];
    }

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="ScheduleDraft.Kind"/>
        public static DraftMember<ScheduleDraft, ScheduleKind?> Kind { get; } = new(schedule => schedule.Kind, (schedule, value) => schedule with { Kind = value });

        /// <inheritdoc cref="ScheduleDraft.Weeks"/>
        public static DraftMember<ScheduleDraft, int?> Weeks { get; } =
            new(schedule => schedule.Weeks, (schedule, value) => schedule with { Weeks = value }) { Belongs = schedule => schedule.Kind == ScheduleKind.EveryWeeks };

        /// <inheritdoc cref="ScheduleDraft.Months"/>
        public static DraftMember<ScheduleDraft, int?> Months { get; } =
            new(schedule => schedule.Months, (schedule, value) => schedule with { Months = value }) { Belongs = schedule => schedule.Kind == ScheduleKind.EveryMonths };

        /// <inheritdoc cref="ScheduleDraft.Day"/>
        public static DraftMember<ScheduleDraft, MonthDay?> Day { get; } =
            new(schedule => schedule.Day, (schedule, value) => schedule with { Day = value }) { Belongs = schedule => schedule.Kind == ScheduleKind.Monthly };

        /// <inheritdoc cref="ScheduleDraft.Days"/>
        public static DraftMember<ScheduleDraft, ImmutableArray<MonthDay?>?> Days { get; } =
            new(schedule => schedule.Days, (schedule, value) => schedule with { Days = value }) { Belongs = schedule => schedule.Kind == ScheduleKind.TwiceMonthly };

        /// <inheritdoc cref="ScheduleDraft.Anchor"/>
        public static DraftMember<ScheduleDraft, LocalDate?> Anchor { get; } =
            new(schedule => schedule.Anchor, (schedule, value) => schedule with { Anchor = value }) { Belongs = schedule => schedule.IsCountedFromADate };

        /// <inheritdoc cref="ScheduleDraft.Dates"/>
        public static DraftMember<ScheduleDraft, ImmutableArray<LocalDate>?> Dates { get; } =
            new(schedule => schedule.Dates, (schedule, value) => schedule with { Dates = value }) { Belongs = schedule => schedule.Kind == ScheduleKind.Dates };
    }
}
