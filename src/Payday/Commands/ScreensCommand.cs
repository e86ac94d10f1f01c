using Payday.Core.Households;
using Payday.Screens.Shell;
using Payday.Screens.Start;
using Payday.Store;
using Payday.Store.HouseholdFiles;

namespace Payday.Commands;

/// <summary><c>payday</c> alone at a terminal: the full screen; where there is no household yet, the way to one.</summary>
internal static class ScreensCommand
{
    public static Answer Open(Invocation call)
    {
        using BookStore store = BookStore.Open(call.Folder);
        using var demo = new DemoFolder();
        Book? stored = store.Load();
        int told = call.Tell(store, 0);
        FullScreen.Run(stored is { } book
            ? Home(new BookSession(store, book, call.Shell.Today()))
            : new StartScreen(new StartDoor(store, call.Shell.Today(), path => Offer(call.Shell, path), demo.Open)));

        // Also what was said on the screen: here it stays in sight.
        store.FinishBackups();
        call.Tell(store, told);
        return new Answer.Done([], "{}");
    }

    // What was mended at opening is said where it is read.
    private static Screens.Home.HomeScreen Home(BookSession session) => new(session) { Message = session.News() };

    private static HouseholdOffer Offer(CommandShell shell, string path)
    {
        Household? found = null;
        Answer answer = CommandInput.WithFile(shell, path, HouseholdFile.Read, household =>
        {
            found = household;
            return new Answer.Done([], "{}");
        });
        return new HouseholdOffer(found, answer is Answer.Refused refused ? [.. refused.Reasons] : []);
    }
}
