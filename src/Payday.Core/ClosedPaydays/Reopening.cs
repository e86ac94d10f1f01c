using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Undo;

namespace Payday.Core.ClosedPaydays;

/// <summary>Taking the last closed payday up again: all that it wrote is undone, and its decisions are a draft once more.</summary>
public static class Reopening
{
    /// <summary>Reopens the last closed payday.</summary>
    /// <param name="book">The book.</param>
    /// <param name="today">The day on which it is undone.</param>
    /// <returns>The book afterwards; or what stands in its way.</returns>
    /// <remarks>
    /// Rule (design, section 6): it can be reopened until something later depends on it, which any movement written
    /// since may do, unless that is undone too or is what a new debt or pot began with.
    /// </remarks>
    public static Result<Book> Of(Book book, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.LastClosed is not { } last)
        {
            return Result.Refused<Book>(new ReopeningFault.NoneClosed());
        }

        if (InTheWay(book) is { } later)
        {
            return Result.Refused<Book>(later);
        }

        string reason = $"payday of {PlainDates.DayMonthYear(last.Payday)} reopened";
        Result<ImmutableArray<Movement>> reverses = book.Ledger.Reverse(
            book.Ledger.Standing.Where(movement => movement.Number >= last.FirstMovement && movement.Number <= last.LastMovement).Select(movement => movement.Number),
            today,
            reason);
        if (!reverses.Ok)
        {
            return Result.Refused<Book>(reverses.Faults);
        }

        Ledger ledger = book.Ledger.Add(reverses.Value);
        if (LedgerCheck.Faults(ledger.Balances).FirstOrDefault() is { } fault)
        {
            return Result.Refused<Book>(new ReopeningFault.Unsound(last.Payday, fault));
        }

        return Result.Of(book with
        {
            Ledger = ledger,
            Closed = book.Closed[..^1],
            Draft = DraftFit.To(book.Household, last.Draft),
            Weeks = book.Weeks.Without(last),
        });
    }

    /// <summary>A later payday that was begun, and whose decisions go when the last closed one is taken up again; null for none.</summary>
    public static RoutineDraft? Drops(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Draft is { HasDecisions: true } draft ? draft : null;
    }

    /// <summary>The last thing written since the last closed payday, which may depend on it; null for nothing.</summary>
    public static Obstacle? InTheWay(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.LastClosed is not { } last)
        {
            return null;
        }

        if (book.Ledger.Standing.LastOrDefault(movement => movement.Number > last.LastMovement && !IsOpening(movement)) is { } later)
        {
            return new Obstacle.WrittenSince(last.Payday, BookEntry.Of(book, later.Number) ?? new BookEntry.Movement(later.Number));
        }

        // Nor does a due that was waived with nothing held for it.
        if (book.Weeks.StandingPayments.LastOrDefault(payment => payment.FirstMovement > last.LastMovement) is { } payment)
        {
            return new Obstacle.WrittenSince(last.Payday, BookEntry.Of(book, payment));
        }

        if (book.Weeks.StandingEntries.LastOrDefault(entry => entry.Counted is not null && entry.FirstMovement > last.LastMovement) is { } loose)
        {
            return new Obstacle.WrittenSince(last.Payday, BookEntry.Of(loose));
        }

        if (book.Weeks.ReceivedOn(last.Payday) is { } received)
        {
            return new Obstacle.WrittenSince(last.Payday, new BookEntry.Received(received.Payday));
        }

        // A count that found all as it should be writes no movement, and has seen the payday all the same.
        if (book.Weeks.StandingCounts.LastOrDefault(count => count.FirstMovement > last.LastMovement && count.Date >= last.Payday) is { } count)
        {
            return new Obstacle.WrittenSince(last.Payday, BookEntry.Of(book, count));
        }

        return AccountLines.Seen(book, book.Ledger.Standing.Select(movement => movement.Number).Where(number => number >= last.FirstMovement && number <= last.LastMovement)) is { } reconciled
            ? new Obstacle.AtBank(new BookEntry.Payday(last.Payday), BookEntry.Of(reconciled))
            : null;
    }

    private static bool IsOpening(Movement movement) =>
        movement.From is LedgerEnd.Outside { Kind: OutsideKind.Opening } || movement.To is LedgerEnd.Outside { Kind: OutsideKind.Opening };
}
