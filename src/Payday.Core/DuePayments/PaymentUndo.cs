using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Undo;

namespace Payday.Core.DuePayments;

/// <summary>Undoing a payment of a due, or that its rest was freed.</summary>
internal sealed class PaymentUndo() : RecordUndo<DuePayment>("payment undone")
{
    /// <inheritdoc/>
    protected override IReadOnlyList<DuePayment> All(WeekRecords weeks) => weeks.Payments;

    /// <inheritdoc/>
    protected override WeekRecords Undone(WeekRecords weeks, DuePayment one) => weeks with { Payments = weeks.Payments.SetItem((int)one.Number - 1, one with { Undone = true }) };

    /// <inheritdoc/>
    protected override Obstacle NoSuch(long number) => new Obstacle.NoSuchPayment(number);

    /// <inheritdoc/>
    protected override Obstacle? Before(Book book, DuePayment one) => one.Undone ? new Obstacle.PaymentUndone(one.Number)
        : book.Weeks.StandingPayments.LastOrDefault(later => later.Key == one.Key && later.Number > one.Number) is { } later
            ? new Obstacle.PaidSince(BookEntry.Of(book, one), BookEntry.Of(book, later))
        : Seen(book, one);

    /// <inheritdoc/>
    protected override TakingBack Taking(Book book, DuePayment one) => TakingBack.Of(
        book, BookEntry.Of(book, one), (one.FirstMovement, one.LastMovement), null, TakenUp.Nothing);

    // Money that was left to place went on with the next payday; interest that was charged later was charged on what was owed then.
    private static Obstacle.GoneOn? Seen(Book book, DuePayment payment)
    {
        Movement[] own = [.. book.Ledger.Between(payment.FirstMovement, payment.LastMovement)];
        if (book.Closed.FirstOrDefault(closed => closed.FirstMovement > payment.LastMovement) is { } since
            && own.Any(movement => movement.To is LedgerEnd.At { Purpose.Kind: PurposeKind.LeftToPlace }))
        {
            return new Obstacle.GoneOn(BookEntry.Of(book, payment), new BookEntry.Payday(since.Payday));
        }

        if (payment.Key.Debt is not { } debt)
        {
            return null;
        }

        bool charged = own.Any(movement => movement.To is LedgerEnd.Outside { Kind: OutsideKind.Interest });
        Movement? seen = book.Ledger.Of(LedgerEnd.InterestOn(debt)).FirstOrDefault(charge => charge.Number > payment.LastMovement
            && (charged || (charge.Date > payment.Date && !(charge.Date <= payment.Key.Scheduled && payment.Amount <= payment.Asked))));
        return seen is null ? null : new Obstacle.GoneOn(
            BookEntry.Of(book, payment),
            BookEntry.Of(book, seen.Number) ?? (seen.Payday is { } payday ? new BookEntry.Payday(payday) : new BookEntry.Movement(seen.Number)));
    }
}
