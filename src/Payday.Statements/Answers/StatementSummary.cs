using System.Collections.Immutable;
using Payday.Core.Amounts;
using NodaTime;
using Payday.Statements.Lines;
using Payday.Statements.Sums;

namespace Payday.Statements.Answers;

/// <summary>What a statement comes to, in one row.</summary>
/// <param name="Currency">Its currency.</param>
/// <param name="From">Its first day; null where nothing says.</param>
/// <param name="To">Its last day; null where nothing says.</param>
/// <param name="Lines">How many booked lines were read.</param>
/// <param name="Sum">Their sum.</param>
/// <param name="Opening">The booked balance before them; null where the format or the file has none.</param>
/// <param name="Closing">The booked balance after them, in OFX the ledger balance; null where there is none.</param>
/// <param name="AddsUp">Null where it can't be known.</param>
public sealed record StatementSummary(
    Currency Currency, LocalDate? From, LocalDate? To, int Lines, Money Sum, Money? Opening, Money? Closing, bool? AddsUp)
{
    /// <summary>The rows of statements, in their order.</summary>
    public static ImmutableArray<StatementSummary> Of(IEnumerable<Statement> statements)
    {
        ArgumentNullException.ThrowIfNull(statements);
        return [.. statements.Select(Of)];
    }

    private static StatementSummary Of(Statement statement)
    {
        AddingUp sum = AddingUp.Of(statement);
        return new StatementSummary(
            statement.Currency, statement.From, statement.To, statement.Lines.Length, sum.Sum, statement.Opening?.Amount, statement.Closing?.Amount, sum.AddsUp);
    }
}
