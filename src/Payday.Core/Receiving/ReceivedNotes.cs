using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Receiving;

/// <summary>A closed payday with the notes that were really given, as its papers say it.</summary>
/// <param name="Payday">The payday, with the parts and what the account keeps back as they are now, and the notes given in the place of those asked for.</param>
/// <param name="Asked">What the slip asked for.</param>
/// <param name="Loose">Notes of the bank that no pot took: they lie loose at home.</param>
/// <param name="LooseOf">By pot: how much of the loose notes is its own, above zero.</param>
public sealed record ReceivedNotes(ClosedPayday Payday, Notes Asked, Notes Loose, ImmutableSortedDictionary<PotId, Money> LooseOf)
{
    /// <summary>Whether other notes were given than the slip asked for.</summary>
    public bool Differ { get; private init; }

    /// <summary>How a closed payday's notes are: as received where that was entered, else as the slip asked for them.</summary>
    public static ReceivedNotes Of(Book book, ClosedPayday closed)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(closed);
        if (book.Weeks.ReceivedOn(closed.Payday) is not { } received)
        {
            return new ReceivedNotes(closed, closed.Withdraw, Notes.None, ImmutableSortedDictionary<PotId, Money>.Empty);
        }

        Notes loose = received.Got.Plus(closed.Reused).Less(Notes.Sum(received.Parts.Select(part => part.Notes)));
        var kept = closed.KeptBack.ToBuilder();
        var looseOf = ImmutableSortedDictionary.CreateBuilder<PotId, Money>();
        for (long number = received.FirstMovement; number <= received.LastMovement; number++)
        {
            Movement movement = book.Ledger.Movements[(int)number - 1];
            if (movement.To is LedgerEnd.At { Place: Place.Cash, Purpose: { Kind: PurposeKind.KeptBack, PotId: { } own } })
            {
                Add(looseOf, own, movement.Amount);
            }

            if (movement.To is LedgerEnd.At { Place: Place.Account, Purpose: { Kind: PurposeKind.KeptBack, PotId: { } more } })
            {
                Add(kept, more, movement.Amount);
            }

            if (movement.From is LedgerEnd.At { Place: Place.Account, Purpose: { Kind: PurposeKind.KeptBack, PotId: { } less } })
            {
                Add(kept, less, -movement.Amount);
            }
        }

        return new ReceivedNotes(
            closed with { Parts = received.Parts, Withdraw = received.Got, KeptBack = kept.ToImmutable(), LooseAfter = closed.LooseAfter.Plus(loose) },
            closed.Withdraw,
            loose,
            looseOf.ToImmutable()) { Differ = true };
    }

    private static void Add(ImmutableSortedDictionary<PotId, Money>.Builder sums, PotId pot, Money amount)
    {
        Money sum = sums.TryGetValue(pot, out Money known) ? known + amount : amount;
        sums.Remove(pot);
        if (!sum.IsZero)
        {
            sums[pot] = sum;
        }
    }
}
