using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.Undo;

/// <summary>Why something can't be taken back, or not yet.</summary>
public abstract record Obstacle : Fault
{
    /// <summary>What has to be taken back before, so that a screen or a command can lead there; null where nothing helps.</summary>
    public virtual BookEntry? First => null;

    /// <summary>There is no card purchase of that number.</summary>
    /// <param name="Number">The number.</param>
    public sealed record NoSuchPurchase(long Number) : Obstacle;

    /// <summary>The card purchase is undone already.</summary>
    /// <param name="Number">Its number.</param>
    public sealed record PurchaseUndone(long Number) : Obstacle;

    /// <summary>There is no payment of a due of that number.</summary>
    /// <param name="Number">The number.</param>
    public sealed record NoSuchPayment(long Number) : Obstacle;

    /// <summary>The payment of a due is undone already.</summary>
    /// <param name="Number">Its number.</param>
    public sealed record PaymentUndone(long Number) : Obstacle;

    /// <summary>More was paid on the same due since.</summary>
    /// <param name="What">The payment that is to be undone.</param>
    /// <param name="Later">The last one.</param>
    public sealed record PaidSince(BookEntry.Payment What, BookEntry.Payment Later) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Later;
    }

    /// <summary>There is no move of that number.</summary>
    /// <param name="Number">The number.</param>
    public sealed record NoSuchMove(long Number) : Obstacle;

    /// <summary>There is no account entry of that number.</summary>
    /// <param name="Number">The number.</param>
    public sealed record NoSuchEntry(long Number) : Obstacle;

    /// <summary>It is undone already.</summary>
    /// <param name="What">What.</param>
    public sealed record UndoneAlready(BookEntry What) : Obstacle;

    /// <summary>A later count of the loose notes has seen it.</summary>
    /// <param name="What">What is to be taken back.</param>
    /// <param name="Count">The count.</param>
    public sealed record LooseCounted(BookEntry What, BookEntry.Entered Count) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Count;
    }

    /// <summary>The fill isn't marked.</summary>
    /// <param name="Fill">The fill.</param>
    public sealed record NotMarked(BookEntry.Fill Fill) : Obstacle;

    /// <summary>A confirmed count has seen it.</summary>
    /// <param name="What">What is to be taken back.</param>
    /// <param name="Count">The count.</param>
    public sealed record Counted(BookEntry What, BookEntry.Count Count) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Count;
    }

    /// <summary>Its money has gone on since.</summary>
    /// <param name="What">What is to be taken back.</param>
    /// <param name="To">What took the money.</param>
    public sealed record GoneOn(BookEntry What, BookEntry To) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => To;
    }

    /// <summary>Its cash went into pots on a payday.</summary>
    /// <param name="What">What is to be taken back: a card purchase, or a count by which something moved on.</param>
    /// <param name="Payday">The payday.</param>
    public sealed record CashInPots(BookEntry What, BookEntry.Payday Payday) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Payday;
    }

    /// <summary>Its cash was taken to the bank.</summary>
    /// <param name="What">What is to be taken back: a card purchase, or a count by which something moved on.</param>
    /// <param name="Return">The cash return.</param>
    public sealed record CashAtBank(BookEntry What, BookEntry.Return Return) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Return;
    }

    /// <summary>A refund came after the cash return.</summary>
    /// <param name="Return">The cash return that is to be taken back.</param>
    /// <param name="Refund">The refund.</param>
    public sealed record RefundSince(BookEntry.Return Return, BookEntry.Purchase Refund) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Refund;
    }

    /// <summary>A later refund of the same pot came after the refund.</summary>
    /// <param name="Later">The later one.</param>
    public sealed record LaterRefund(BookEntry.Purchase Later) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Later;
    }

    /// <summary>A refund lowered what the card purchase owes back.</summary>
    /// <param name="Purchase">The card purchase that is to be undone.</param>
    /// <param name="Refund">The last refund of its pot, the one that can be undone first.</param>
    public sealed record Refunded(BookEntry.Purchase Purchase, BookEntry.Purchase Refund) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Refund;
    }

    /// <summary>What was left of the purchase after the refund was returned, and what was rounded then is in the buffer.</summary>
    /// <param name="Refund">The refund that is to be undone.</param>
    /// <param name="Return">The cash return, or the payday that used its notes again.</param>
    public sealed record RefundReturned(BookEntry.Purchase Refund, BookEntry Return) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Return;
    }

    /// <summary>The bank has shown it: a reconciliation says so.</summary>
    /// <param name="What">What is to be taken back.</param>
    /// <param name="Reconciliation">The reconciliation.</param>
    public sealed record AtBank(BookEntry What, BookEntry.Reconciliation Reconciliation) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Reconciliation;
    }

    /// <summary>The reconciliation came of statements that were taken, and is taken back with them.</summary>
    /// <param name="Reconciliation">The reconciliation that is to be taken back.</param>
    /// <param name="Statement">The statements.</param>
    public sealed record OfStatement(BookEntry.Reconciliation Reconciliation, BookEntry.Statement Statement) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Statement;
    }

    /// <summary>A later reconciliation, or later statements, came after the statements that are to be taken back.</summary>
    /// <param name="Statement">The statements that are to be taken back.</param>
    /// <param name="Later">What came later.</param>
    public sealed record StatementSince(BookEntry.Statement Statement, BookEntry Later) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Later;
    }

    /// <summary>A later reconciliation came after the one that is to be taken back.</summary>
    /// <param name="Reconciliation">The one that is to be taken back.</param>
    /// <param name="Later">The later one.</param>
    public sealed record ReconciledSince(BookEntry.Reconciliation Reconciliation, BookEntry.Reconciliation Later) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Later;
    }

    /// <summary>The difference of the count was cleared up since.</summary>
    /// <param name="Difference">That it was.</param>
    public sealed record DifferenceCleared(BookEntry.Difference Difference) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Difference;
    }

    /// <summary>The movement is a part of something that is taken back as a whole.</summary>
    /// <param name="Number">The movement.</param>
    /// <param name="Whole">What it is a part of.</param>
    public sealed record PartOf(long Number, BookEntry Whole) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Whole;
    }

    /// <summary>The notes of a slip have gone on since: a fill is marked, a pot counted, or its cash moved.</summary>
    /// <param name="Payday">The payday of the slip.</param>
    /// <param name="Later">What was done with them.</param>
    public sealed record NotesGoneOn(LocalDate Payday, BookEntry Later) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Later;
    }

    /// <summary>Something was written since the payday was closed, and may depend on it.</summary>
    /// <param name="Payday">The closed payday that is to be reopened.</param>
    /// <param name="Later">What was written.</param>
    public sealed record WrittenSince(LocalDate Payday, BookEntry Later) : Obstacle
    {
        /// <inheritdoc/>
        public override BookEntry First => Later;
    }
}
