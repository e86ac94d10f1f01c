using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Undo;

namespace Payday.Core.Counts;

/// <summary>What counts missed or found, until it is cleared up.</summary>
public static class Differences
{
    /// <summary>The counts whose difference is still open, oldest first: each says since when, and what it is called.</summary>
    public static ImmutableArray<WeekCount> Open(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        HashSet<long> settled = [.. book.Weeks.Settled.Select(settled => settled.Count)];
        return [.. book.Weeks.Counts.With(CountTraits.Stands | CountTraits.Differs).Where(count => !settled.Contains(count.Number)).OrderBy(count => count.Date)];
    }

    /// <summary>Clears up a difference; the count stays as it was.</summary>
    /// <param name="book">The book.</param>
    /// <param name="count">The number of the count.</param>
    /// <param name="how">Explained, or turned up.</param>
    /// <param name="date">The day on which it is cleared up.</param>
    /// <returns>The book afterwards; or why it can't be.</returns>
    public static Result<Book> Settle(Book book, long count, DifferenceEnd how, LocalDate date)
    {
        if (Open(book).FirstOrDefault(open => open.Number == count) is not { } open)
        {
            return Result.Refused<Book>(new CountFault.NoOpenDifference(count));
        }

        if (how == DifferenceEnd.TurnedUp && open.Difference.IsNegative)
        {
            return Result.Refused<Book>(new CountFault.FoundNotMissing(count, open.DifferenceName));
        }

        Pot? pot = book.Household.Pots.FirstOrDefault(pot => pot.Id == open.PotId && pot.Place == Place.Cash);
        if (how == DifferenceEnd.TurnedUp && pot is null)
        {
            return Result.Refused<Book>(new CountFault.PotGone());
        }

        var lost = LedgerEnd.MissedIn(open.PotId);
        var spent = LedgerEnd.SpentFrom(open.PotId);
        LocalDate last = book.Weeks.LastCountOf(open.PotId)!.Date;
        (LedgerEnd from, LedgerEnd to) = (how, open.Difference.IsPositive) switch
        {
            (DifferenceEnd.TurnedUp, _) => (lost, WalletFills.SpentFrom(pot!)),
            (_, true) => (lost, spent),
            _ => (spent, lost),
        };
        var writer = new WeekWriter(book);
        string reason = $"{(how == DifferenceEnd.TurnedUp ? "turned up" : "explained")}: {open.DifferenceName}";
        Money amount = open.Difference.IsNegative ? -open.Difference : open.Difference;
        long movement = writer.Move(date > last ? date : last, from, to, amount, reason)!.Value;
        writer.Record(weeks => weeks with { Settled = weeks.Settled.Add(new SettledDifference(count, how, date, movement)) });
        return Result.Of(writer.Book);
    }

    /// <summary>The difference that was cleared up last, or null.</summary>
    public static SettledDifference? LastSettled(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Weeks.Settled.MaxBy(settled => settled.Movement);
    }

    /// <summary>Opens a difference again that was cleared up.</summary>
    /// <param name="book">The book.</param>
    /// <param name="settled">The clearing up, one of the book.</param>
    /// <param name="date">The day on which it is taken back.</param>
    /// <returns>The book afterwards; or why it can't be.</returns>
    public static Result<Book> Reopen(Book book, SettledDifference settled, LocalDate date) => Taking(book, settled).Done(
        date, "not cleared up after all", weeks => weeks with { Settled = weeks.Settled.Remove(settled) });

    /// <summary>What is in the way of opening a difference again; null for nothing.</summary>
    public static Obstacle? InTheWay(Book book, SettledDifference settled) => Taking(book, settled).InTheWay();

    private static TakingBack Taking(Book book, SettledDifference settled)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(settled);
        var taking = new TakingBack(book, BookEntry.Of(book, settled));
        taking.Add(settled.Movement);
        return taking;
    }
}
