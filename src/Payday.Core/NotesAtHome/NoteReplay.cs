using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Ledgers;

namespace Payday.Core.NotesAtHome;

/// <summary>Follows the notes through the ledger: all movements, and what the records tell of them, folded in their order.</summary>
internal static class NoteReplay
{
    /// <summary>What is known of the notes after all that happened.</summary>
    public static PotNotes Of(Book book)
    {
        var heaps = new NoteHeaps(book);
        NoteEvent[] events = [.. NoteEvent.Of(book)];
        var begins = new Queue<NoteEvent>(events.OrderBy(one => one.First));
        var told = new Queue<NoteEvent>(events.OrderBy(one => one.Last));
        long openUntil = 0;
        foreach (Movement movement in book.Ledger.Movements)
        {
            // What was undone, and what undid it, left the notes where they were.
            if (book.Ledger.Stands(movement))
            {
                heaps.Move(movement);
            }

            while (begins.TryPeek(out NoteEvent? begun) && begun.First <= movement.Number)
            {
                openUntil = Math.Max(openUntil, begins.Dequeue().Last);
            }

            while (told.TryPeek(out NoteEvent? next) && next.Last <= movement.Number)
            {
                heaps.Tell(told.Dequeue());
            }

            // In the midst of a record its movements and notes don't agree yet.
            if (movement.Number >= openUntil)
            {
                heaps.ForgetWhatDisagrees();
            }
        }

        return new PotNotes(heaps.Known.ToImmutableDictionary());
    }
}
