using Payday.Core.Books;
using Payday.Core.Ledgers;

namespace Payday.Core.Tests.Lives;

/// <summary>A book as it comes from a store: its movements in columns and its records made when they are looked at.</summary>
internal static class AsStored
{
    /// <summary>The book.</summary>
    /// <param name="book">As it came to be, entry by entry.</param>
    /// <param name="packed">How many of its movements are in columns; the rest came since.</param>
    public static Book Of(Book book, int packed) => book with
    {
        Ledger = Ledger.Of(Columns(book, packed), [.. book.Ledger.Movements.Skip(packed)]),
        Weeks = book.Weeks with
        {
            Purchases = Made(book.Weeks.Purchases),
            Counts = Made(book.Weeks.Counts),
        },
    };

    /// <summary>The first movements of a book in columns.</summary>
    public static MovementColumns Columns(Book book, int packed)
    {
        string[] reasons = [.. book.Ledger.Movements.Select(movement => movement.Reason).Distinct()];
        var columns = new MovementColumns(book.Household.Currency, packed, reasons);
        foreach (Movement movement in book.Ledger.Movements.Take(packed))
        {
            columns.Add(
                movement.Date,
                (columns.NumberOf(LedgerEnd.FromKey(movement.From.Key)), columns.NumberOf(LedgerEnd.FromKey(movement.To.Key))),
                movement.Amount.MinorUnits,
                Array.IndexOf(reasons, movement.Reason),
                movement.Payday,
                movement.Reverses);
        }

        return columns;
    }

    private static RecordList<T, TTraits> Made<T, TTraits>(RecordList<T, TTraits> all)
        where T : class, IRecord<TTraits>
        where TTraits : struct, Enum => RecordList.Known(
            GrowingList.After(new MadeList<T>(all.Count, at => all[at])), all.Select(RecordList.MarkOf).ToArray());
}
