using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.NotesAtHome;
using Payday.Core.Pots;

namespace Payday.Core.Moves;

/// <summary>The notes of a move: named by the person, or the fewest of the loose ones; those of a pot that aren't known stay so.</summary>
internal static class MoveNotes
{
    /// <summary>The move with its notes; or why they can't be.</summary>
    public static Result<MoveEntry> Of(Book book, MoveEntry entry)
    {
        MoveWay way = Moving.WayOf(entry);
        if (entry.Notes is { } named)
        {
            return Named(book, entry, way, named);
        }

        // What is loose is always known by value.
        if (entry.From == MoveEnds.Loose)
        {
            if (book.Ledger.Balances[entry.From] < entry.Amount)
            {
                return Result.Refused<MoveEntry>(new MoveFault.HasLess(entry.From, null, book.Ledger.Balances[entry.From], entry.Amount));
            }

            return NotePull.Exactly(PotNotes.Of(book).Loose, entry.Amount.MinorUnits) is { } pull
                ? Result.Of(entry with { Notes = pull.Pulls })
                : Result.Refused<MoveEntry>(new MoveFault.NotInNotes(entry.Amount));
        }

        return entry.To == MoveEnds.Loose ? Result.Refused<MoveEntry>(new MoveFault.NotesNeeded()) : Result.Of(entry);
    }

    private static Result<MoveEntry> Named(Book book, MoveEntry entry, MoveWay way, Notes named)
    {
        if (way is MoveWay.InAccount or MoveWay.OwedBack or MoveWay.NextWithdrawal)
        {
            return Result.Refused<MoveEntry>(new MoveFault.NoNotesMove());
        }

        if (named.Worth(entry.Amount.Currency) is var worth && worth != entry.Amount)
        {
            return Result.Refused<MoveEntry>(new MoveFault.NotesDiffer(worth, entry.Amount));
        }

        return There(book, entry.From) is { } there && !there.Covers(named)
            ? Result.Refused<MoveEntry>(new MoveFault.NotesNotThere(entry.From, LedgerEnds.NameIn(book.Household, entry.From)))
            : Result.Of(entry);
    }

    // Some of a wallet that was filled and not counted by notes since may be spent and changed by now: the person sees them.
    private static Notes? There(Book book, LedgerEnd from)
    {
        PotNotes notes = PotNotes.Of(book);
        return from == MoveEnds.Loose ? notes.Loose
            : MoveEnds.CashPot(book, from) is { } pot && PotNotes.AreSeen(book, pot) ? notes.ToPullFrom(pot)
            : null;
    }
}
