using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.NotesAtHome;

/// <summary>What happened to the notes since a book was as it was before.</summary>
internal static class NewEvents
{
    /// <summary>The events since; null where anything else than adding was done, or what was added tells of what was there before.</summary>
    /// <param name="before">The book as it was.</param>
    /// <param name="book">The book.</param>
    public static NoteEvent[]? Of(Book before, Book book)
    {
        WeekRecords was = before.Weeks;
        WeekRecords now = book.Weeks;
        if (!ReferenceEquals(before.Household, book.Household) || !GoesOn(before.Ledger, book.Ledger)
            || !Begins(before.Closed, book.Closed) || !Begins(was.Fills, now.Fills) || was.Counts.OtherThanIn(now.Counts).Any() || !Begins(was.Moves, now.Moves) || !Begins(was.Entries, now.Entries)
            || was.Received != now.Received || was.Returns != now.Returns)
        {
            return null;
        }

        NoteEvent[] events =
        [
            .. NoteEvent.Of(book, book.Closed.Skip(before.Closed.Length), Filled(book, now.Fills.Skip(was.Fills.Length)), WeekRecords.None with
            {
                Counts = [.. now.Counts.From(was.Counts.Count)],
                Moves = [.. now.Moves.Skip(was.Moves.Length)],
                Entries = [.. now.Entries.Skip(was.Entries.Length)],
            }),
        ];
        return Array.TrueForAll(events, one => one.First > before.Ledger.Movements.Count) ? events : null;
    }

    private static IEnumerable<FillPart> Filled(Book book, IEnumerable<WalletFill> fills)
    {
        ILookup<PotId, FillKey> keys = fills.ToLookup(fill => fill.Key.PotId, fill => fill.Key);
        return book.Household.Pots.Where(pot => FillPart.GoesThroughTheWallet(pot) && keys.Contains(pot.Id)).SelectMany(pot => FillPart.Of(book, pot, [.. keys[pot.Id]]));
    }

    // A ledger that goes on from another has its very movements, and undoes none of them.
    private static bool GoesOn(Ledger before, Ledger ledger)
    {
        int count = before.Movements.Count;
        return count > 0 && count <= ledger.Movements.Count && ReferenceEquals(before.Movements[count - 1], ledger.Movements[count - 1])
            && ledger.Since(before).All(movement => movement.Reverses is null);
    }

    // Whatever is made another one, such as by an undo, is another object.
    private static bool Begins<T>(ImmutableArray<T> first, ImmutableArray<T> all)
        where T : class
    {
        if (first == all)
        {
            return true;
        }

        if (first.Length > all.Length)
        {
            return false;
        }

        for (int i = 0; i < first.Length; i++)
        {
            if (!ReferenceEquals(first[i], all[i]))
            {
                return false;
            }
        }

        return true;
    }
}
