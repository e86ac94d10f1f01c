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
    /// <returns>The closing; or one sentence for each thing that stands in its way, joined by a blank.</returns>
    /// <remarks>
    /// Rules (design, section 4): nothing is left to place, the purposes add up to their places, and no
    /// cash is below zero.
    /// </remarks>
    public static Result<Closing> Of(RoutinePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<string> obstacles = ClosingChecks.Obstacles(plan);
        if (!obstacles.IsEmpty)
        {
            return Result.Refused<Closing>(string.Join(' ', obstacles));
        }

        Book book = plan.Book;
        Book written = ReusedOwedBack.Settled(book with { Ledger = book.Ledger.Add(ClosingMovements.Of(plan)) }, plan);
        Ledger ledger = written.Ledger;
        ImmutableArray<Movement> added = [.. ledger.Movements.Skip(book.Ledger.Movements.Count)];
        string? fault = LedgerCheck.Faults(ledger.Balances, book.Household.Settings.Numbers).FirstOrDefault();
        if (fault is not null)
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
