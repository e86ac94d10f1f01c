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
        var told = new InTurn(events, one => one.Last);
        var begins = new InTurn(events, one => one.First);
        long openUntil = 0;
        foreach (Movement movement in book.Ledger.Movements)
        {
            // What was undone, and what undid it, left the notes where they were.
            if (book.Ledger.Stands(movement))
            {
                heaps.Move(movement);
            }

            while (begins.By(movement.Number) is { } begun)
            {
                openUntil = Math.Max(openUntil, begun.Last);
            }

            while (told.By(movement.Number) is { } one)
            {
                heaps.Tell(one);
            }

            // In the midst of a record its movements and notes don't agree yet.
            if (movement.Number >= openUntil)
            {
                heaps.ForgetWhatDisagrees();
            }
        }

        return new PotNotes(heaps.Known.ToDictionary());
    }

    // Events by the number of a movement; those of one stay in their order.
    private sealed class InTurn
    {
        private readonly NoteEvent[] events;
        private readonly (long Number, int Place)[] turns;
        private int next;

        public InTurn(NoteEvent[] events, Func<NoteEvent, long> numberOf)
        {
            this.events = events;
            turns = new (long, int)[events.Length];
            for (int i = 0; i < events.Length; i++)
            {
                turns[i] = (numberOf(events[i]), i);
            }

            Array.Sort(turns);
        }

        /// <summary>Takes the next one whose movement has come; null where it hasn't.</summary>
        public NoteEvent? By(long number) => next < turns.Length && turns[next].Number <= number ? events[turns[next++].Place] : null;
    }
}
