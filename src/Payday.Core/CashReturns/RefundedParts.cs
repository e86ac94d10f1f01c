using Payday.Core.Amounts;
using Payday.Core.Books;

namespace Payday.Core.CashReturns;

/// <summary>What refunds took off what purchases owe back, each off the pot's latest purchases first.</summary>
internal static class RefundedParts
{
    /// <summary>What refunds took off each purchase.</summary>
    public static IReadOnlyDictionary<OwedKey, RefundedPart> Of(Book book) => Of(book, long.MaxValue);

    /// <summary>The same, by refunds up to a number.</summary>
    public static Dictionary<OwedKey, RefundedPart> Of(Book book, long upTo)
    {
        var taken = new Dictionary<OwedKey, RefundedPart>();
        foreach (CardPurchase refund in book.Weeks.Purchases.With(PurchaseTraits.Stands | PurchaseTraits.Refund).Where(purchase => purchase.Number <= upTo))
        {
            TakeOff(book, refund, taken);
        }

        return taken;
    }

    private static void TakeOff(Book book, CardPurchase refund, Dictionary<OwedKey, RefundedPart> taken)
    {
        Money nothing = Money.Zero(refund.Amount.Currency);
        Dictionary<OwedKey, Money> settled = book.Weeks.StandingReturns
            .Where(back => back.LastMovement < refund.FirstMovement)
            .SelectMany(back => back.Settles)
            .GroupBy(settle => settle.Item)
            .ToDictionary(item => item.Key, item => Money.Sum(item.Select(settle => settle.Amount), nothing.Currency));
        var left = new RefundedPart(-refund.Amount, -refund.OwedBack);
        foreach (CardPurchase purchase in book.Weeks.Purchases.With(PurchaseTraits.Stands | PurchaseTraits.OwesBack)
            .Where(purchase => purchase.Number < refund.Number && purchase.PotId == refund.PotId && purchase.Card == refund.Card && purchase.Date <= refund.Date)
            .Reverse())
        {
            var key = new OwedKey(OwedKind.Purchase, purchase.Number);
            RefundedPart before = taken.GetValueOrDefault(key, new RefundedPart(nothing, nothing));
            Money paid = settled.GetValueOrDefault(key, nothing);
            Money isShort = (purchase.Amount - paid - before.Amount).ClampToZero();
            Money amount = Money.Min(left.Amount, isShort);

            // Never more than what is left to bring: the rest of its cash stays owed for what the account is short of.
            Money cash = amount.IsZero ? nothing : Money.Min(left.Cash, (purchase.OwedBack - paid - before.Cash - (isShort - amount)).ClampToZero());
            if (!amount.IsZero)
            {
                taken[key] = before + new RefundedPart(amount, cash);
                left = new RefundedPart(left.Amount - amount, left.Cash - cash);
            }
        }
    }
}
