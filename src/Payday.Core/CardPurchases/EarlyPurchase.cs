using NodaTime;
using Payday.Core.Books;

namespace Payday.Core.CardPurchases;

/// <summary>A purchase dated before its pot had the money. It is taken all the same, as a card pays when it is asked to, and paid from what came later.</summary>
public static class EarlyPurchase
{
    /// <summary>The day on which the pot of a purchase had the money for it, where that is later than the purchase; null where it had it by then, and for a refund.</summary>
    /// <param name="book">The book that the purchase is in.</param>
    /// <param name="purchase">A purchase, or a part of one.</param>
    public static LocalDate? PaidOn(Book book, CardPurchase purchase)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(purchase);
        if (purchase.IsRefund || purchase.LastMovement < purchase.FirstMovement)
        {
            return null;
        }

        LocalDate last = book.Ledger.Between(purchase.FirstMovement, purchase.LastMovement).Max(movement => movement.Date);
        return last > purchase.Date ? last : null;
    }
}
