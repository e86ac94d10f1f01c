using NodaTime;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Screens.Shell;
using Payday.Store;

namespace Payday.Screens.Start;

/// <summary>Stores the first household of a data folder.</summary>
internal static class NewBook
{
    /// <summary>Stores it with its opening balances.</summary>
    /// <param name="store">The store.</param>
    /// <param name="household">The household.</param>
    /// <param name="today">Today.</param>
    /// <param name="learned">What statements taught beside the household; null for nothing.</param>
    public static BookSession Store(BookStore store, Household household, Func<LocalDate> today, Func<WeekRecords, WeekRecords>? learned = null)
    {
        Book book = Book.Begin(household);
        book = learned is null ? book : book with { Weeks = learned(book.Weeks) };
        store.Save(null, book);
        return new BookSession(store, book, today);
    }
}
