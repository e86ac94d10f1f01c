using Payday.Core.Households;
using Payday.Screens.Home;
using Payday.Screens.Shell;
using Payday.Screens.Start;
using Payday.Store;
using Payday.Store.Folders;

namespace Payday.Commands;

/// <summary>The demo household in a folder of its own, which is thrown away.</summary>
internal sealed class DemoFolder : IDisposable
{
    /// <summary>How the names of these folders begin.</summary>
    public const string Prefix = "payday-demo-";

    private ThrowAwayFolder? folder;
    private BookStore? store;

    /// <summary>The home screen of the demo household, as it is to begin with.</summary>
    /// <param name="back">The screen that leaving it leads to; null leaves the program.</param>
    /// <remarks>
    /// The demo begins on the day before its first payday, so that nothing is overdue, and goes on to each payday as it is
    /// closed: what is done next, filling, buying, counting, taking cash back, is then done on a day that has the money.
    /// </remarks>
    public Screen Open(Func<Screen>? back = null) => new HomeScreen(Begin()) { Leave = back is null ? null : () => Left(back) };

    /// <summary>The demo household as it is to begin with.</summary>
    public BookSession Begin()
    {
        Dispose();
        folder = new ThrowAwayFolder(Prefix);
        store = BookStore.Open(new StoreFolder(folder.Path));
        Household household = DemoCommand.Household();
        BookSession? session = null;
        session = NewBook.Store(store, household, () => session?.Book.LastClosed?.Payday ?? household.Start);
        session.IsThrownAway = true;
        return session;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        store?.Dispose();
        folder?.Dispose();
        store = null;
        folder = null;
    }

    private Screen Left(Func<Screen> back)
    {
        Dispose();
        return back();
    }
}
