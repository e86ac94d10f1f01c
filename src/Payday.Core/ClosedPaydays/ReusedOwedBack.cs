using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.CashReturns;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Routines;

namespace Payday.Core.ClosedPaydays;

/// <summary>
/// Owed-back notes that go into pots: the cash changes its purpose, and in its stead the account keeps the money that waited
/// there for the pot's notes.
/// </summary>
internal static class ReusedOwedBack
{
    /// <summary>The book once they are settled, with a return that says so; as it was where none are used.</summary>
    public static Book Settled(Book book, RoutinePlan plan)
    {
        NoteOrigins[] reused = [.. NoteOrigins.Of(plan.Withdrawal).Where(pot => !pot.OwedBack.IsEmpty)];
        if (reused.Length == 0)
        {
            return book;
        }

        var writer = new WeekWriter(book);
        var back = new ReturnWriter(writer, plan.Period.First, plan.Period.First);
        foreach (NoteOrigins pot in reused)
        {
            foreach ((PotId from, ImmutableSortedDictionary<long, int> notes) in pot.OwedBack)
            {
                Amounts.Money worth = NoteBag.Worth(notes, book.Household.Currency);
                writer.Move(
                    plan.Period.First, LedgerEnd.InCash(Purpose.OwedBack(from)), LedgerEnd.InCash(Purpose.Pot(pot.PotId)), worth, "owed-back notes", plan.Period.First);
                back.Settle(from, worth, notes, LedgerEnd.InAccount(Purpose.KeptBack(pot.PotId)));
            }
        }

        back.Finish([]);
        return writer.Book;
    }
}
