using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>What the ledger says of a pot's past, of the movements that stand: the one place where fills and spending are read for proposals.</summary>
internal static class PotRecord
{
    private static readonly LedgerEnd Unplaced = LedgerEnd.InAccount(Purpose.LeftToPlace);

    /// <summary>What a closed payday filled a pot with; neither what was placed in it as surplus, nor moves.</summary>
    public static Money FilledOn(Book book, PotId potId, ClosedPayday closed)
    {
        Movement[] putIn = [.. book.Remembered(static _ => new ClosedFills()).Of(book.Ledger, closed)[potId]];

        // A closing writes the fill first, then what was placed.
        int placed = putIn.Length == 0 ? 0 : (closed.Draft.Placements ?? []).Count(placement =>
            placement.Target == MoveTarget.Pot(potId) && placement.Amount.IsPositive);
        return putIn.Length > placed && book.Ledger.Stands(putIn[0]) ? putIn[0].Amount : Money.Zero(book.Household.Currency);
    }

    /// <summary>What was spent from a pot, in the order in which it was entered; below zero for a refund.</summary>
    public static IEnumerable<PotSpending> Spendings(Book book, PotId potId) =>
        book.Ledger.ChangesOf(LedgerEnd.SpentFrom(potId)).Select(change => new PotSpending(change.Day, change.By));

    /// <summary>How far a sinking pot is on a day.</summary>
    public static SinkingState Sinking(Book book, PotId potId, PotKind.Sinking kind, BankHolidays holidays, LocalDate day) =>
        SinkingState.Of(kind, PotMoney.HasNow(book.Ledger.Balances, potId), Spendings(book, potId), holidays, day);

    /// <summary>The last day on which something was spent from a pot, or null.</summary>
    public static LocalDate? LastSpending(Book book, PotId potId) => Spendings(book, potId).Select(spending => (LocalDate?)spending.Date).Max();

    // Of each payday that is asked for once for all pots: each would go through all its movements.
    private sealed class ClosedFills
    {
        private readonly Dictionary<LocalDate, ILookup<PotId, Movement>> known = [];

        public ILookup<PotId, Movement> Of(Ledger ledger, ClosedPayday closed)
        {
            if (!known.TryGetValue(closed.Payday, out ILookup<PotId, Movement>? fills))
            {
                known[closed.Payday] = fills = ledger.Between(closed.FirstMovement, closed.LastMovement)
                    .Where(movement => movement.From == Unplaced && PotOf(movement.To) is not null)
                    .ToLookup(movement => PotOf(movement.To)!.Value);
            }

            return fills;
        }

        private static PotId? PotOf(LedgerEnd end) =>
            end is LedgerEnd.At { Place: Place.Account, Purpose: { Kind: PurposeKind.Pot or PurposeKind.KeptBack } purpose } ? purpose.PotId : null;
    }
}
