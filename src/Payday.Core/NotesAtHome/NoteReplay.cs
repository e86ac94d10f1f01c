using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.NotesAtHome;

/// <summary>Follows the notes through the ledger, and forgets them where they no longer come to its balance.</summary>
internal sealed class NoteReplay
{
    private readonly Currency currency;
    private readonly HashSet<PotId> spending;
    private readonly Dictionary<NoteStack, ImmutableSortedDictionary<long, int>?> notes = [];
    private readonly Dictionary<NoteStack, Money> balances = [];
    private readonly HashSet<NoteStack> touched = [];

    private NoteReplay(Book book)
    {
        currency = book.Household.Currency;
        spending = [.. book.Household.Pots.Where(FillPart.GoesThroughTheWallet).Select(pot => pot.Id)];
        notes[NoteStack.Loose] = book.Household.Opening.NotesOnHand;
    }

    public static PotNotes Of(Book book)
    {
        var replay = new NoteReplay(book);
        Dictionary<long, NoteEvent> events = NoteEvent.Of(book);
        long openUntil = 0;

        // What was undone, and what undid it, left the notes where they were.
        foreach (Movement movement in book.Ledger.Movements)
        {
            if (book.Ledger.Stands(movement))
            {
                replay.Apply(movement.From, -movement.Amount);
                replay.Apply(movement.To, movement.Amount);
            }

            if (events.TryGetValue(movement.Number, out NoteEvent? told))
            {
                openUntil = Math.Max(openUntil, told.Last);
                told.Changes.ForEach(change => change(replay));
            }

            // In the midst of a record its movements and notes don't agree yet.
            if (movement.Number >= openUntil)
            {
                replay.Check();
            }
        }

        return new PotNotes(replay.notes.ToImmutableDictionary());
    }

    public NoteStack StackOf(PotId potId) => new(potId, spending.Contains(potId));

    public void Put(NoteStack stack, ImmutableSortedDictionary<long, int>? added) => Set(
        stack, added is not null && Known(stack) is { } there ? NoteBag.Plus(there, added) : null);

    public void Take(NoteStack stack, ImmutableSortedDictionary<long, int>? taken) => Set(
        stack, taken is not null && Known(stack) is { } there && NoteBag.Contains(there, taken) ? NoteBag.Less(there, taken) : null);

    public void Set(NoteStack stack, ImmutableSortedDictionary<long, int>? counted)
    {
        notes[stack] = counted;
        touched.Add(stack);
    }

    /// <summary>All that lies in a stack goes to another, if that is what moved.</summary>
    public void MoveAll(NoteStack from, NoteStack to, Money amount)
    {
        ImmutableSortedDictionary<long, int>? all = Known(from) is { } there && NoteBag.Worth(there, currency) == amount ? there : null;
        Take(from, all);
        Put(to, all);
    }

    private ImmutableSortedDictionary<long, int>? Known(NoteStack stack) => notes.GetValueOrDefault(stack, NoteBag.Empty);

    private void Apply(LedgerEnd end, Money amount)
    {
        if (NoteStack.Of(end, spending) is { } stack)
        {
            balances[stack] = balances.GetValueOrDefault(stack, Money.Zero(currency)) + amount;
            touched.Add(stack);
        }
    }

    private void Check()
    {
        foreach (NoteStack stack in touched)
        {
            Money balance = balances.GetValueOrDefault(stack, Money.Zero(currency));
            notes[stack] = balance.IsZero ? NoteBag.Empty
                : Known(stack) is { } there && NoteBag.Worth(there, currency) == balance ? there
                : null;
        }

        touched.Clear();
    }
}
