using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.StatementTaking;
using Payday.Statements.Lines;
using Payday.Statements.Sums;

namespace Payday.Statements.Taking;

/// <summary>The statements that may be missing between those taken and those at hand.</summary>
internal static class StatementGaps
{
    /// <summary>The steps at which one may be missing and that the statements at hand are a part of.</summary>
    public static ImmutableArray<StatementStep> Of(Book book, IReadOnlyList<Statement> statements)
    {
        // Of one account, whatever each file calls it.
        Statement[] here = [.. statements.Select(statement => statement with { Account = "" })];
        Statement[] known = [.. TakenLines.Statements(book).Select(taken => Of(taken, book))];
        return [.. StatementChain.Of([.. known, .. here]).Where(step => step.Link == ChainLink.Missing && (here.Contains(step.Before) || here.Contains(step.After)))];
    }

    private static Statement Of(TakenStatement taken, Book book) => new(StatementFormat.Csv, book.Household.Currency)
    {
        From = taken.From,
        To = taken.To,
        Number = taken.Sequence,
        Opening = taken.Opening is { } opening ? new Balance(opening, taken.From, 0) : null,
        Closing = taken.Closing is { } closing ? new Balance(closing, taken.To, 0) : null,
    };
}
