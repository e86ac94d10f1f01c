using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Undo;

namespace Payday.Core.CashReturns;

/// <summary>Taking back a cash return.</summary>
public static class ReturnUndo
{
    /// <summary>The last cash return to the bank that stands, or null.</summary>
    public static CashReturn? Last(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Weeks.StandingReturns.LastOrDefault(back => back.Payday is null);
    }

    /// <summary>Takes a cash return back: its pots owe again what it settled, and its swaps are as if they had not been.</summary>
    /// <param name="book">The book.</param>
    /// <param name="back">The return, one of the book to the bank that stands.</param>
    /// <param name="date">The day on which it is taken back.</param>
    /// <returns>The book afterwards; or why it can't be.</returns>
    public static Result<Book> Of(Book book, CashReturn back, LocalDate date) => Refunded(book, back) is { } obstacle
        ? Result.Refused<Book>(obstacle)
        : Taking(book, back).Done(
            date,
            "cash return taken back",
            weeks => weeks with { Returns = weeks.Returns.Replace(back, back with { Undone = true }) });

    /// <summary>What is in the way of taking a cash return back; null for nothing.</summary>
    public static Obstacle? InTheWay(Book book, CashReturn back) => Refunded(book, back) ?? Taking(book, back).InTheWay();

    /// <summary>That a cash return settled what a pot owed for something; null where none did.</summary>
    internal static Obstacle? Settled(Book book, OwedKey key, BookEntry what) =>
        book.Weeks.StandingReturns.LastOrDefault(back => back.Settles.Any(settle => settle.Item == key)) switch
        {
            null => null,
            { Payday: { } payday } => new Obstacle.CashInPots(what, new BookEntry.Payday(payday)),
            var back => new Obstacle.CashAtBank(what, new BookEntry.Return(back.Number, back.Date)),
        };

    // Which purchases a refund lowered follows from what was returned before it.
    private static Obstacle.RefundSince? Refunded(Book book, CashReturn back)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(back);
        return book.Weeks.Purchases.With(PurchaseTraits.Stands | PurchaseTraits.Refund).LastOrDefault(refund =>
            refund.IsRefund && refund.FirstMovement > back.LastMovement && back.Pots.Any(pot => pot.PotId == refund.PotId)) is { } later
            ? new Obstacle.RefundSince(new BookEntry.Return(back.Number, back.Date), new BookEntry.Purchase(later.WholeNumber))
            : null;
    }

    private static TakingBack Taking(Book book, CashReturn back)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(back);
        var taking = new TakingBack(book, new BookEntry.Return(back.Number, back.Date));
        taking.AddRange(back.FirstMovement, back.LastMovement);
        return taking;
    }
}
