using Payday.Core.Households;
using Payday.Screens.Home;
using Payday.Screens.Shell;
using Payday.Screens.Start;
using Payday.Store;

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
    /// <remarks>The demo plays on the days before its first payday, so that nothing is overdue.</remarks>
    public Screen Open(Func<Screen>? back = null)
    {
        Dispose();
        folder = new ThrowAwayFolder(Prefix);
        store = BookStore.Open(new StoreFolder(folder.Path));
        Household household = DemoCommand.Household();
        return new HomeScreen(NewBook.Store(store, household, () => household.Start)) { Leave = back is null ? null : () => Left(back) };
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
