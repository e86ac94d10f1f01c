using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
using Payday.Core.Counts;
using Payday.Core.DuePayments;
using Payday.Core.Moves;
using Payday.Core.Receiving;
using Payday.Core.Reconciling;
using Payday.Core.StatementTaking;
using Payday.Core.Undo;

namespace Payday.Core.ClosedPaydays;

/// <summary>What is to be taken back first, where one thing is in the way of another, and another in its way.</summary>
public static class ComesFirst
{
    /// <summary>The end of the way that begins with an entry: what can be taken back now, or has nothing before it that helps.</summary>
    /// <param name="book">The book.</param>
    /// <param name="entry">What is to be taken back, or is in the way of something.</param>
    /// <param name="today">The day on which it would be.</param>
    public static BookEntry Of(Book book, BookEntry entry, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(entry);
        var passed = new HashSet<BookEntry>();
        while (passed.Add(entry) && InTheWay(book, entry, today)?.First is { } next)
        {
            entry = next;
        }

        return entry;
    }

    private static Obstacle? InTheWay(Book book, BookEntry entry, LocalDate today)
    {
        WeekRecords weeks = book.Weeks;
        return entry switch
        {
            BookEntry.Purchase purchase => Purchasing.InTheWay(book, purchase.Number),
            BookEntry.Payment payment => Paying.InTheWay(book, payment.Number),
            BookEntry.Moved move => Moving.InTheWay(book, move.Number),
            BookEntry.Entered entered => Entering.InTheWay(book, entered.Number),
            BookEntry.Return back => ReturnUndo.InTheWay(book, weeks.Returns[(int)back.Number - 1]),
            BookEntry.Reconciliation one => ReconciliationUndo.InTheWay(book, weeks.Reconciliations[(int)one.Number - 1]),
            BookEntry.Statement statement => TakingUndo.InTheWay(book, weeks.Takings[(int)statement.Number - 1], today) as Obstacle,
            BookEntry.Count count => weeks.StandingCounts.LastOrDefault(one => one.PotId == count.PotId && one.Date == count.Date) is { } counted ? CountUndo.InTheWay(book, [counted]) : null,
            BookEntry.Difference difference => weeks.Settled.FirstOrDefault(one => one.Count == difference.Number) is { } settled ? Differences.InTheWay(book, settled) : null,
            BookEntry.Received => ReceivingUndo.InTheWay(book),
            BookEntry.Payday => Reopening.InTheWay(book),
            BookEntry.Movement movement => Undoing.InTheWay(book, movement.Number),
            _ => null,
        };
    }
}
