using System.Collections.Immutable;
using NodaTime;

namespace Payday.Statements.Lines;

/// <summary>Puts lines in order and finds the days of a statement that doesn't state them.</summary>
internal static class StatementBuilder
{
    /// <summary>The statement with its lines oldest first and its first and last day filled in where they are known.</summary>
    /// <param name="statement">With the lines in the file's order.</param>
    /// <param name="areInOrder">Whether the lines are oldest first already, proven by their balances.</param>
    public static Statement Complete(Statement statement, bool areInOrder = false)
    {
        ImmutableArray<StatementLine> lines = areInOrder ? statement.Lines : OldestFirst(statement.Lines);
        IEnumerable<LocalDate> days =
            lines.Select(line => line.Date).Concat(new[] { statement.Opening?.Date, statement.Closing?.Date }.OfType<LocalDate>());
        LocalDate? from = statement.From;
        LocalDate? to = statement.To;
        foreach (LocalDate day in days)
        {
            from = statement.From ?? (from is { } first ? LocalDate.Min(first, day) : day);
            to = statement.To ?? (to is { } last ? LocalDate.Max(last, day) : day);
        }

        return statement with { Lines = lines, Pending = OldestFirst(statement.Pending), From = from ?? to, To = to ?? from };
    }

    // Banks list newest or oldest first: within a day the file's own direction is kept, which is what a running balance follows.
    private static ImmutableArray<StatementLine> OldestFirst(ImmutableArray<StatementLine> lines)
    {
        bool newestFirst = lines.Length > 1 && lines[0].Date > lines[^1].Date;
        IEnumerable<StatementLine> inOrder = newestFirst ? lines.Reverse() : lines;
        return [.. inOrder.OrderBy(line => line.Date)];
    }
}
