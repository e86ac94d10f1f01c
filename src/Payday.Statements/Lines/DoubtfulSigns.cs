using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Statements.Lines;

/// <summary>Where lines can be read two ways round, the way that makes the balances agree.</summary>
internal static class DoubtfulSigns
{
    /// <summary>Turns the doubtful lines round where the balances agree only so.</summary>
    /// <param name="statement">With the lines as written.</param>
    /// <param name="isDoubtful">Which lines can be read both ways.</param>
    /// <returns>The statement, and whether lines were turned. Where both ways or neither agree nothing is.</returns>
    public static (Statement Statement, bool Turned) Settle(Statement statement, Func<StatementLine, bool> isDoubtful)
    {
        if (statement.Opening is not { } opening || statement.Closing is not { } closing || !statement.Lines.Any(isDoubtful))
        {
            return (statement, false);
        }

        ImmutableArray<StatementLine> turned =
            [.. statement.Lines.Select(line => isDoubtful(line) ? line with { Amount = -line.Amount, Parts = [] } : line)];
        return !Closes(opening, statement.Lines, closing) && Closes(opening, turned, closing)
            ? (statement with { Lines = turned }, true)
            : (statement, false);
    }

    private static bool Closes(Balance opening, ImmutableArray<StatementLine> lines, Balance closing)
    {
        Int128 sum = opening.Amount.MinorUnits;
        foreach (StatementLine line in lines)
        {
            sum += line.Amount.MinorUnits;
        }

        return opening.Amount.Currency == closing.Amount.Currency && sum == closing.Amount.MinorUnits;
    }
}
