using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Fills;
using Payday.Core.Ledgers;

namespace Payday.Core.NotesAtHome;

/// <summary>What the records say of the notes at one movement.</summary>
internal sealed class NoteEvent
{
    /// <summary>The last movement of the record that begins here.</summary>
    public long Last { get; private set; }

    /// <summary>What changes once the movement is made.</summary>
    public List<Action<NoteReplay>> Changes { get; } = [];

    /// <summary>By the number of the movement at which it happens.</summary>
    public static Dictionary<long, NoteEvent> Of(Book book)
    {
        var events = new Dictionary<long, NoteEvent>();
        foreach (ClosedPayday closed in book.Closed.Where(closed => closed.LastMovement >= closed.FirstMovement))
        {
            At(closed.FirstMovement).Last = closed.LastMovement;
            At(closed.LastMovement).Changes.Add(replay => Close(replay, closed));
        }

        foreach (FillPart part in FillPart.Of(book).Where(part => part.Marked?.Movement is not null))
        {
            At(part.Marked!.Movement!.Value).Changes.Add(replay => Fill(replay, part));
        }

        foreach (CashReturn back in book.Weeks.StandingReturns.Where(back => back.LastMovement >= back.FirstMovement))
        {
            NoteEvent first = At(back.FirstMovement);
            first.Last = Math.Max(first.Last, back.LastMovement);
            At(back.LastMovement).Changes.Add(replay => Return(replay, back));
        }

        foreach (WeekCount count in book.Weeks.StandingCounts)
        {
            if (count.LastMovement >= count.FirstMovement)
            {
                At(count.FirstMovement).Last = count.LastMovement;
            }

            if (count.LastMovement > 0)
            {
                At(count.LastMovement).Changes.Add(replay => Count(replay, count));
            }

            if (count.Move is { } move)
            {
                LedgerEnd to = book.Ledger.Movements[(int)move - 1].To;
                At(move).Changes.Add(replay => MoveOn(replay, count, to));
            }
        }

        return events;

        NoteEvent At(long number) => events.TryGetValue(number, out NoteEvent? known) ? known : events[number] = new NoteEvent();
    }

    private static void Close(NoteReplay replay, ClosedPayday closed)
    {
        replay.Set(NoteStack.Loose, closed.OnHandAfter);
        foreach (ClosedPart part in closed.Parts)
        {
            replay.Put(new NoteStack(part.PotId, InWallet: false), part.Notes);
        }
    }

    private static void Fill(NoteReplay replay, FillPart part)
    {
        ImmutableSortedDictionary<long, int>? notes = part.Marked!.Amount == part.Amount ? part.Notes : null;
        replay.Take(new NoteStack(part.Pot.Id, InWallet: false), notes);
        replay.Put(new NoteStack(part.Pot.Id, InWallet: true), notes);
    }

    private static void Return(NoteReplay replay, CashReturn back)
    {
        foreach (NoteSwap swap in back.Swaps)
        {
            NoteStack with = swap.With is { } pot ? replay.StackOf(pot) : NoteStack.Loose;
            replay.Take(replay.StackOf(swap.PotId), swap.Gives);
            replay.Put(with, swap.Gives);
            replay.Take(with, swap.Gets);
            replay.Put(replay.StackOf(swap.PotId), swap.Gets);
        }

        foreach (ReturnedPot pot in back.Pots)
        {
            replay.Take(replay.StackOf(pot.PotId), pot.Notes);
        }
    }

    private static void Count(NoteReplay replay, WeekCount count)
    {
        // An amount alone says nothing of the notes, unless all is there as it was.
        if (count.Notes is not null || !count.Spent.IsZero || !count.Difference.IsZero)
        {
            replay.Set(replay.StackOf(count.PotId), count.Notes);
        }
    }

    private static void MoveOn(NoteReplay replay, WeekCount count, LedgerEnd to)
    {
        if (to is LedgerEnd.Held { Place: Place.Cash, Purpose: { Kind: PurposeKind.Pot or PurposeKind.Wallet } purpose })
        {
            replay.MoveAll(replay.StackOf(count.PotId), new NoteStack(purpose.PotId, purpose.Kind == PurposeKind.Wallet), count.Left);
        }
    }
}
