using System.Runtime.InteropServices;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.NotesAtHome;

/// <summary>The notes of each stack while they are followed, and what the ledger holds there.</summary>
internal sealed class NoteHeaps
{
    private readonly Currency currency;
    private readonly HashSet<PotId> spending;
    private readonly Dictionary<NoteStack, Heap> heaps = [];
    private readonly List<Heap> touched = [];

    // By payday, the owed-back notes that went into pots.
    private readonly ILookup<LocalDate, Notes> owedBack;

    /// <summary>As a book begins: the loose notes at home alone.</summary>
    public NoteHeaps(Book book)
    {
        currency = book.Household.Currency;
        spending = [.. book.Household.Pots.Where(FillPart.GoesThroughTheWallet).Select(pot => pot.Id)];
        Of(NoteStack.Loose).Notes = book.Household.Opening.LooseNotes;
        owedBack = book.Weeks.StandingReturns.Where(back => back.Payday is not null)
            .ToLookup(back => back.Payday!.Value, back => Notes.Sum(back.Pots.Select(pot => pot.Notes).OfType<Notes>()));
    }

    /// <summary>As a book was when so much was known of its notes.</summary>
    public NoteHeaps(Book book, PotNotes known)
        : this(book)
    {
        foreach ((NoteStack stack, KnownNotes there) in known.Stacks)
        {
            Heap heap = Of(stack);
            (heap.Notes, heap.Balance) = (there.Notes, there.Worth);
        }
    }

    /// <summary>Every stack that had any notes, as it is.</summary>
    public IReadOnlyDictionary<NoteStack, KnownNotes> Known => heaps.ToDictionary(heap => heap.Key, heap => new KnownNotes(heap.Value.Notes, heap.Value.Balance));

    /// <summary>What the ledger holds changes.</summary>
    public void Move(MovedAmount movement)
    {
        Apply(movement.From, -movement.Amount);
        Apply(movement.To, movement.Amount);
    }

    /// <summary>The notes change as a record says.</summary>
    public void Tell(NoteEvent told)
    {
        switch (told)
        {
            case NoteEvent.Closed { Payday: var payday }:
                // What was taken from the loose notes, not what was left then: what was undone since lies among them again.
                Notes used = payday.Reused.Less(owedBack[payday.Payday].FirstOrDefault() ?? Notes.None);
                Set(NoteStack.Loose, At(NoteStack.Loose) is { } loose && loose.Covers(used) ? loose.Less(used) : payday.LooseAfter);
                foreach (ClosedPart part in payday.Parts)
                {
                    Put(new NoteStack(part.PotId, InWallet: false), part.Notes);
                }

                break;
            case NoteEvent.Received received:
                Replan(received.Notes, received.Payday);
                break;
            case NoteEvent.Filled { Part: var part }:
                Notes? filled = part.Marked!.Amount == part.Amount ? part.Notes : null;
                Take(new NoteStack(part.Pot.Id, InWallet: false), filled);
                Put(new NoteStack(part.Pot.Id, InWallet: true), filled);
                break;
            case NoteEvent.Returned { Back: var back }:
                Return(back);
                break;

            // An amount alone says nothing of the notes, unless all is there as it was.
            case NoteEvent.Counted { Count: var count } when count.Notes is not null || !count.Spent.IsZero || !count.Difference.IsZero:
                Set(StackOf(count.PotId), count.Notes);
                break;
            case NoteEvent.MovedOn { Count: var left, To: LedgerEnd.At { Place: Place.Cash, Purpose: { Kind: PurposeKind.Pot or PurposeKind.Wallet } purpose } }:
                MoveAll(StackOf(left.PotId), new NoteStack(purpose.PotId, purpose.Kind == PurposeKind.Wallet), left.Left);
                break;

            case NoteEvent.Passed passed:
                Pass(NoteStack.Of(passed.From, spending), NoteStack.Of(passed.To, spending), passed.Amount, passed.Notes);
                break;
            case NoteEvent.LooseCounted { Entry.Counted: { } counted }:
                Set(NoteStack.Loose, counted);
                break;
        }
    }

    /// <summary>Forgets the notes where they no longer come to what the ledger holds.</summary>
    public void ForgetWhatDisagrees()
    {
        foreach (Heap heap in touched)
        {
            heap.IsTouched = false;
            heap.Notes = heap.Balance.IsZero ? Notes.None
                : heap.Notes is { } there && there.Worth(currency) == heap.Balance ? there
                : null;
        }

        touched.Clear();
    }

    private void Replan(NotesReceived received, ClosedPayday payday)
    {
        foreach (ClosedPart part in payday.Parts)
        {
            Take(new NoteStack(part.PotId, InWallet: false), part.Notes);
        }

        foreach (ClosedPart part in received.Parts)
        {
            Put(new NoteStack(part.PotId, InWallet: false), part.Notes);
        }

        Put(NoteStack.Loose, received.Got.Plus(payday.Reused).Less(Notes.Sum(received.Parts.Select(part => part.Notes))));
    }

    private void Return(CashReturn back)
    {
        foreach (NoteSwap swap in back.Swaps)
        {
            NoteStack with = swap.With is { } pot ? StackOf(pot) : NoteStack.Loose;
            Take(StackOf(swap.PotId), swap.Gives);
            Put(with, swap.Gives);
            Take(with, swap.Gets);
            Put(StackOf(swap.PotId), swap.Gets);
        }

        foreach (ReturnedPot pot in back.Pots)
        {
            Take(StackOf(pot.PotId), pot.Notes);
        }
    }

    private NoteStack StackOf(PotId potId) => new(potId, spending.Contains(potId));

    private Heap Of(NoteStack stack) => CollectionsMarshal.GetValueRefOrAddDefault(heaps, stack, out _) ??= new Heap(Money.Zero(currency));

    private Notes? At(NoteStack stack) => Of(stack).Notes;

    private void Put(NoteStack stack, Notes? added)
    {
        Heap heap = Of(stack);
        Set(heap, added is not null ? heap.Notes?.Plus(added) : null);
    }

    private void Take(NoteStack stack, Notes? taken)
    {
        Heap heap = Of(stack);
        Set(heap, taken is not null && heap.Notes is { } there && there.Covers(taken) ? there.Less(taken) : null);
    }

    private void Set(NoteStack stack, Notes? counted) => Set(Of(stack), counted);

    private void Set(Heap heap, Notes? counted)
    {
        heap.Notes = counted;
        Touch(heap);
    }

    private void Touch(Heap heap)
    {
        if (!heap.IsTouched)
        {
            heap.IsTouched = true;
            touched.Add(heap);
        }
    }

    // All that lies in a stack goes to another, if that is what moved.
    private void MoveAll(NoteStack from, NoteStack to, Money amount)
    {
        Notes? all = At(from) is { } there && there.Worth(currency) == amount ? there : null;
        Take(from, all);
        Put(to, all);
    }

    // Where all of a stack goes, its notes are known without being named.
    private void Pass(NoteStack? from, NoteStack? to, Money amount, Notes? named)
    {
        if (from == to)
        {
            return;
        }

        Notes? notes = named ?? (from is { } stack && At(stack) is { } there && there.Worth(currency) == amount ? there : null);
        if (from is { } gives)
        {
            Take(gives, notes);
        }

        if (to is { } gets)
        {
            Put(gets, notes);
        }
    }

    private void Apply(LedgerEnd end, Money amount)
    {
        if (NoteStack.Of(end, spending) is { } stack)
        {
            Heap heap = Of(stack);
            heap.Balance += amount;
            Touch(heap);
        }
    }

    // The notes of a stack, none as it begins, and what the ledger holds there.
    private sealed class Heap(Money nothing)
    {
        public Notes? Notes { get; set; } = Notes.None;

        public Money Balance { get; set; } = nothing;

        // Whether either has changed since they were last held against each other.
        public bool IsTouched { get; set; }
    }
}
