using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Screens.Setup.Fields;
using Payday.Text;
using Members = Payday.Core.Drafts.ScheduleDraft.Members;

namespace Payday.Screens.Setup.Lists;

/// <summary>The fields of a schedule: its kind, then those of that kind.</summary>
internal static class ScheduleFields
{
    private const int WidestWords = 34;

    // A day without its year can't be the one a year later.
    private const int MonthsByDay = 11;

    private static readonly ImmutableArray<(ScheduleKind Value, string Label)> Kinds =
    [
        (ScheduleKind.Monthly, "every month"),
        (ScheduleKind.Fortnightly, "every two weeks"),
        (ScheduleKind.Weekly, "every week"),
        (ScheduleKind.TwiceMonthly, "twice a month"),
        (ScheduleKind.EveryWeeks, "every so many weeks"),
        (ScheduleKind.EveryMonths, "every so many months"),
        (ScheduleKind.Yearly, "every year"),
        (ScheduleKind.Dates, "on certain dates"),
    ];

    /// <summary>The fields.</summary>
    /// <param name="what">What comes round: <c>Comes</c> for pay, <c>Falls due</c> for a bill.</param>
    /// <param name="schedule">The schedule of an item.</param>
    /// <param name="shift">Where a date of it moves.</param>
    public static ImmutableArray<SetupField<TItem>> Of<TItem>(string what, DraftMember<TItem, ScheduleDraft?> schedule, DraftMember<TItem, Shift?> shift) =>
    [
        SetupFields.Of(what, DraftPath.To(schedule, Members.Kind), ChoiceTypes.Of([.. Kinds]), "How often. The fields below change with it."),
        .. OfKind(schedule),
        SetupFields.Of("On a closed day", shift, ChoiceTypes.Of((Shift.Before, "working day before"), (Shift.After, "working day after"), (Shift.None, "stays")), "Where a date on a weekend or bank holiday moves."),
    ];

    /// <summary>The fields of a schedule that stands in the place of a day of the month.</summary>
    /// <param name="what">What comes round.</param>
    /// <param name="schedule">The schedule of an item; null where it has a day of the month.</param>
    /// <param name="day">The day of the month.</param>
    /// <param name="dayField">The field of the day.</param>
    public static ImmutableArray<SetupField<TItem>> OrDay<TItem>(
        string what, DraftMember<TItem, ScheduleDraft?> schedule, DraftMember<TItem, MonthDay?> day, SetupField<TItem> dayField) =>
    [
        SetupFields.Of(
            what,
            DraftPath.To(schedule, Members.Kind) with
            {
                Get = item => schedule.Of(item)?.Kind ?? ScheduleKind.Monthly,
                Set = (item, kind) => kind is null or ScheduleKind.Monthly
                    ? schedule.Put(item, null)
                    : schedule.Put(day.Put(item, null), (schedule.Of(item) ?? new ScheduleDraft()) with { Kind = kind }),
            },
            ChoiceTypes.Of([.. Kinds]),
            "How often. The fields below change with it."),
        dayField,
        .. OfKind(schedule),
    ];

    /// <summary>The fields of a schedule that an item may do without.</summary>
    /// <param name="what">What comes round again, e.g. <c>Needed again</c>.</param>
    /// <param name="help">What it is for, in a sentence or two.</param>
    /// <param name="schedule">The schedule of an item.</param>
    /// <param name="first">A date that is one such date at first.</param>
    public static ImmutableArray<SetupField<TItem>> Again<TItem>(
        string what, string help, DraftMember<TItem, ScheduleDraft?> schedule, DraftMember<TItem, LocalDate?> first) =>
    [
        (SetupFields.Of(what, DraftPath.To(schedule, Members.Kind), Maybe(), help) with
        {
            Then = item => schedule.Of(item) is { Kind: not null, Anchor: null } there ? schedule.Put(item, there with { Anchor = first.Of(item) }) : item,
        }).Optional(),
        .. OfKind(schedule),
    ];

    /// <summary>The schedule of an item in a few words, e.g. <c>every month, 15</c>; at most 34 columns.</summary>
    public static string Words<TItem>(TItem item, DraftMember<TItem, ScheduleDraft?> schedule, SetupFacts facts)
    {
        ScheduleKind? kind = schedule.Of(item)?.Kind;
        string[] rest = [.. OfKind(schedule).Where(field => field.Applies(item, facts)).Select(field => field.Show(item, facts)).Where(text => text.Length > 0)];
        string words = kind switch
        {
            ScheduleKind.EveryWeeks when rest.Length > 0 => $"every {rest[0]} weeks",
            ScheduleKind.EveryMonths when rest.Length > 1 => $"every {rest[0]} months, {Next(schedule.Of(item)!, facts)}",
            ScheduleKind.Yearly when rest.Length > 0 => $"{Label(kind)}, {DateText.Short(schedule.Of(item)!.Anchor!.Value)}",
            ScheduleKind.Dates when rest.Length > 0 => $"{Label(kind)}, {Next(schedule.Of(item)!, facts)}",
            ScheduleKind.Weekly or ScheduleKind.Fortnightly => Label(kind),
            _ => string.Join(", ", rest.Prepend(Label(kind))),
        };
        return TextColumns.Truncate(words, WidestWords);
    }

    // The date that was typed may be long past: what comes is what is looked for.
    private static string Next(ScheduleDraft schedule, SetupFacts facts) => ScheduleNext.After(schedule, facts.Today) is not { } next ? "all past"
        : next < facts.Today.PlusMonths(MonthsByDay) ? $"next {DateText.Short(next)}"
        : $"next {DateText.Day(next)}";

    private static string Label(ScheduleKind? kind) => Kinds.FirstOrDefault(known => known.Value == kind).Label ?? "";

    // Once a year is what is usual for what may be needed again.
    private static ChoiceType<ScheduleKind?> Maybe()
    {
        ImmutableArray<Choice<ScheduleKind?>> choices =
        [
            new("no", null),
            .. Kinds.OrderBy(kind => kind.Value == ScheduleKind.Yearly ? 0 : 1).Select(kind => new Choice<ScheduleKind?>(kind.Label, kind.Value)),
        ];
        return new ChoiceType<ScheduleKind?>(_ => choices);
    }

    private static ImmutableArray<SetupField<TItem>> OfKind<TItem>(DraftMember<TItem, ScheduleDraft?> schedule)
    {
        return
        [
            SetupFields.Of("Weeks", To(DraftPath.To(Members.Weeks)), new CountType(1, HouseholdLimits.MostWeeks), "How many weeks from one time to the next, such as 4."),
            SetupFields.Of("Months", To(DraftPath.To(Members.Months)), new CountType(1, HouseholdLimits.MostMonths), "How many months from one time to the next, such as 3 for a quarter."),
            SetupFields.Of("Day", To(DraftPath.To(Members.Day)), new DayType(), "1 to 31, last, last working day, or a weekday such as 2nd Friday. A day past a month's end is its last day."),
            SetupFields.Of("First day", To(ScheduleDraft.OneOfTwo(0)), new DayType(), "1 to 31, last, last working day, or a weekday such as 1st Friday."),
            SetupFields.Of("Second day", To(ScheduleDraft.OneOfTwo(1)), new DayType(), "Another day than the first: 1 to 31, last, last working day, or such as 3rd Friday."),
            SetupFields.Of("One such date", To(DraftPath.To(Members.Anchor)), new DateType(), "Any date on which it falls, past or to come, like 2026-03-05; the others are counted from it."),
            SetupFields.Of("Dates", To(DraftPath.To(Members.Dates)), new DatesType(), "All dates, like 2026-03-05, with blanks between them."),
        ];

        DraftPath<TItem, TValue> To<TValue>(DraftPath<ScheduleDraft, TValue> inner) => DraftPath.To(schedule, inner);
    }
}
