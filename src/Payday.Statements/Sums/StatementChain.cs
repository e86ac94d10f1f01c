using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;

namespace Payday.Statements.Sums;

/// <summary>Statements put in order, account by account, and how each follows the one before.</summary>
/// <remarks>
/// What a statement closes with is what the next opens with (SWIFT category 9, usage rules of field 60a; ISO 20022: PRCD is the
/// CLBD before). Where a format has no opening balance the closing one minus the lines stands in for it.
/// </remarks>
public static class StatementChain
{
    /// <summary>The steps between statements, in any order and of any accounts, imported at once or years apart.</summary>
    public static ImmutableArray<StatementStep> Of(IEnumerable<Statement> statements)
    {
        ArgumentNullException.ThrowIfNull(statements);
        var steps = ImmutableArray.CreateBuilder<StatementStep>();
        foreach (IGrouping<(string, Currency), Statement> account in statements.GroupBy(statement => (statement.Account, statement.Currency)))
        {
            Statement[] inOrder =
            [
                .. account
                    .OrderBy(statement => statement.From ?? LocalDate.MinIsoValue)
                    .ThenBy(statement => statement.To ?? LocalDate.MinIsoValue)
                    .ThenBy(statement => statement.Number ?? 0),
            ];
            for (int i = 1; i < inOrder.Length; i++)
            {
                steps.Add(Step(inOrder[i - 1], inOrder[i]));
            }
        }

        return steps.ToImmutable();
    }

    private static StatementStep Step(Statement before, Statement after)
    {
        Money? closes = Usable(before.Closing, before.Currency);
        Money? opens = Usable(after.Opening, after.Currency) ?? Implied(after);
        if (closes is not null && closes == opens)
        {
            return new StatementStep(before, after, ChainLink.Follows, null);
        }

        // The last day of one may be the first of the next: a day isn't closed before its end.
        if (before.To is { } end && after.From is { } begin && begin < end)
        {
            return new StatementStep(before, after, ChainLink.Overlaps, null);
        }

        bool isSkipped = before.Number is { } number && after.Number is { } next && next > number + 1;
        return closes is { } known && opens is { } found && after.Opening is not null
            ? new StatementStep(before, after, ChainLink.Missing, found - known)
            : new StatementStep(before, after, isSkipped ? ChainLink.Missing : ChainLink.Unknown, null);
    }

    private static Money? Usable(Balance? balance, Currency currency) =>
        balance is { } found && found.Amount.Currency == currency ? found.Amount : null;

    private static Money? Implied(Statement statement) => Usable(statement.Closing, statement.Currency) is { } closing
        ? closing - Money.Sum(statement.Lines.Select(line => line.Amount), statement.Currency)
        : null;
}
