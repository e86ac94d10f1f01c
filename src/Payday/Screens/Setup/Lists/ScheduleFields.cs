using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Payday.Screens.Setup.Fields;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>The fields of a schedule: its kind, then those of that kind.</summary>
internal static class ScheduleFields
{
    private const string Schedule = "schedule";
    private const int MostWeeks = 520;
    private const int MostMonths = 120;
    private const int WidestWords = 34;

    private static readonly (string Word, string Label)[] Kinds =
    [
        ("monthly", "every month"),
        ("fortnightly", "every two weeks"),
        ("weekly", "every week"),
        ("twiceMonthly", "twice a month"),
        ("everyWeeks", "every so many weeks"),
        ("everyMonths", "every so many months"),
        ("yearly", "every year"),
        ("dates", "on certain dates"),
    ];

    /// <summary>The fields.</summary>
    /// <param name="what">What comes round: <c>Comes</c> for pay, <c>Falls due</c> for a bill.</param>
    public static ImmutableArray<SetupField> Of(string what) =>
    [
        new(what, FieldPath.Of(Schedule, "kind"), ChoiceType.Of(Kinds), "How often. The fields below change with it."),
        .. OfKind(Schedule),
        new("On a closed day", FieldPath.Of("shift"), ChoiceType.Of(("before", "working day before"), ("after", "working day after"), ("none", "stays")), "Where a date on a weekend or bank holiday moves."),
    ];

    /// <summary>The fields of a schedule that an item may do without.</summary>
    /// <param name="what">What comes round again, e.g. <c>Needed again</c>.</param>
    /// <param name="help">What it is for, in a sentence or two.</param>
    /// <param name="at">Where the schedule stands in the item.</param>
    /// <param name="first">The field of a date that one such date is at first.</param>
    /// <param name="applies">Whether the item has it at all.</param>
    public static ImmutableArray<SetupField> Again(string what, string help, string at, string first, Func<JsonObject, bool> applies) =>
    [
        new SetupField(what, FieldPath.Of(at, "kind"), Maybe(), help)
        {
            Applies = applies,
            Then = item =>
            {
                if (item[at] is JsonObject schedule && schedule["kind"] is not null && schedule["anchor"] is null)
                {
                    schedule["anchor"] = item[first]?.DeepClone();
                }
            },
        }.Optional(),
        .. OfKind(at).Select(field => field with { Applies = item => applies(item) && field.Applies(item) }),
    ];

    /// <summary>The schedule of an item in a few words, e.g. <c>every month, 15</c>; at most 34 columns.</summary>
    public static string Words(JsonObject item, SetupWork work)
    {
        string kind = item[Schedule]?["kind"]?.ToString() ?? "";
        string[] rest = [.. Of("").Skip(1).SkipLast(1)
            .Where(field => field.Applies(item))
            .Select(field => field.Path.In(item) is { } value ? field.Type.Show(value, work) : "")
            .Where(text => text.Length > 0)];
        string words = kind switch
        {
            "everyWeeks" when rest.Length > 0 => $"every {rest[0]} weeks",
            "everyMonths" when rest.Length > 1 => $"every {rest[0]} months, {rest[1]}",
            "weekly" or "fortnightly" => Label(kind),
            _ => string.Join(", ", rest.Prepend(Label(kind))),
        };
        return TextColumns.Truncate(words, WidestWords);
    }

    private static string Label(string word) => Kinds.FirstOrDefault(kind => kind.Word == word).Label ?? "";

    // Once a year is what is usual for what may be needed again.
    private static ChoiceType Maybe()
    {
        ImmutableArray<Choice> choices =
        [
            new("no", null),
            .. Kinds.OrderBy(kind => kind.Word == "yearly" ? 0 : 1).Select(kind => new Choice(kind.Label, JsonValue.Create(kind.Word))),
        ];
        return new ChoiceType(_ => choices);
    }

    private static ImmutableArray<SetupField> OfKind(string at)
    {
        return
        [
            new("Weeks", Path("weeks"), new CountType(1, MostWeeks), "How many weeks from one time to the next, such as 4.") { Applies = Is("everyWeeks") },
            new("Months", Path("months"), new CountType(1, MostMonths), "How many months from one time to the next, such as 3 for a quarter.") { Applies = Is("everyMonths") },
            new("Day", Path("day"), new DayType(), "1 to 31, last, last working day, or a weekday such as 2nd Friday. A day past a month's end is its last day.") { Applies = Is("monthly") },
            new("First day", Path("days", "#0"), new DayType(), "1 to 31, last, last working day, or a weekday such as 1st Friday.") { Applies = Is("twiceMonthly") },
            new("Second day", Path("days", "#1"), new DayType(), "Another day than the first: 1 to 31, last, last working day, or such as 3rd Friday.") { Applies = Is("twiceMonthly") },
            new("One such date", Path("anchor"), new DateType(), "Any date on which it falls, past or to come, like 2026-03-05; the others are counted from it.") { Applies = Is("weekly", "fortnightly", "everyWeeks", "everyMonths", "yearly") },
            new("Dates", Path("dates"), new DatesType(), "All dates, like 2026-03-05, with blanks between them.") { Applies = Is("dates") },
        ];

        FieldPath Path(params ImmutableArray<string> steps) => FieldPath.Of([at, .. steps]);

        Func<JsonObject, bool> Is(params string[] kinds) => item => kinds.Contains(item[at]?["kind"]?.ToString());
    }
}
