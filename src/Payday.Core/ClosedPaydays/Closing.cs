using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Routines;

namespace Payday.Core.ClosedPaydays;

/// <summary>Closing a payday: its movements and its record.</summary>
/// <param name="Closed">The record.</param>
/// <param name="Movements">What it writes in the ledger, numbered.</param>
/// <param name="Book">The book afterwards.</param>
public sealed record Closing(ClosedPayday Closed, ImmutableArray<Movement> Movements, Book Book)
{
    /// <summary>Closes a payday.</summary>
    /// <returns>The closing; or all that stands in its way.</returns>
    /// <remarks>
    /// Rules (design, section 4): nothing is left to place, the purposes add up to their places, and no
    /// cash is below zero.
    /// </remarks>
    public static Result<Closing> Of(RoutinePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<ClosingFault> obstacles = ClosingChecks.Obstacles(plan);
        if (!obstacles.IsEmpty)
        {
            return Result.Refused<Closing>([.. obstacles]);
        }

        Book book = plan.Book;
        Book written = ReusedOwedBack.Settled(book with { Ledger = book.Ledger.Add(ClosingMovements.Of(plan)) }, plan);
        Ledger ledger = written.Ledger;
        ImmutableArray<Movement> added = [.. ledger.Movements.Skip(book.Ledger.Movements.Count)];
        if (LedgerCheck.Faults(ledger.Balances).FirstOrDefault() is { } fault)
        {
            return Result.Refused<Closing>(fault);
        }

        ClosedPayday closed = ClosingRecord.Of(plan, book.Ledger.Movements.Count + 1, ledger.Movements.Count);
        return Result.Of(new Closing(
            closed,
            added,
            written with { Closed = book.Closed.Add(closed), Draft = null }));
    }
}
