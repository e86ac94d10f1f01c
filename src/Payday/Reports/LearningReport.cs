using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Statements.Habits;
using Payday.Statements.Learning;
using Payday.Text;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>What statements teach, as text.</summary>
internal static class LearningReport
{
    // What comes up now and then is summed up below the habits.
    private const int MostHabits = 15;

    private static readonly YearMonthPattern MonthPattern = YearMonthPattern.CreateWithInvariantCulture("MMM uuuu");

    /// <summary>All of it.</summary>
    public static IEnumerable<string> Lines(Lessons lessons, NumberStyle style) =>
    [
        .. Report.Heading(
            $"{DateText.Day(lessons.Span.Start)} to {DateText.Day(lessons.Span.End)}: {"line".ToQuantity(lessons.Lines)} of {(lessons.Histories.Length == 1 ? "one account" : $"{lessons.Histories.Length} accounts")}",
            lessons.Currency.Code),
        .. lessons.Incomes.IsEmpty ? ["No income comes round in these lines."] : Series(lessons.Incomes, "Income", "comes", "count on", style),
        "",
        .. lessons.Bills.IsEmpty ? ["No bill comes round in these lines."] : Series(lessons.Bills, "Bill", "falls due", "set aside", style),
        .. Changes(lessons, style),
        "",
        .. Spending(lessons, style),
        .. lessons.Months.IsEmpty ? ImmutableArray<string>.Empty : ["", .. Months(lessons, style)],
    ];

    private static IEnumerable<string> Series(ImmutableArray<Recurring> series, string what, string when, string hold, NumberStyle style) => Report.Table(
        style,
        [Report.Names(what), new(when) { Drops = 1 }, Report.Amounts("usual"), Report.Amounts(hold), new("hits", Align.Right), new("last")],
        series.Select(one => ImmutableArray.Create(
            CleanText.OneLine(one.Name),
            ScheduleText.Of(one.Rhythm.ToSchedule()),
            one.UsualSize.ToString(style),
            one.HoldSize.ToString(style),
            Hits(one),
            DateText.Day(one.Last))));

    /// <summary>How many of the times expected came, e.g. <c>6 of 6</c>.</summary>
    public static string Hits(Recurring series) => string.Create(CultureInfo.InvariantCulture, $"{series.Lines.Length} of {series.Expected}");

    private static IEnumerable<string> Changes(Lessons lessons, NumberStyle style)
    {
        string[] changes =
        [
            .. lessons.Incomes.Concat(lessons.Bills).SelectMany(series => series.Changes.Select(change => LearningTexts.Of(series, change, style))),
        ];
        return changes.Length == 0 ? [] : ["", "What changed:", .. changes.SelectMany(change => Report.Prose("  " + change))];
    }

    private static IEnumerable<string> Spending(Lessons lessons, NumberStyle style)
    {
        Habit[] usual = [.. lessons.Habits.Where(habit => habit.IsUsual).Take(MostHabits)];
        Habit[] rest = [.. lessons.Habits.Except(usual)];
        if (lessons.Habits.IsEmpty)
        {
            return ["Nothing is spent beside bills in these lines."];
        }

        ImmutableArray<ImmutableArray<string>> totals =
        [
            .. rest.Length > 0
                ? [[$"Now and then, {"name".ToQuantity(rest.Length)}", "", "", "", "", Money.Sum(rest.Select(habit => habit.Total), lessons.Currency).ToString(style)]]
                : ImmutableArray<ImmutableArray<string>>.Empty,
            Cells("All together", lessons.Week, lessons.Month, Money.Sum(lessons.Habits.Select(habit => habit.Total), lessons.Currency), style),
        ];
        return Report.Table(
            style,
            [Report.Names("Spent beside bills"), Report.Amounts("a week"), new("range", Align.Right) { Drops = 1 }, Report.Amounts("a month"), new("range", Align.Right) { Drops = 2 }, Report.Amounts("in all")],
            usual.Select(habit => Cells(CleanText.OneLine(habit.Name), habit.PerWeek, habit.PerMonth, habit.Total, style)),
            totals);
    }

    private static ImmutableArray<string> Cells(string name, SpendingSummary? week, SpendingSummary? month, Money total, NumberStyle style) =>
        [name, Median(week, style), Range(week, style), Median(month, style), Range(month, style), total.ToString(style)];

    private static string Median(SpendingSummary? spent, NumberStyle style) => spent?.Median.ToString(style) ?? "-";

    // Whole units do: a range says how far it goes up and down.
    private static string Range(SpendingSummary? spent, NumberStyle style) => spent is null ? "" : $"{Whole(spent.Low, style)}-{Whole(spent.High, style)}";

    private static string Whole(Money amount, NumberStyle style)
    {
        string text = amount.ToString(style);
        int mark = text.LastIndexOf(style.DecimalMark, StringComparison.Ordinal);
        return mark < 0 || amount.Currency.MinorPerUnit == 1 ? text : text[..mark];
    }

    private static IEnumerable<string> Months(Lessons lessons, NumberStyle style) => Report.Table(
        style,
        [new("Month"), Report.Amounts("came in"), Report.Amounts("went out"), Report.Amounts("left over")],
        lessons.Months.Select(month => ImmutableArray.Create(MonthPattern.Format(month.Month), month.In.ToString(style), month.Out.ToString(style), (month.In - month.Out).ToString(style))),
        [
            [
                "Together",
                Money.Sum(lessons.Months.Select(month => month.In), lessons.Currency).ToString(style),
                Money.Sum(lessons.Months.Select(month => month.Out), lessons.Currency).ToString(style),
                Money.Sum(lessons.Months.Select(month => month.In - month.Out), lessons.Currency).ToString(style),
            ],
        ]);
}
