using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.StatementTaking;
using Payday.Json;
using Payday.Reports;
using Payday.Store;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>The rules for lines of statements: listed, kept and dropped.</summary>
internal static class RuleAnswers
{
    /// <summary>Drops rules and keeps others, all or none, and lists those there are then.</summary>
    public static Answer Of(BookStore store, Book book, string[] kept, string[] dropped)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        WeekRecords weeks = book.Weeks;
        foreach (string words in dropped)
        {
            if (weeks.StatementRules.FirstOrDefault(rule => string.Equals(rule.Words, words.Trim(), StringComparison.OrdinalIgnoreCase)) is not { } rule)
            {
                return Answer.Because(FaultTexts.Of(new TakingFault.NoSuchRule(CleanText.OneLine(words)), style) + " payday statement --rules lists them.");
            }

            weeks = weeks with { StatementRules = weeks.StatementRules.Remove(rule) };
        }

        foreach (string said in kept)
        {
            Result<StatementRule> rule = TakeInput.Rule(book, said);
            if (!rule.Ok)
            {
                return Answer.Wrong(rule.Fault, style);
            }

            weeks = weeks.With(rule.Value);
        }

        bool hasChanged = kept.Length + dropped.Length > 0;
        if (hasChanged)
        {
            store.Save(book, book with { Weeks = weeks });
        }

        return Listed(book, weeks.StatementRules, hasChanged);
    }

    private static Answer.Done Listed(Book book, ImmutableArray<StatementRule> rules, bool hasChanged) => new(
        [
            .. Report.Heading("Rules for lines of statements"),
            .. rules.IsEmpty
                ? ["No rule is kept. Keep one with --rule \"WORDS=WHAT\"."]
                : Report.Table(
                    book.Household.Settings.Numbers,
                    [Report.Names("lines with"), Report.Names("become"), new("")],
                    rules.Select(rule => ImmutableArray.Create(rule.Words, TargetText.Name(book.Household, rule.Target), IsGone(book.Household, rule.Target) ? "gone" : ""))),
            .. hasChanged ? ["Stored."] : Array.Empty<string>(),
        ],
        JsonSerializer.Serialize(
            new StatementRulesResult([.. rules.Select(rule => new StatementRuleResult(rule.Words, TargetText.Name(book.Household, rule.Target), IsGone(book.Household, rule.Target)))]),
            ResultJson.Readable.StatementRulesResult));

    private static bool IsGone(Household household, LineTarget target) => target.End switch
    {
        LedgerEnd.Outside { SourceId: { } source } => household.Sources.All(known => known.Id != source),
        { } end => !LedgerEnds.IsOf(household, end),
        null => false,
    };
}
