using Payday.Core.Books;
using Payday.Core.Ledgers;

namespace Payday.Core.NotesAtHome;

/// <summary>Follows the notes through the ledger: all movements, and what the records tell of them, folded in their order.</summary>
internal static class NoteReplay
{
    /// <summary>What is known of the notes after all that happened.</summary>
    public static PotNotes Of(Book book) => Told(book, new NoteHeaps(book), [.. NoteEvent.Of(book)], told: 0);

    /// <summary>The same, gone on with from what is known of the book as it was before, where what happened since only adds to that.</summary>
    /// <param name="before">The book as it was.</param>
    /// <param name="book">The book.</param>
    public static PotNotes Of(Book before, Book book) => NewEvents.Of(before, book) is { } events
        ? Told(book, new NoteHeaps(book, PotNotes.Of(before)), events, before.Ledger.Movements.Count)
        : Of(book);

    private static PotNotes Told(Book book, NoteHeaps heaps, NoteEvent[] events, int told)
    {
        var tells = new InTurn(events, one => one.Last);
        var begins = new InTurn(events, one => one.First);
        long openUntil = 0;
        for (long number = told + 1; number <= book.Ledger.Movements.Count; number++)
        {
            // What was undone, and what undid it, left the notes where they were.
            if (book.Ledger.MovedBy(number) is { } moved)
            {
                heaps.Move(moved);
            }

            while (begins.By(number) is { } begun)
            {
                openUntil = Math.Max(openUntil, begun.Last);
            }

            while (tells.By(number) is { } one)
            {
                heaps.Tell(one);
            }

            // In the midst of a record its movements and notes don't agree yet.
            if (number >= openUntil)
            {
                heaps.ForgetWhatDisagrees();
            }
        }

        return new PotNotes(heaps.Known);
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
