using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Pots;
using Payday.Statements.Lines;
using Payday.Statements.Taking;
using Payday.Statements.Texts;

namespace Payday.Statements.Learning;

/// <summary>Rules for lines of statements that come of what was taken from statements into a household: later lines like those are proposed for it.</summary>
public static class LearnedRules
{
    private const int MostWords = 3;

    // So many of its own lines of a hundred have the words at least.
    private const int LeastPercent = 90;

    /// <summary>The rules.</summary>
    /// <param name="lessons">What the statements teach.</param>
    /// <param name="household">The household, with what was taken in it.</param>
    /// <param name="taken">What was taken of it.</param>
    /// <returns>
    /// One for each that is in the household and whose lines, or nearly all, have words or a mandate that no other line of the
    /// statements has: precision first. An item that went out of the household has none.
    /// </returns>
    public static ImmutableArray<StatementRule> Of(Lessons lessons, Household household, IEnumerable<ProposedItem> taken)
    {
        ArgumentNullException.ThrowIfNull(lessons);
        ArgumentNullException.ThrowIfNull(household);
        ArgumentNullException.ThrowIfNull(taken);
        StatementLine[] all = [.. lessons.Histories.SelectMany(history => history.Lines)];
        var rules = ImmutableArray.CreateBuilder<StatementRule>();
        foreach (ProposedItem item in taken)
        {
            if (TargetOf(item, household) is { } target && WordsFor(LinesOf(item), all) is { } words && rules.All(rule => rule.Words != words))
            {
                rules.Add(new StatementRule(words, target));
            }
        }

        return rules.ToImmutable();
    }

    /// <summary>The words of a rule for lines; null where none tells them from all others.</summary>
    private static string? WordsFor(ImmutableArray<StatementLine> lines, StatementLine[] all)
    {
        HashSet<StatementLine> own = [.. lines];
        return Candidates(lines).FirstOrDefault(words =>
        {
            StatementRule[] rule = [new(words, LineTarget.Leave)];
            StatementLine[] matched = [.. all.Where(line => RuleMatch.Of(rule, line) is not null)];
            return matched.Length > 0 && Array.TrueForAll(matched, own.Contains) && matched.Length * 100 >= own.Count * LeastPercent;
        });
    }

    // The mandate first, then the other side's account, then few words of its name, then more.
    private static IEnumerable<string> Candidates(ImmutableArray<StatementLine> lines)
    {
        foreach (string known in new[] { Common(lines.Select(line => line.Mandate)), Common(lines.Select(line => line.PartyAccount)) }.OfType<string>())
        {
            yield return known.ToLowerInvariant();
        }

        string[] words = [.. lines.SelectMany(line => LineWords.Of(line.Party, line.Text)).CountBy(word => word, StringComparer.Ordinal).Where(word => word.Value * 100 >= lines.Length * LeastPercent).Select(word => word.Key)];
        for (int count = 1; count <= Math.Min(MostWords, words.Length); count++)
        {
            yield return string.Join(' ', words.Take(count)).ToLowerInvariant();
        }
    }

    private static string? Common(IEnumerable<string> texts) => texts.Distinct(StringComparer.Ordinal).ToArray() is [{ Length: > 0 } one] ? one : null;

    private static ImmutableArray<StatementLine> LinesOf(ProposedItem item) => item switch
    {
        ProposedItem.Source source => [.. source.Series.Lines],
        ProposedItem.Bill bill => [.. bill.Series.Lines],
        ProposedItem.Pot pot => pot.Habit.Lines,
        _ => [],
    };

    private static LineTarget? TargetOf(ProposedItem item, Household household) => item switch
    {
        ProposedItem.Source { Id: { } id } when household.Sources.Any(source => source.Id.Text == id) => new(LineUse.Income, LedgerEnd.PaidBy(new SourceId(id))),
        ProposedItem.Bill { Id: { } id } when household.Bills.Any(bill => bill.Id.Text == id) => new(LineUse.For, LedgerEnd.InAccount(Purpose.SetAside(new BillId(id)))),
        ProposedItem.Bill { Id: { } id } when household.Debts.Any(debt => debt.Id.Text == id) => new(LineUse.For, new LedgerEnd.Owed(new DebtId(id))),
        ProposedItem.Pot { Id: { } id } pot when household.Pots.FirstOrDefault(known => known.Id.Text == id) is { } there =>
            new(pot.Habit.Name == HabitFinder.Cash && there.Place == Place.Cash ? LineUse.Cash : LineUse.For, MoveEnds.OfPot(there)),
        _ => null,
    };
}
