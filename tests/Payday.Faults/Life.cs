using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Store;
using Payday.Store.HouseholdFiles;

namespace Payday.Faults;

/// <summary>What a household does, one change after another, on the demo household.</summary>
internal sealed class Life
{
    private readonly BookStore store;
    private Book book;

    private Life(BookStore store, Book book)
    {
        this.store = store;
        this.book = book;
    }

    /// <summary>Begins, or goes on where a store stands.</summary>
    public static Life Of(BookStore store)
    {
        if (store.Load() is { } there)
        {
            return new Life(store, there);
        }

        Household household = HouseholdFile.Read(File.ReadAllText(Demo())).Value!;
        Book begun = Book.Begin(household);
        store.Save(null, begun);
        return new Life(store, begun);
    }

    /// <summary>Begins, or makes the next change where a store stands.</summary>
    public static void Next(BookStore store)
    {
        bool begins = store.LastChange == 0;
        Life life = Of(store);
        if (!begins)
        {
            life.Step();
        }
    }

    /// <summary>The next change: purchases, drafts, now and then a closed payday, now and then one reopened.</summary>
    public void Step()
    {
        long turn = store.LastChange % 8;
        if (turn == 3)
        {
            Close();
        }
        else if (turn == 4 && Reopening.Of(book, book.Closed.LastOrDefault()?.Payday ?? book.Household.Start) is { Ok: true } reopened)
        {
            store.Save(book, reopened.Value);
            book = reopened.Value;
        }
        else if (turn == 5)
        {
            Close();
        }
        else
        {
            var day = (book.Closed.LastOrDefault()?.Payday ?? book.Household.Start).PlusDays(1);
            var entry = new PurchaseEntry(day, null, Money.FromMinorUnits(100 + store.LastChange, book.Household.Currency), $"errand {store.LastChange}");
            Book after = Purchasing.Enter(book, entry).Value!;
            store.Save(book, after);
            book = after;
        }
    }

    private void Close()
    {
        RoutinePlan plan = Routine.Plan(book, Routine.Begun(book, null).Value!).Value!;
        if (Closing.Of(plan) is { Ok: true } closing)
        {
            store.Save(book, closing.Value);
            book = closing.Value;
        }
        else
        {
            Book begun = book with { Draft = plan.Draft };
            store.Save(book, begun);
            book = begun;
        }
    }

    /// <summary>The file of the demo household.</summary>
    public static string Demo()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            string file = Path.Combine(folder.FullName, "demo", "household.json");
            if (File.Exists(file))
            {
                return file;
            }
        }

        throw new FileNotFoundException("demo/household.json is not above the program.");
    }
}
