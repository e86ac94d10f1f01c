using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Store.Checks;

/// <summary>Holds the slips of closed paydays against the notes in the pots and the movements of the ledger.</summary>
internal static class SlipCheck
{
    /// <summary>What doesn't agree.</summary>
    public static IEnumerable<Finding> Of(Book book) => book.Closed.SelectMany(closed =>
        IsRange(book, closed) ? OfTotals(book, closed).Concat(OfPots(book, closed)) : [NoRange(closed)]);

    private static bool IsRange(Book book, ClosedPayday closed) =>
        closed.FirstMovement >= 1 && closed.FirstMovement <= closed.LastMovement + 1 && closed.LastMovement <= book.Ledger.Movements.Count;

    private static Finding NoRange(ClosedPayday closed) => new(
        CheckPart.Slips, new CheckFault.NoSuchMovements(closed.Payday, closed.FirstMovement, closed.LastMovement), Since(closed), new Remedy.GoBack());

    private static IEnumerable<Finding> OfTotals(Book book, ClosedPayday closed)
    {
        Currency currency = book.Household.Currency;
        NumberStyle style = book.Household.Settings.Numbers;
        Money slip = closed.Withdraw.Worth(currency) + closed.Reused.Worth(currency);
        Money pots = Money.Sum(closed.Parts.Select(part => part.Notes.Worth(currency)), currency);
        if (slip != pots)
        {
            yield return new Finding(CheckPart.Slips, new CheckFault.SlipDiffers(closed.Payday, slip, pots, style), Since(closed), new Remedy.ReopenOrCount());
        }
    }

    // What comes to a pot in cash while a payday is closed is its notes, fetched or used again, and nothing else.
    private static IEnumerable<Finding> OfPots(Book book, ClosedPayday closed)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        ImmutableSortedDictionary<PotId, Money> notes = Sums(book, closed.Parts.Select(part => (part.PotId, part.Notes.Worth(book.Household.Currency))));
        ImmutableSortedDictionary<PotId, Money> moved = Sums(book, Moved(book, closed));
        Money nothing = Money.Zero(book.Household.Currency);
        foreach (PotId pot in notes.Keys.Union(moved.Keys).Order())
        {
            Money onSheet = notes.GetValueOrDefault(pot, nothing);
            Money inLedger = moved.GetValueOrDefault(pot, nothing);
            if (onSheet != inLedger)
            {
                yield return new Finding(
                    CheckPart.Slips, new CheckFault.SheetDiffers(closed.Payday, Name(book, pot), onSheet, inLedger, style), Since(closed), new Remedy.ReopenOrCount());
            }
        }
    }

    private static IEnumerable<(PotId PotId, Money Amount)> Moved(Book book, ClosedPayday closed)
    {
        for (long number = closed.FirstMovement; number <= closed.LastMovement; number++)
        {
            Movement movement = book.Ledger.Movements[(int)number - 1];
            if (movement.To is LedgerEnd.At { Place: Place.Cash, Purpose: { Kind: PurposeKind.Pot, PotId: { } pot } })
            {
                yield return (pot, movement.Amount);
            }
        }
    }

    private static ImmutableSortedDictionary<PotId, Money> Sums(Book book, IEnumerable<(PotId PotId, Money Amount)> parts) => parts
        .GroupBy(part => part.PotId)
        .ToImmutableSortedDictionary(pot => pot.Key, pot => Money.Sum(pot.Select(part => part.Amount), book.Household.Currency));

    private static string Name(Book book, PotId id) => book.Household.Pots.FirstOrDefault(pot => pot.Id == id)?.Name ?? id.Text;

    private static FindingSince.Payday Since(ClosedPayday closed) => new(closed.Payday);
}
