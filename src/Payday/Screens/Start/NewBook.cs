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
    public static BookSession Store(BookStore store, Household household, Func<LocalDate> today)
    {
        Book book = Book.Begin(household);
        store.Save(null, book);
        return new BookSession(store, book, today);
    }
}
