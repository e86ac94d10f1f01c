using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using NodaTime;

namespace Payday.Core.Fills;

/// <summary>Taking cash out of a pot between counts: from the wallet first, then from what is at home.</summary>
internal static class PotCash
{
    /// <summary>Takes cash out.</summary>
    /// <param name="writer">Where it is written.</param>
    /// <param name="pot">A cash pot that has as much in all.</param>
    /// <param name="to">Where it goes.</param>
    /// <param name="amount">How much.</param>
    /// <param name="date">The day.</param>
    /// <param name="reason">Why, in a few words.</param>
    public static void TakeOut(WeekWriter writer, Pot pot, LedgerEnd to, Money amount, LocalDate date, string reason)
    {
        Money left = amount;
        foreach (LedgerEnd end in new[] { WalletFills.Wallet(pot), WalletFills.AtHome(pot) })
        {
            Money part = Money.Min(left, writer[end]);
            left -= part;
            writer.Move(Day(writer.Book, pot, end, part, date), end, to, part, reason);
        }
    }

    /// <summary>
    /// The day on which an amount leaves one of a pot's ends. A week that was counted stays as it was: what is entered
    /// later is in the next count. And where there was no cash yet on that day, it leaves on the first on which there was.
    /// </summary>
    public static LocalDate Day(Book book, Pot pot, LedgerEnd end, Money part, LocalDate date)
    {
        LocalDate from = book.Weeks.LastCountOf(pot.Id)?.Date is { } counted && counted > date ? counted : date;
        return EndCourse.Of(book.Ledger, end).DayFor(part, from) ?? from;
    }
}
