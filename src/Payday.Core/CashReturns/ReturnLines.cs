using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.NotesAtHome;
using Payday.Core.Pots;

namespace Payday.Core.CashReturns;

/// <summary>Finds the notes for a cash return: own notes first, then swaps with what is left over.</summary>
internal sealed class ReturnLines
{
    private readonly Book book;
    private readonly ReturnDraft draft;
    private readonly Dictionary<NoteStack, Notes> left = [];

    private ReturnLines(Book book, ReturnDraft draft)
    {
        this.book = book;
        this.draft = draft;
        PotNotes notes = PotNotes.Of(book);
        left[NoteStack.Loose] = notes.Loose;
        foreach (Pot pot in book.Household.Pots.Where(pot => pot.Place == Place.Cash))
        {
            if (notes.ToPullFrom(pot) is { } known)
            {
                left[NoteStack.Of(pot)] = known;
            }
        }
    }

    public static ImmutableArray<ReturnLine> Of(Book book, ReturnDraft draft)
    {
        var lines = new ReturnLines(book, draft);
        ILookup<PotId, OwedItem> items = OwedItems.Of(book).ToLookup(item => item.PotId);
        ReturnLine[] own =
        [
            .. from pot in book.Household.Pots
               let owes = PotMoney.OwedBack(book.Ledger.Balances, pot.Id)
               where owes.IsPositive
               select lines.Own(pot, owes, [.. items[pot.Id]]),
        ];

        // Swaps come last: what a pot pulls for itself can't be swapped away from it.
        return [.. own.Select(line => line.Way == ReturnWay.NoWay ? lines.Swapped(line) : line)];
    }

    private ReturnLine Own(Pot pot, Money owes, ImmutableArray<OwedItem> items)
    {
        bool goes = !draft.Leaves.Contains(pot.Id);
        if (draft.Picked.TryGetValue(pot.Id, out Notes? picked))
        {
            left.Remove(NoteStack.Of(pot));
            return new ReturnLine(pot, owes, items, ReturnWay.Picked, picked, null, goes, Fault(pot, owes, picked));
        }

        if (!left.TryGetValue(NoteStack.Of(pot), out Notes? there))
        {
            return new ReturnLine(pot, owes, items, ReturnWay.NotesUnknown, null, null, goes, null);
        }

        bool seen = PotNotes.AreSeen(book, pot);
        if (NotePull.Exactly(there, owes.MinorUnits) is not { } pull)
        {
            return !seen
                ? new ReturnLine(pot, owes, items, ReturnWay.NotesUnknown, null, null, goes, null)
                : new ReturnLine(pot, owes, items, ReturnWay.NoWay, null, null, false, null);
        }

        left[NoteStack.Of(pot)] = there.Less(pull.Pulls);
        return new ReturnLine(pot, owes, items, ReturnWay.Pull, pull.Pulls, null, goes, null);
    }

    // With the loose notes first, then with the pots in household order; of equally few notes the first.
    private ReturnLine Swapped(ReturnLine line)
    {
        NoteStack mine = NoteStack.Of(line.Pot);
        Notes own = left[mine];
        (NoteStack With, NotePull Pull)[] ways =
        [
            .. from with in book.Household.Pots.Select(NoteStack.Of).Prepend(NoteStack.Loose)
               where with != mine && left.ContainsKey(with) && IsSeen(with)
               let pull = NotePull.WithSwap(own, left[with], line.Owes.MinorUnits)
               where pull is not null
               orderby pull.Moved
               select (with, pull),
        ];
        if (ways.Length == 0)
        {
            return line;
        }

        (NoteStack partner, NotePull best) = ways[0];
        left[partner] = left[partner].Less(best.Gets).Plus(best.Gives);
        left[mine] = own.Less(best.Gives).Plus(best.Gets).Less(best.Pulls);
        return line with
        {
            Way = ReturnWay.Swap,
            Notes = best.Pulls,
            Swap = new NoteSwap(line.Pot.Id, partner.PotId, best.Gives, best.Gets),
            Goes = !draft.Leaves.Contains(line.Pot.Id),
        };
    }

    private bool IsSeen(NoteStack stack) => stack.PotId is not { } id || PotNotes.AreSeen(book, book.Household.Pots.Single(pot => pot.Id == id));

    private static ReturnFault.NotesDiffer? Fault(Pot pot, Money owes, Notes picked)
    {
        Money worth = picked.Worth(owes.Currency);
        return worth == owes ? null : new ReturnFault.NotesDiffer(pot.Name, worth, owes);
    }
}
