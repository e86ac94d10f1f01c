using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Undo;

namespace Payday.Core.Reconciling;

/// <summary>Taking back a reconciliation: its lines are on their way again.</summary>
public static class ReconciliationUndo
{
    /// <summary>The last one that stands, or null.</summary>
    public static Reconciliation? Last(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Weeks.StandingReconciliations.LastOrDefault();
    }

    /// <summary>Takes a reconciliation back. What was entered in it is begun again, unless another one is begun.</summary>
    /// <param name="book">The book.</param>
    /// <param name="one">The reconciliation, one of the book that stands.</param>
    /// <returns>The book afterwards; or that a later one, or the statements it came of, have to be taken back first.</returns>
    public static Result<Book> Of(Book book, Reconciliation one)
    {
        ArgumentNullException.ThrowIfNull(one);
        if (InTheWay(book, one) is { } obstacle)
        {
            return Result.Refused<Book>(obstacle);
        }

        WeekRecords weeks = book.Weeks;
        return Result.Of(book with
        {
            Weeks = weeks with
            {
                Reconciliations = weeks.Reconciliations.SetItem((int)one.Number - 1, one with { Undone = true }),
                Reconciling = weeks.Reconciling ?? new ReconciliationDraft(one.Date, one.Balance, [.. one.AtBank]) { Name = one.Name.Length == 0 ? null : one.Name },
            },
        });
    }

    /// <summary>What is in the way of taking a reconciliation back; null for nothing.</summary>
    public static Obstacle? InTheWay(Book book, Reconciliation one)
    {
        ArgumentNullException.ThrowIfNull(one);
        return Last(book) is { } last && last.Number > one.Number ? new Obstacle.ReconciledSince(BookEntry.Of(one), BookEntry.Of(last))
            : book.Weeks.StandingTakings.LastOrDefault(taking => taking.Reconciliation == one.Number) is { } taking ? new Obstacle.OfStatement(BookEntry.Of(one), BookEntry.Of(taking))
            : null;
    }
}
