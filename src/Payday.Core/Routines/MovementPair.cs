using Payday.Core.Books;
using Payday.Core.Ledgers;

namespace Payday.Core.Routines;

/// <summary>Movements of a closed payday that say one thing together, so that undoing one alone leaves the other standing.</summary>
public static class MovementPair
{
    /// <summary>The other half of a movement, or null where there is none or it is undone.</summary>
    /// <remarks>
    /// Pairs are loose notes that went in a pot and the account money that became buffer for them; the interest of a debt and
    /// the minimum payment on it, each written one after the other, as first versions wrote them; a bill's set-aside and its
    /// payment; and likewise what was kept for a debt and its payment.
    /// </remarks>
    public static Movement? Of(Book book, Movement movement)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(movement);
        return movement.Payday is null || movement.Reverses is not null
            ? null
            : book.Ledger.Standing
                .Where(other => other.Payday == movement.Payday && other.Number != movement.Number)
                .FirstOrDefault(other => Belong(movement, other) || Belong(other, movement));
    }

    private static bool Belong(Movement first, Movement second) => (first.From, first.To, second.From, second.To) switch
    {
        (LedgerEnd.At { Place: Place.Cash, Purpose.Kind: PurposeKind.Buffer }, LedgerEnd.At { Place: Place.Cash, Purpose: { Kind: PurposeKind.Pot } pot }, LedgerEnd.At { Purpose: { Kind: PurposeKind.KeptBack } kept }, LedgerEnd.At { Place: Place.Account, Purpose.Kind: PurposeKind.Buffer }) =>
            pot.PotId == kept.PotId && second.Number == first.Number + 1,
        (LedgerEnd.Owed charged, LedgerEnd.Outside { Kind: OutsideKind.Interest }, LedgerEnd.At { Purpose.Kind: PurposeKind.LeftToPlace }, LedgerEnd.Owed paid) =>
            charged.DebtId == paid.DebtId && second.Number == first.Number + 1,
        (LedgerEnd.At { Purpose.Kind: PurposeKind.LeftToPlace }, LedgerEnd.At { Purpose: { Kind: PurposeKind.SetAside } held }, LedgerEnd.At { Purpose: { Kind: PurposeKind.SetAside } spent }, LedgerEnd.Outside { Kind: OutsideKind.Bill }) => held.BillId == spent.BillId,
        (LedgerEnd.At { Purpose.Kind: PurposeKind.LeftToPlace }, LedgerEnd.At { Purpose: { Kind: PurposeKind.ForDebt } held }, LedgerEnd.At { Purpose.Kind: PurposeKind.ForDebt }, LedgerEnd.Owed paid) => held.DebtId == paid.DebtId,
        _ => false,
    };
}
