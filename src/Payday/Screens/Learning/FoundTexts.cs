using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Pots;
using Payday.Reports;
using Payday.Statements.Habits;
using Payday.Statements.Learning;
using Payday.Text;
using Payday.Texts;

namespace Payday.Screens.Learning;

/// <summary>What was found in the bank's files, in words.</summary>
/// <param name="work">The files and what they teach.</param>
internal sealed class FoundTexts(LearningWork work)
{
    // More would leave too few rows for what was found.
    private const int MostStopped = 3;

    /// <summary>What has no line any more, a sentence each: a bill or income of the household; where there is none yet, what came round and stopped.</summary>
    public IEnumerable<string> Stopped()
    {
        string[] all =
        [
            .. work.Findings.OfType<HouseholdFinding.NoLine>().Select(finding => LearningTexts.Of(finding, work.Household.Style)),
            .. work.Lessons is { IsTooShort: false } lessons && work.Household.TakesParts
                ? lessons.Incomes.Concat(lessons.Bills).SelectMany(series => series.Changes.Where(change => change.Kind == RecurringChangeKind.Stopped).Select(change => LearningTexts.Of(series, change, work.Household.Style)))
                : [],
        ];
        return all.Length <= MostStopped ? all : [.. all.Take(MostStopped - 1), $"{all.Length - MostStopped + 1} more have no line of late either."];
    }

    /// <summary>Its row.</summary>
    public ImmutableArray<string> Cells(ProposedItem item) => item switch
    {
        ProposedItem.Source source => ["pay", CleanText.OneLine(work.NameOf(source)), When(source.Series), Amount(source.Item.Expected), LearningReport.Hits(source.Series)],
        ProposedItem.Bill bill => [work.IsDebt(bill) ? "debt" : "bill", CleanText.OneLine(work.NameOf(bill)), When(bill.Series), Amount(bill.Item.Amount), LearningReport.Hits(bill.Series)],
        ProposedItem.Pot pot => ["pot", CleanText.OneLine(work.NameOf(pot)), pot.Item.Per == FillPer.Week ? "a week" : "a month", Amount(pot.Item.Amount), ""],
        ProposedItem.NewAmount amount => ["new", CleanText.OneLine(amount.Name), When(amount.Series), Amount(amount.Found), LearningReport.Hits(amount.Series)],
        ProposedItem.Account account => ["", account.Name, DateText.Day(account.ClosedOn), Amount(account.Amount), ""],
        _ => throw new ArgumentOutOfRangeException(nameof(item)),
    };

    /// <summary>What it rests on, in a sentence or two.</summary>
    public string Sentence(ProposedItem item) => item switch
    {
        ProposedItem.Source source => Series(source.Series, "at least"),
        ProposedItem.Bill bill when work.IsDebt(bill) => $"Taken as a debt; {(work.PlaceOf(bill) is null ? "Right leads on to its fields in the household" : "Enter changes it")}. {Series(bill.Series, "the least")}",
        ProposedItem.Bill { MayBeDebt: true } bill when work.StateOf(bill) != ItemState.Taken => $"It reads like a debt: Enter asks whether it is one. {Series(bill.Series, "to set aside")}",
        ProposedItem.Bill bill => Series(bill.Series, "to set aside"),
        ProposedItem.Pot { Habit: var habit } pot => Spent(habit, pot),
        ProposedItem.NewAmount amount => $"{Amount(amount.Here)} here, {Amount(amount.Found)} at the bank{Since(amount.Series)}. Taken, it counts from {DateText.Long(amount.From)} on. {LearningReport.Hits(amount.Series)} times, up to {DateText.Day(amount.Series.Last)}.",
        ProposedItem.Account account => $"What the bank says was there at the end of {DateText.Long(account.ClosedOn)}. Taken, the household begins with it on {DateText.Long(account.Start)}.",
        _ => throw new ArgumentOutOfRangeException(nameof(item)),
    };

    private static string Since(Recurring series) =>
        series.Changes.FirstOrDefault(change => change.Kind == RecurringChangeKind.Amount) is { } change ? $" since {DateText.Long(change.Since)}" : "";

    /// <summary>What a series rests on.</summary>
    /// <param name="series">The series.</param>
    /// <param name="hold">What the larger amount is called.</param>
    public string Series(Recurring series, string hold)
    {
        NumberStyle style = work.Household.Style;
        string varies = series.UsualSize == series.HoldSize ? "" : $", {series.HoldSize.ToString(style)} {hold}";
        string changes = string.Concat(series.Changes.Select(change => " " + LearningTexts.Of(series, change, style)));
        return $"{LearningReport.Hits(series)} times, {DateText.Day(series.First)} to {DateText.Day(series.Last)}; usually {series.UsualSize.ToString(style)}{varies}.{changes}";
    }

    private string Spent(Habit habit, ProposedItem.Pot pot)
    {
        NumberStyle style = work.Household.Style;
        SpendingSummary spent = pot.Item.Per == FillPer.Week ? habit.PerWeek! : habit.PerMonth!;
        string period = pot.Item.Per == FillPer.Week ? "week" : "month";
        return $"{"line".ToQuantity(habit.Lines.Length)}; a {period} took {spent.Median.ToString(style)} in the middle of {spent.Periods}, mostly {spent.Low.ToString(style)} to {spent.High.ToString(style)}. As a cash pot it gets whole notes; Enter twice gives it another name.";
    }

    private static string When(Recurring series) => ScheduleText.Of(series.Rhythm.ToSchedule());

    // The household may have no currency yet.
    private string Amount(decimal? amount)
    {
        Currency currency = work.Lessons!.Currency;
        return amount is { } there ? Money.FromMinorUnits((long)(there * currency.MinorPerUnit), currency).ToString(work.Household.Style) : "";
    }
}
