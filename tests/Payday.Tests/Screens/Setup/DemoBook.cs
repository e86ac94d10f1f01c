using NodaTime;
using Payday.Commands;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Screens.Setup;
using Payday.Screens.Shell;
using Payday.Screens.Start;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Tests.Printing;

namespace Payday.Tests.Screens.Setup;

/// <summary>The demo household in a folder for one test, and a hand on its setup.</summary>
internal sealed class DemoBook : IDisposable
{
    private readonly ScratchFolder folder = new();
    private readonly BookStore store;

    /// <param name="today">The date, or null for that of the household's start.</param>
    public DemoBook(LocalDate? today = null)
    {
        store = BookStore.Open(new StoreFolder(folder.Path));
        Household household = DemoCommand.Household();
        Session = NewBook.Store(store, household, () => today ?? household.Start);
        Hand = new Hand(new SetupScreen(new BookWork(Session)));
    }

    public BookSession Session { get; }

    public Hand Hand { get; }

    public Household Household => Session.Book.Household;

    /// <summary>What another start of the program would find.</summary>
    public Book Stored => store.Load()!;

    /// <summary>Closes the first payday, all proposals taken.</summary>
    public void CloseOne()
    {
        LocalDate payday = Routine.Next(Session.Book).Value;
        Session.Take(Closing.Of(Routine.Plan(Session.Book, new RoutineDraft(payday)).Value!).Value!);
    }

    public void Dispose()
    {
        store.Dispose();
        folder.Dispose();
    }
}
