using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Habits;
using Payday.Statements.Lines;

namespace Payday.Statements.Learning;

/// <summary>Sums up what is spent beside bills, by whom it goes to or by the pot that is known for it.</summary>
internal static class HabitFinder
{
    /// <summary>What cash fetched is called.</summary>
    public const string Cash = "Cash";

    /// <summary>What is spent where no name is known.</summary>
    public const string Nameless = "Without a name";

    /// <summary>The habits, the largest first; what comes up now and then last.</summary>
    /// <param name="lines">The lines that belong to no bill and no income.</param>
    /// <param name="span">The days they are complete for.</param>
    /// <param name="potOf">The pot that a line was spent from, where that is known; else null.</param>
    public static ImmutableArray<Habit> Of(IReadOnlyCollection<StatementLine> lines, DateInterval span, Func<StatementLine, string?> potOf)
    {
        var spent = new List<(string Label, StatementLine Line)>();
        foreach (IGrouping<string, StatementLine> party in lines.GroupBy(line => Key(line, potOf), StringComparer.Ordinal))
        {
            // What only comes in is no refund of anything.
            if (party.Any(line => line.Amount.IsNegative))
            {
                string name = Name(party, potOf);
                spent.AddRange(party.Select(line => (name, line)));
            }
        }

        Dictionary<string, SpendingSummary> weeks = Spending.ByWeek(spent, span.Start, span.End).ToDictionary(one => one.Label, StringComparer.Ordinal);
        Dictionary<string, SpendingSummary> months = Spending.ByMonth(spent, span.Start, span.End).ToDictionary(one => one.Label, StringComparer.Ordinal);
        return
        [
            .. spent.GroupBy(pair => pair.Label, pair => pair.Line, StringComparer.Ordinal)
                .Select(label => new Habit(label.Key, weeks.GetValueOrDefault(label.Key), months.GetValueOrDefault(label.Key), [.. label]))
                .OrderByDescending(habit => habit.YearInMinorUnits)
                .ThenByDescending(habit => habit.Total.MinorUnits)
                .ThenBy(habit => habit.Name, StringComparer.Ordinal),
        ];
    }

    private static string Key(StatementLine line, Func<StatementLine, string?> potOf) =>
        potOf(line) is { } pot ? "pot " + pot : line.Kind == LineKind.Cash ? "cash" : "party " + PartyKey.Of(line);

    private static string Name(IGrouping<string, StatementLine> party, Func<StatementLine, string?> potOf) =>
        potOf(party.First()) ?? (party.Key == "cash" ? Cash : PartyName.Of(party) is { Length: > 0 } name ? name : Nameless);
}
