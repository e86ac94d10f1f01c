using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Undo;

namespace Payday.Core.CardPurchases;

/// <summary>What came back to the card, and so to the account.</summary>
/// <remarks>
/// For something whose cash is still owed back it lowers what is owed. The rest, exact, is kept back for its cash pot and joins
/// the next fill; what was for a pot in the account or for the buffer is there again.
/// A refund is kept among the purchases, below zero. The account is short of less, and the notes that are not owed any more
/// go back to the pot: as many as if the purchase had been smaller by the refund. It is taken off the pot's latest purchases
/// first, as a return settles the oldest. A card that is a debt has the refund on its balance: it lowers what the same card paid,
/// and what waits for its next payment goes back to the pot, as far as there is any. Which ones that are follows from what stood when it was entered, so it never
/// changes: what is taken off a purchase can only be undone before it, and refunds of a pot in the order of last in, first out.
/// </remarks>
public static class CardRefunds
{
    /// <summary>Enters a refund.</summary>
    /// <param name="book">The book.</param>
    /// <param name="entry">What came back, its amount above zero; of one part.</param>
    /// <returns>The book afterwards, the refund being its last purchase; or why it can't be entered.</returns>
    public static Result<Book> Enter(Book book, PurchaseEntry entry)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(entry);
        Pot? pot = book.Household.Pots.FirstOrDefault(pot => pot.Id == entry.PotId);
        if (Fault(book, entry, pot) is { } fault)
        {
            return Result.Refused<Book>(fault);
        }

        OwedItem[] items = pot is null ? [] : [.. OwedItems.Of(book).Where(item => IsLowered(book, item, entry)).OrderByDescending(item => item.Key.Number)];
        Money lowered = Money.Min(entry.Amount, Money.Sum(items.Select(item => item.Short), entry.Amount.Currency));
        var writer = new WeekWriter(book);
        Money cash = Money.Zero(entry.Amount.Currency);
        Money left = lowered;
        foreach (OwedItem item in items)
        {
            Money part = Money.Min(left, item.Short);
            left -= part;
            cash += part.IsZero ? part : (item.Left - OwedAmount.Of(book.Household, item.Short - part)).ClampToZero();
        }

        long first = writer.Next;
        string reason = entry.What.Trim() is { Length: > 0 } what ? $"refund: {what}" : "refund";
        if (pot is not null)
        {
            writer.Move(entry.Date, LedgerEnd.SpentFrom(pot.Id), entry.Card is { } owed ? new LedgerEnd.Owed(owed) : LedgerEnd.InAccount(Purpose.OwedBack(pot.Id)), lowered, reason);
            LedgerEnd apart = LedgerEnd.InCash(Purpose.OwedBack(pot.Id));
            writer.Move(PotCash.Day(book, pot, apart, cash, entry.Date), apart, WalletFills.SpentFrom(pot), cash, "no longer to pay back");
        }

        Rest(writer, entry, pot, entry.Amount - lowered, reason);
        writer.Record(weeks => weeks with
        {
            Purchases = weeks.Purchases.Add(new CardPurchase(
                weeks.Purchases.Count + 1, entry.Date, pot?.Id, -entry.Amount, -cash, entry.What.Trim(), first, writer.Last) { Card = entry.Card }),
        });
        return Result.Of(writer.Book);
    }

    // What the card was paid for already makes the debt less, and there is no money of it that could go back.
    private static void Rest(WeekWriter writer, PurchaseEntry entry, Pot? pot, Money rest, string reason)
    {
        if (entry.Card is not { } card)
        {
            writer.Move(entry.Date, LedgerEnd.SpentFrom(pot?.Id), InTheAccount(pot), rest, reason);
            return;
        }

        writer.Move(entry.Date, LedgerEnd.SpentFrom(pot?.Id), new LedgerEnd.Owed(card), rest, reason);
        LedgerEnd waits = LedgerEnd.InAccount(Purpose.ForCard(card));
        Money back = Money.Min(rest, writer[waits]);
        writer.Move(EndCourse.Of(writer.Book.Ledger, waits).DayFor(back, entry.Date) ?? entry.Date, waits, InTheAccount(pot), back, "doesn't wait for the card any more");
    }

    /// <summary>What has to be undone before a purchase or refund can be, or keeps a refund from it; null where there is nothing.</summary>
    internal static Obstacle? InTheWay(Book book, CardPurchase purchase)
    {
        if (purchase.IsRefund)
        {
            return book.Weeks.Purchases.With(PurchaseTraits.Stands | PurchaseTraits.Refund).LastOrDefault(later => later.PotId == purchase.PotId && later.Card == purchase.Card) is { } last && last.Number > purchase.Number
                ? new Obstacle.LaterRefund(new BookEntry.Purchase(last.WholeNumber))
                : Returned(book, purchase);
        }

        return RefundedParts.Of(book).ContainsKey(new OwedKey(OwedKind.Purchase, purchase.Number))
            ? new Obstacle.Refunded(new BookEntry.Purchase(purchase.WholeNumber), new BookEntry.Purchase(
                book.Weeks.Purchases.With(PurchaseTraits.Stands | PurchaseTraits.Refund).Last(refund => refund.PotId == purchase.PotId && refund.Card == purchase.Card).WholeNumber))
            : null;
    }

    // Of what the same card paid.
    private static bool IsLowered(Book book, OwedItem item, PurchaseEntry entry) =>
        item.PotId == entry.PotId && item.Key.Kind == OwedKind.Purchase && item.Date <= entry.Date && item.Short.IsPositive
        && book.Weeks.Purchases[(int)item.Key.Number - 1].Card == entry.Card;

    private static PurchaseFault? Fault(Book book, PurchaseEntry entry, Pot? pot) =>
        !entry.Amount.IsPositive ? new PurchaseFault.RefundNotAboveZero()
        : entry.PotId is { } id && pot is null ? new PurchaseFault.NoSuchPot(id)
        : entry.Date < book.Household.Start ? new PurchaseFault.BeforeStart(entry.Date, book.Household.Start)
        : null;

    // For a cash pot it waits in the account for the next fill.
    private static LedgerEnd InTheAccount(Pot? pot) => LedgerEnd.InAccount(pot switch
    {
        null => Purpose.Buffer,
        { Place: Place.Cash } => Purpose.KeptBack(pot.Id),
        _ => Purpose.Pot(pot.Id),
    });

    // What was rounded then is in the buffer.
    private static Obstacle? Returned(Book book, CardPurchase refund)
    {
        Dictionary<OwedKey, RefundedPart> before = RefundedParts.Of(book, refund.Number - 1);
        OwedKey[] lowered = [.. RefundedParts.Of(book, refund.Number).Where(part => before.GetValueOrDefault(part.Key) != part.Value).Select(part => part.Key)];
        return book.Weeks.StandingReturns.FirstOrDefault(back => back.FirstMovement > refund.LastMovement && back.Settles.Any(settle => lowered.Contains(settle.Item))) is { } returned
            ? new Obstacle.RefundReturned(new BookEntry.Purchase(refund.WholeNumber), returned.Payday is { } payday ? new BookEntry.Payday(payday) : new BookEntry.Return(returned.Number, returned.Date))
            : null;
    }
}
