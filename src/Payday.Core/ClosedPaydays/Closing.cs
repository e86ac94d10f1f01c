using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Routines;

namespace Payday.Core.ClosedPaydays;

/// <summary>Closing a payday: its movements and its record.</summary>
public static class Closing
{
    /// <summary>Closes a payday.</summary>
    /// <returns>The book afterwards; or all that stands in its way.</returns>
    /// <remarks>
    /// Rules (design, section 4): nothing is left to place, the purposes add up to their places, and no
    /// cash is below zero.
    /// </remarks>
    public static Result<Book> Of(RoutinePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<ClosingFault> obstacles = ClosingChecks.Obstacles(plan);
        if (!obstacles.IsEmpty)
        {
            return Result.Refused<Book>([.. obstacles]);
        }

        Book book = plan.Book;
        Book written = ReusedOwedBack.Settled(book with { Ledger = book.Ledger.Add(ClosingMovements.Of(plan)) }, plan);
        if (LedgerCheck.Faults(written.Ledger.Balances).FirstOrDefault() is { } fault)
        {
            return Result.Refused<Book>(fault);
        }

        ClosedPayday closed = ClosingRecord.Of(plan, book.Ledger.Movements.Count + 1, written.Ledger.Movements.Count);
        return Result.Of(written with { Closed = book.Closed.Add(closed), Draft = null });
    }
}
