using Payday.Core.Cash;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Fills;
using Payday.Core.Ledgers;

namespace Payday.Core.NotesAtHome;

/// <summary>What a record says of the notes, once its movements are made. One of the nested cases.</summary>
/// <param name="First">The number of the record's first movement: from here on its movements and notes don't agree yet.</param>
/// <param name="Last">The number of its last one, after which they do.</param>
internal abstract record NoteEvent(long First, long Last)
{
    /// <summary>A payday was closed: its notes lie in the pots, and the rest is loose.</summary>
    public sealed record Closed(ClosedPayday Payday) : NoteEvent(Payday.FirstMovement, Payday.LastMovement);

    /// <summary>Other notes were given than a payday's slip asked for.</summary>
    /// <param name="Notes">Which.</param>
    /// <param name="Payday">The payday.</param>
    public sealed record Received(NotesReceived Notes, ClosedPayday Payday) : NoteEvent(Math.Min(Notes.FirstMovement, Notes.LastMovement), Notes.LastMovement);

    /// <summary>A pot's part went in the wallet.</summary>
    /// <param name="Part">The part.</param>
    /// <param name="Movement">The movement it went by.</param>
    public sealed record Filled(FillPart Part, long Movement) : NoteEvent(Movement, Movement);

    /// <summary>Owed-back cash was pulled, with swaps where it had to be.</summary>
    public sealed record Returned(CashReturn Back) : NoteEvent(Back.FirstMovement, Back.LastMovement);

    /// <summary>A pot was counted. A count without movements is told where the one before it stands.</summary>
    public sealed record Counted(WeekCount Count) : NoteEvent(Math.Min(Count.FirstMovement, Count.LastMovement), Count.LastMovement);

    /// <summary>What a count left moved on.</summary>
    /// <param name="Count">The count.</param>
    /// <param name="Movement">The movement it went by.</param>
    /// <param name="To">Where it went.</param>
    public sealed record MovedOn(WeekCount Count, long Movement, LedgerEnd To) : NoteEvent(Movement, Movement);

    /// <summary>Cash was moved, or came in or went by an account entry.</summary>
    /// <param name="From">Where it came from.</param>
    /// <param name="To">Where it went.</param>
    /// <param name="Amount">How much.</param>
    /// <param name="Notes">The notes; null where they aren't known.</param>
    /// <param name="Movement">The movement it went by.</param>
    public sealed record Passed(LedgerEnd From, LedgerEnd To, Money Amount, Notes? Notes, long Movement) : NoteEvent(Movement, Movement);

    /// <summary>The loose notes were counted. One that found them worth the same is told where the movement before it stands.</summary>
    /// <param name="Entry">Its entry.</param>
    public sealed record LooseCounted(AccountEntry Entry) : NoteEvent(Math.Min(Entry.FirstMovement, Entry.LastMovement), Entry.LastMovement);

    /// <summary>All events of a book; of those that are told at one movement, in the order in which they happen.</summary>
    public static IEnumerable<NoteEvent> Of(Book book) => Of(book, book.Closed, FillPart.Done(book), book.Weeks);

    /// <summary>The events of some of a book's records.</summary>
    /// <param name="book">The book.</param>
    /// <param name="closed">Which of its paydays.</param>
    /// <param name="filled">Which of its fills that are done.</param>
    /// <param name="weeks">Which of its other records.</param>
    public static IEnumerable<NoteEvent> Of(Book book, IEnumerable<ClosedPayday> closed, IEnumerable<FillPart> filled, WeekRecords weeks) =>
    [
        .. closed.Where(payday => payday.LastMovement >= payday.FirstMovement).Select(payday => new Closed(payday)),
        .. weeks.StandingReceived.Select(received => new Received(received, book.Closed.Last(payday => payday.Payday == received.Payday))),
        .. filled.Where(part => part.Marked?.Movement is not null).Select(part => new Filled(part, part.Marked!.Movement!.Value)),
        .. weeks.StandingReturns.Where(back => back.LastMovement >= back.FirstMovement).Select(back => new Returned(back)),
        .. weeks.StandingCounts.SelectMany(count => Of(book.Ledger, count)),
        .. weeks.StandingMoves.SelectMany(move => Of(book.Ledger, move.FirstMovement, move.LastMovement, move.Notes)),
        .. weeks.StandingEntries.Where(entry => entry.Counted is null).SelectMany(entry => Of(book.Ledger, entry.FirstMovement, entry.LastMovement, entry.Notes)),
        .. weeks.StandingEntries.Where(entry => entry.Counted is not null).Select(entry => new LooseCounted(entry)),
    ];

    // Where it came from the wallet and from home, nobody knows which notes were which.
    private static IEnumerable<NoteEvent> Of(Ledger ledger, long first, long last, Notes? notes)
    {
        for (long number = first; number <= last; number++)
        {
            Movement movement = ledger.Movements[(int)number - 1];
            yield return new Passed(movement.From, movement.To, movement.Amount, first == last ? notes : null, number);
        }
    }

    private static IEnumerable<NoteEvent> Of(Ledger ledger, WeekCount count)
    {
        if (count.LastMovement > 0)
        {
            yield return new Counted(count);
        }

        if (count.Move is { } move)
        {
            yield return new MovedOn(count, move, ledger.Movements[(int)move - 1].To);
        }
    }
}
