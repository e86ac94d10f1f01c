using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.Moves;
using Payday.Core.Reconciling;
using Payday.Core.Undo;

namespace Payday.Core.StatementTaking;

/// <summary>Taking statements back as a whole: what was written down for their lines, and their reconciliation.</summary>
public static class TakingUndo
{
    /// <summary>The last statements that were taken and stand, or null.</summary>
    public static TakingOfStatements? Last(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Weeks.StandingTakings.LastOrDefault();
    }

    /// <summary>Takes them back: all is as if they had never been taken.</summary>
    /// <param name="book">The book.</param>
    /// <param name="taking">The taking, one of the book that stands.</param>
    /// <param name="date">The day on which that happens.</param>
    /// <returns>The book afterwards; or what is in the way.</returns>
    public static Result<Book> Of(Book book, TakingOfStatements taking, LocalDate date)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(taking);
        if (ReconciliationUndo.Last(book) is { } last && last.Number > taking.Reconciliation)
        {
            return Result.Refused<Book>(new Obstacle.StatementSince(BookEntry.Of(taking), Whole(book, last)));
        }

        Reconciliation own = book.Weeks.Reconciliations[(int)taking.Reconciliation - 1];
        Book after = book with
        {
            Weeks = book.Weeks with
            {
                Takings = book.Weeks.Takings.SetItem((int)taking.Number - 1, taking with { Undone = true }),
                Reconciliations = book.Weeks.Reconciliations.SetItem((int)own.Number - 1, own with { Undone = true }),
            },
        };

        // The last first, so that none of them is in the way of another.
        return taking.Lines.Select(line => line.Wrote).OfType<WrittenRecord>().Reverse().Aggregate(
            Result.Of(after), (done, record) => done.Then(before => Undo(before, record, date)));
    }

    /// <summary>What is in the way of it; null for nothing.</summary>
    public static Fault? InTheWay(Book book, TakingOfStatements taking, LocalDate date) => Of(book, taking, date) is { Ok: false } refused ? refused.Fault : null;

    private static Result<Book> Undo(Book book, WrittenRecord record, LocalDate date) => record.Kind switch
    {
        WrittenKind.Payment => Paying.Undo(book, record.Number, date),
        WrittenKind.Purchase => Purchasing.Undo(book, record.Number, date),
        WrittenKind.Entry => Entering.Undo(book, record.Number, date),
        WrittenKind.Return => ReturnUndo.Of(book, book.Weeks.Returns[(int)record.Number - 1], date),
        _ => Moving.Undo(book, record.Number, date),
    };

    private static BookEntry Whole(Book book, Reconciliation one) =>
        book.Weeks.StandingTakings.LastOrDefault(taking => taking.Reconciliation == one.Number) is { } taking ? BookEntry.Of(taking) : BookEntry.Of(one);
}
