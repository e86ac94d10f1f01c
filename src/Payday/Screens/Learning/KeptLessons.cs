using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Drafts;
using Payday.Core.Households;
using Payday.Statements.Files;
using Payday.Statements.Learning;
using Payday.Statements.Taking;

namespace Payday.Screens.Learning;

/// <summary>What is kept of the bank's files beside the household: rules for lines like those that were taken, and how each bank's CSV is read.</summary>
internal static class KeptLessons
{
    /// <summary>Keeps it; a rule that the person has for the same words stays.</summary>
    /// <param name="work">The files and what was taken.</param>
    /// <param name="household">The household, with what was taken in it.</param>
    public static Func<WeekRecords, WeekRecords> Of(LearningWork work, Household household)
    {
        ImmutableArray<StatementRule> rules = work.Lessons is { IsTooShort: false } lessons && lessons.Currency == household.Currency
            ? LearnedRules.Of(lessons, household, work.Items.Where(item => work.StateOf(item) == ItemState.Taken))
            : [];
        KeptReading[] readings = [.. work.Files.Select(file => file.Found.Profile).OfType<CsvProfile>().Select(KeptReadings.Of)];
        return weeks => rules.Where(rule => weeks.StatementRules.All(kept => kept.Words != rule.Words))
            .Aggregate(readings.Aggregate(weeks, (with, reading) => with.With(reading)), (with, rule) => with.With(rule));
    }

    /// <summary>Drops the rule that was kept with something that goes out of the household again, where it is as it was.</summary>
    public static Func<Household, Func<WeekRecords, WeekRecords>> Without(LearningWork work, ProposedItem item)
    {
        ImmutableArray<StatementRule> rules = HouseholdCheck.Of(work.Household.Draft) is { Ok: true } whole ? LearnedRules.Of(work.Lessons!, whole.Value, [item]) : [];
        return _ => weeks => weeks with { StatementRules = [.. weeks.StatementRules.Except(rules)] };
    }
}
