using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;
using Payday.Statements.Sums;

namespace Payday.Statements.Learning;

/// <summary>All that statements say of one account, each line once.</summary>
/// <param name="Account">The account's number as the files write it; empty where they don't say.</param>
/// <param name="Currency">Its currency.</param>
/// <param name="IsCard">Whether it is of a card.</param>
/// <param name="From">The first day of the earliest statement.</param>
/// <param name="To">The last day of the latest one: the lines are complete up to it.</param>
/// <param name="Lines">The booked lines, oldest first.</param>
public sealed record AccountHistory(string Account, Currency Currency, bool IsCard, LocalDate From, LocalDate To, ImmutableArray<StatementLine> Lines)
{
    /// <summary>The booked balance at the end of the latest statement that has one; null where none does.</summary>
    public Balance? Closing { get; init; }

    /// <summary>The last day that <see cref="Closing"/> is of; null where there is none.</summary>
    public LocalDate? ClosedOn { get; init; }

    /// <summary>Where a statement in between is missing.</summary>
    public ImmutableArray<StatementStep> Missing { get; init; } = [];

    /// <summary>How many days it covers, both ends included.</summary>
    public int Days => Period.DaysBetween(From, To) + 1;

    /// <summary>The histories of statements, the one with the most lines first. A statement without a line or a day says nothing.</summary>
    /// <remarks>A file given twice, and files that overlap, count once.</remarks>
    public static ImmutableArray<AccountHistory> Of(IEnumerable<Statement> statements)
    {
        ArgumentNullException.ThrowIfNull(statements);
        return
        [
            .. statements
                .Where(statement => statement is { From: not null, To: not null })
                .GroupBy(statement => (statement.Account, statement.Currency))
                .Select(account => OfAccount([.. account.OrderBy(one => one.From).ThenBy(one => one.To).ThenBy(one => one.Number ?? 0)]))
                .Where(history => !history.Lines.IsEmpty)
                .OrderByDescending(history => history.Lines.Length)
                .ThenBy(history => history.Account, StringComparer.Ordinal),
        ];
    }

    private static AccountHistory OfAccount(Statement[] inOrder)
    {
        var lines = new List<StatementLine>();
        LocalDate to = inOrder[0].To!.Value;
        foreach (Statement statement in inOrder)
        {
            LocalDate known = to;
            lines.AddRange(Repeats.Of(statement.Lines, [.. lines], []).Where(line => IsNew(line, known)).Select(line => line.Line));
            to = LocalDate.Max(to, statement.To!.Value);
        }

        Statement? closed = inOrder.Where(one => one.Closing is { } closing && closing.Amount.Currency == one.Currency).MaxBy(one => one.To!.Value);
        return new AccountHistory(inOrder[0].Account, inOrder[0].Currency, inOrder.Any(one => one.IsCard), inOrder[0].From!.Value, to, [.. lines.OrderBy(line => line.Date)])
        {
            Closing = closed?.Closing,
            ClosedOn = closed?.Closing!.Date ?? closed?.To,
            Missing = [.. StatementChain.Of(inOrder).Where(step => step.Link == ChainLink.Missing)],
        };
    }

    // Two formats word a line differently: within days that were known already it is the known one, on their last day another may have come.
    private static bool IsNew(LineRepeat line, LocalDate known) =>
        line.Kind is RepeatKind.New or RepeatKind.Booked || (line.Kind == RepeatKind.Unsure && line.Line.Date >= known);
}
