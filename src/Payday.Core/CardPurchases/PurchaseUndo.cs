using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.Undo;

namespace Payday.Core.CardPurchases;

/// <summary>Undoing a card purchase or a refund.</summary>
internal sealed class PurchaseUndo() : RecordUndo<CardPurchase>("card purchase undone")
{
    /// <inheritdoc/>
    protected override ImmutableArray<CardPurchase> All(WeekRecords weeks) => weeks.Purchases;

    /// <inheritdoc/>
    protected override WeekRecords With(WeekRecords weeks, ImmutableArray<CardPurchase> all) => weeks with { Purchases = all };

    /// <inheritdoc/>
    protected override CardPurchase Undone(CardPurchase one) => one with { Undone = true };

    /// <inheritdoc/>
    protected override Obstacle NoSuch(long number) => new Obstacle.NoSuchPurchase(number);

    /// <inheritdoc/>
    protected override Obstacle? Before(Book book, CardPurchase one) => one.Undone
        ? new Obstacle.PurchaseUndone(one.Number)
        : CardRefunds.InTheWay(book, one) ?? ReturnUndo.Settled(book, new OwedKey(OwedKind.Purchase, one.Number), new BookEntry.Purchase(one.Number));

    /// <inheritdoc/>
    protected override TakingBack Taking(Book book, CardPurchase one) => TakingBack.Of(
        book, new BookEntry.Purchase(one.Number), (one.FirstMovement, one.LastMovement), one.PotId, one.TakenUp);

    /// <inheritdoc/>
    protected override Obstacle? After(Book book, CardPurchase one) => one.IsRefund ? CardRefunds.TooLittle(book, one) : null;
}
