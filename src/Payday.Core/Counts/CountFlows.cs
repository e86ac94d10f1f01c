using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Fills;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Counts;

/// <summary>What went in and out of a pot's cash since its last count, up to a day.</summary>
/// <remarks>
/// What was entered late belongs to the next count, whatever its date, so a count once confirmed stays as it is. All
/// of it together is what the counted end held at the day's end.
/// </remarks>
internal readonly record struct CountFlows(Money Before, Money Filled, Money OwedBack, Money Moved)
{
    /// <param name="book">The book.</param>
    /// <param name="taken">What the count takes as being in the wallet, beyond what is written.</param>
    /// <param name="pot">The pot.</param>
    /// <param name="date">The day.</param>
    public static CountFlows Of(Book book, IEnumerable<Movement> taken, Pot pot, LocalDate date)
    {
        WeekCount? last = book.Weeks.LastCountOf(pot.Id);
        LedgerEnd counted = WalletFills.SpentFrom(pot);
        Money nothing = Money.Zero(book.Household.Currency);
        var flows = new CountFlows(last?.Stayed ?? nothing, nothing, nothing, nothing);
        foreach (Movement movement in book.Ledger.Of(counted).Concat(taken.Where(movement => movement.From == counted || movement.To == counted)).Where(movement => movement.Date <= date && IsNew(movement, last)))
        {
            flows = movement.To == counted
                ? flows.With(movement, movement.From, movement.Amount, pot)
                : flows.With(movement, movement.To, -movement.Amount, pot);
        }

        return flows;
    }

    private static bool IsNew(Movement movement, WeekCount? last) =>
        last is null || (movement.Number != last.Move && (movement.Number > last.LastMovement || movement.Date > last.Date));

    private CountFlows With(Movement movement, LedgerEnd other, Money amount, Pot pot) => other switch
    {
        LedgerEnd.Outside { Kind: OutsideKind.Opening } => this with { Before = Before + amount },
        LedgerEnd.At { Place: Place.Cash, Purpose: { Kind: PurposeKind.OwedBack } purpose } when purpose.PotId == pot.Id && movement.Payday is null =>
            this with { OwedBack = OwedBack - amount },

        // From the account, from home, or from notes that a payday used again.
        LedgerEnd.At { Place: Place.Account } or LedgerEnd.At { Purpose.Kind: PurposeKind.Buffer or PurposeKind.OwedBack } => this with { Filled = Filled + amount },
        LedgerEnd.At held when held.Purpose.PotId == pot.Id => this with { Filled = Filled + amount },
        _ => this with { Moved = Moved + amount },
    };
}
