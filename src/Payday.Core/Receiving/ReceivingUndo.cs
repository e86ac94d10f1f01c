using NodaTime;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Undo;

namespace Payday.Core.Receiving;

/// <summary>Taking back which notes the bank gave: what the slip asked for stands again.</summary>
public static class ReceivingUndo
{
    /// <summary>The notes that were entered for the last closed payday and stand; null where there are none.</summary>
    public static NotesReceived? Last(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.LastClosed is { } closed ? book.Weeks.ReceivedOn(closed.Payday) : null;
    }

    /// <summary>Takes back what was entered for the last closed payday.</summary>
    /// <param name="book">The book.</param>
    /// <param name="date">The day on which it is taken back.</param>
    /// <returns>The book afterwards; or why it can't be.</returns>
    public static Result<Book> Of(Book book, LocalDate date)
    {
        if (Last(book) is not { } received)
        {
            return Result.Refused<Book>(new ReceivingFault.NothingEntered());
        }

        if (InTheWay(book) is { } obstacle)
        {
            return Result.Refused<Book>(obstacle);
        }

        var taking = new TakingBack(book, new BookEntry.Received(received.Payday));
        taking.AddRange(received.FirstMovement, received.LastMovement);
        return taking.Done(date, "notes received taken back", weeks => weeks with
        {
            Received = weeks.Received.SetItem((int)received.Number - 1, received with { Undone = true }),
        });
    }

    /// <summary>
    /// What is in the way of entering or taking back notes of the last closed payday: a fill of it that is marked, a count of its
    /// pots since, and whatever else moved their cash. Null for nothing.
    /// </summary>
    public static Obstacle? InTheWay(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.LastClosed is not { } closed)
        {
            return null;
        }

        HashSet<PotId> pots = [.. closed.Parts.Select(part => part.PotId)];
        NotesReceived? own = Last(book);
        BookEntry? later = book.Weeks.StandingCounts.LastOrDefault(count => count.FirstMovement > closed.LastMovement && pots.Contains(count.PotId)) is { } count
            ? BookEntry.Of(book, count)
            : book.Ledger.Standing.LastOrDefault(movement => movement.Number > closed.LastMovement
                && !(own?.FirstMovement <= movement.Number && movement.Number <= own.LastMovement)
                && movement.From is not LedgerEnd.Outside { Kind: OutsideKind.Opening }
                && (IsCashOf(pots, movement.From) || IsCashOf(pots, movement.To))) is { } moved
            ? BookEntry.Of(book, moved.Number) ?? new BookEntry.Movement(moved.Number)
            : book.Weeks.Fills.LastOrDefault(fill => fill.Key.Payday == closed.Payday) is { } fill
            ? BookEntry.Of(book, fill.Key)
            : null;
        return later is null ? null : new Obstacle.NotesGoneOn(closed.Payday, later);
    }

    private static bool IsCashOf(HashSet<PotId> pots, LedgerEnd end) =>
        end is LedgerEnd.At { Place: Place.Cash, Purpose.PotId: { } pot } && pots.Contains(pot);
}
