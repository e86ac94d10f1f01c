using NodaTime;
using Payday.Core.Calendar;
using Members = Payday.Core.Drafts.ScheduleDraft.Members;

namespace Payday.Core.Drafts;

/// <summary>Makes a schedule of a draft.</summary>
public static class ScheduleCheck
{
    private const int MonthsOfAYear = 12;

    /// <summary>Checks it.</summary>
    /// <param name="schedule">The draft, or null where there is none.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="check">The check.</param>
    public static Schedule Of(ScheduleDraft? schedule, DraftPlace place, DraftCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        if (!check.IsThere(schedule, place) || !check.IsThere(schedule!.Kind, place.Then(Members.Kind)))
        {
            return new Schedule.OnDates([]);
        }

        return schedule.Kind!.Value switch
        {
            ScheduleKind.Weekly => new Schedule.EveryWeeks(1, Anchor()),
            ScheduleKind.Fortnightly => new Schedule.EveryWeeks(2, Anchor()),
            ScheduleKind.EveryWeeks => new Schedule.EveryWeeks(check.Count(schedule.Weeks, 1, HouseholdLimits.MostWeeks, place.Then(Members.Weeks)), Anchor()),
            ScheduleKind.TwiceMonthly => Twice(schedule, place.Then(Members.Days), check),
            ScheduleKind.Monthly => check.IsThere(schedule.Day, place.Then(Members.Day)) ? new Schedule.Monthly(schedule.Day!) : new Schedule.OnDates([]),
            ScheduleKind.EveryMonths => new Schedule.EveryMonths(check.Count(schedule.Months, 1, HouseholdLimits.MostMonths, place.Then(Members.Months)), Anchor()),
            ScheduleKind.Yearly => new Schedule.EveryMonths(MonthsOfAYear, Anchor()),
            ScheduleKind.Dates => check.IsThere(schedule.Dates, place.Then(Members.Dates))
                ? new Schedule.OnDates(check.Dates(schedule.Dates!.Value, Members.Dates, place))
                : new Schedule.OnDates([]),
            _ => throw new ArgumentOutOfRangeException(nameof(schedule)),
        };

        LocalDate Anchor() => check.Date(schedule.Anchor, place.Then(Members.Anchor));
    }

    private static Schedule Twice(ScheduleDraft schedule, DraftPlace place, DraftCheck check)
    {
        if (!check.IsThere(schedule.Days, place))
        {
            return new Schedule.OnDates([]);
        }

        if (schedule.Days is [{ } first, { } second] && first != second)
        {
            return new Schedule.TwiceMonthly(first, second);
        }

        check.Refuse(new DraftFault.NotTwoDays(place));
        return new Schedule.OnDates([]);
    }
}
