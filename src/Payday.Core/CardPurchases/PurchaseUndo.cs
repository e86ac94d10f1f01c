using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.Ledgers;
using Payday.Core.Undo;

namespace Payday.Core.CardPurchases;

/// <summary>Undoing a card purchase or a refund, all parts of one over several pots at once.</summary>
internal sealed class PurchaseUndo() : RecordUndo<CardPurchase>("card purchase undone")
{
    /// <inheritdoc/>
    protected override IReadOnlyList<CardPurchase> All(WeekRecords weeks) => weeks.Purchases;

    /// <inheritdoc/>
    protected override WeekRecords Undone(WeekRecords weeks, CardPurchase one) => weeks with
    {
        Purchases = weeks.PartsOf(one.Number).Aggregate(weeks.Purchases, (all, part) => all.Put(part with { Undone = true })),
    };

    /// <inheritdoc/>
    protected override Obstacle NoSuch(long number) => new Obstacle.NoSuchPurchase(number);

    /// <inheritdoc/>
    protected override Obstacle? Before(Book book, CardPurchase one) => one.Undone
        ? new Obstacle.PurchaseUndone(one.Number)
        : First(book, one, part => CardRefunds.InTheWay(book, part))
            ?? First(book, one, part => ReturnUndo.Settled(book, new OwedKey(OwedKind.Purchase, part.Number), new BookEntry.Purchase(part.WholeNumber)))
            ?? First(book, one, part => Charged(book, part));

    /// <inheritdoc/>
    protected override TakingBack Taking(Book book, CardPurchase one)
    {
        var taking = new TakingBack(book, new BookEntry.Purchase(one.WholeNumber));
        foreach (CardPurchase part in book.Weeks.PartsOf(one.Number))
        {
            taking.AddRange(part.FirstMovement, part.LastMovement);
            if (part.PotId is { } pot)
            {
                taking.AddTakenUp(pot, part.TakenUp, part.FirstMovement);
            }
        }

        return taking;
    }

    private static Obstacle? First(Book book, CardPurchase one, Func<CardPurchase, Obstacle?> find) =>
        book.Weeks.PartsOf(one.Number).Select(find).FirstOrDefault(found => found is not null);

    // Interest that was charged since was charged on what the card had paid by then.
    private static Obstacle.GoneOn? Charged(Book book, CardPurchase part) =>
        part.Card is { } card && book.Ledger.Of(LedgerEnd.InterestOn(card)).FirstOrDefault(charge => charge.Number > part.LastMovement && charge.Date > part.Date) is { } seen
            ? new Obstacle.GoneOn(new BookEntry.Purchase(part.WholeNumber), BookEntry.Of(book, seen.Number) ?? (seen.Payday is { } payday ? new BookEntry.Payday(payday) : new BookEntry.Movement(seen.Number)))
            : null;
}
